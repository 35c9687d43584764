import { expect, test } from "vitest";
import { fileName } from "../file-name.ts";
import { type PriceDraft, readPrices } from "./price-draft.ts";

const none: PriceDraft = {
  ...{ elementSetPrice: null, elementLifeFirings: null, shelfPrice: null, shelfLifeFirings: null },
  ...{ perLitre: null, perFiring: null },
};

test("a price needs how long the thing lasts; emptied, both are taken out", () => {
  expect(readPrices("wear", { ...none, elementSetPrice: 300 })).toHaveProperty("missing");
  expect(readPrices("wear", { ...none, shelfLifeFirings: 200 })).toHaveProperty("missing");
  const { perLitre: _, perFiring: __, ...wear } = none;
  expect(readPrices("wear", none)).toEqual({ change: wear });
  const elements = { elementSetPrice: 300, elementLifeFirings: 150 };
  expect(readPrices("wear", { ...none, ...elements })).toEqual({ change: { ...wear, ...elements } });
});

test("one of two fees is enough; with neither there is none", () => {
  expect(readPrices("fee", { ...none, perLitre: 0.9 })).toEqual({
    change: { guestFee: { perLitre: 0.9, perFiring: 0 } },
  });
  expect(readPrices("fee", none)).toEqual({ change: { guestFee: null } });
});

test("a file's name is one that every system takes", () => {
  const firing = { name: "Glaze / cone 6: größe", startedAt: "2026-11-09T14:32:00.000Z", createdAt: "" };
  expect(fileName(firing as Parameters<typeof fileName>[0], "fees")).toBe("2026-11-09-glaze-cone-6-gro-e-fees.csv");
});

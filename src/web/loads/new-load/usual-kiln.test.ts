import { expect, test } from "vitest";
import type { KilnRecord } from "../../../studio/records/kiln-record.ts";
import { batch, load } from "../testing/example-load.ts";
import { usualKiln } from "./usual-kiln.ts";

const { request, createdAt, changedAt } = load("l", [batch("mug")], null);
const kiln = (id: string, diameterMm: number): KilnRecord => ({
  id,
  kiln: { name: id, chamber: { shape: "round", diameterMm, depthMm: 400 } },
  furniture: request.furniture,
  rules: {},
  createdAt,
  changedAt,
});
const kilns = [kiln("small", 250), kiln("large", 450), kiln("middle", 350)];

test("the kiln most loads were made for, however small", () => {
  const madeFor = (...ids: string[]) => ids.map((kilnId, i) => load(`l${i}`, [], null, { kilnId }));
  expect(usualKiln(kilns, madeFor("small", "middle", "small"))).toBe("small");
  expect(usualKiln(kilns, madeFor("small", "middle"))).toBe("middle");
});

test("the largest where there is no load yet, or its kiln is gone", () => {
  expect(usualKiln(kilns, [])).toBe("large");
  expect(usualKiln(kilns, [load("a", [], null, { kilnId: "gone" })])).toBe("large");
  expect(usualKiln([], [])).toBeUndefined();
});

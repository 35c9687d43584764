import { expect, test } from "vitest";
import { COLOURS, kindSigns, SIGN_PATHS, SIGNS } from "./kind-signs.ts";

const glazes = Array.from({ length: COLOURS * SIGNS }, (_, i) => ({ name: `piece ${i}`, glaze: `glaze ${i}` }));

test("every glaze has a colour and sign of its own, as long as there are different ones", () => {
  const seen = new Set([...kindSigns(glazes).values()].map(({ colour, sign }) => `${colour} ${sign}`));
  expect(seen.size).toBe(COLOURS * SIGNS);
});

test("pieces of one glaze share it, those without one go by their name", () => {
  const signs = kindSigns([
    { name: "mug", glaze: "ash" },
    { name: "bowl", glaze: " ash " },
    { name: "tile", glaze: null },
  ]);
  expect([...signs.keys()]).toEqual(["ash", "tile"]);
  expect(SIGN_PATHS).toHaveLength(SIGNS);
});

import { expect, test } from "vitest";
import { fittingSize } from "./fitting-size.ts";

test("a photo is scaled down to its longest side, upright or lying, and never up", () => {
  expect(fittingSize(4000, 3000)).toEqual({ width: 2000, height: 1500 });
  expect(fittingSize(3000, 4000)).toEqual({ width: 1500, height: 2000 });
  expect(fittingSize(640, 480)).toEqual({ width: 640, height: 480 });
  expect(fittingSize(90000, 3)).toEqual({ width: 2000, height: 1 });
});

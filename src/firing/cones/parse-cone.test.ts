import { expect, test } from "vitest";
import { CONES } from "./cone.ts";
import { parseCone } from "./parse-cone.ts";

test.each([
  ["6", "6"],
  ["cone 6", "6"],
  ["Cone6", "6"],
  ["^6", "6"],
  ["c/6", "6"],
  ["Δ06", "06"],
  ["∆ 06", "06"],
  ["#5", "5"],
  ["05½", "05.5"],
  ["05 1/2", "05.5"],
  ["5½", "5.5"],
  ["5,5", "5.5"],
  ["o4", "04"],
  ["cone O6", "06"],
  [" 022 ", "022"],
])("reads %j as cone %s", (text, cone) => {
  expect(parseCone(text)).toBe(cone);
});

test("reads every cone's own number as itself", () => {
  for (const cone of CONES) expect(parseCone(cone)).toBe(cone);
});

test.each(["", "0", "15", "023", "006", "6.2", "1222 °C", "six", "-6", "6-7"])(
  "refuses %j, naming what would do",
  (text) => {
    expect(() => parseCone(text, "ware[0].cone")).toThrow(/ware\[0\]\.cone: found .*; expected /);
  },
);

test("says which cones stand beside a half that does not exist", () => {
  expect(() => parseCone("6½")).toThrow(/6 or 7: the only half cones are 05.5 and 5.5/);
});

import { describe, expect, test } from "vitest";
import { FORM_NAMES, formOutline } from "../../../ware/forms.ts";
import { TYPICAL_SIZE } from "../batch/typical-size.ts";
import { drawPiece } from "./piece-marks.ts";

const parts = (seen: Parameters<typeof drawPiece>[0]): string[] => drawPiece(seen).marks.map(({ part }) => part);

describe("a piece drawn from the side", () => {
  test.each(FORM_NAMES)("%s: each part it has is drawn once, its body last", (form) => {
    const outline = formOutline(form, TYPICAL_SIZE[form]);
    const drawn = parts({ form, ...outline, cookie: { diameterMm: 60, thicknessMm: 6 } });
    const has = [outline.handle ? "handle" : null, outline.spout ? "spout" : null].filter((part) => part !== null);
    expect(drawn).toEqual(["cookie", ...has, "body"]);
  });

  test("takes up its width, what sticks out of it, and its height on its cookie", () => {
    const mug = formOutline("mug", { diameterMm: 80, heightMm: 90 });
    const drawn = drawPiece({ form: "mug", ...mug, cookie: { diameterMm: 100, thicknessMm: 6 } });
    expect(drawn).toMatchObject({ leftMm: -50, topMm: 96 });
    expect(drawn.rightMm).toBeCloseTo(40 + (mug.handle?.reachMm ?? 0), 9);
  });
});

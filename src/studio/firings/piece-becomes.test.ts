import { expect, test } from "vitest";
import { becomesOf, mayBecome, pieceBecomes } from "./piece-becomes.ts";

// What becomes of fired ware: common practice, no source.
const raw = { stage: "greenware", firingKind: "bisque", kind: "bisque" } as const;
const glazed = { stage: "glazed", firingKind: "glaze", kind: "glaze" } as const;

test("what is raw goes on to be glazed, what is glazed is finished, what is lost is gone", () => {
  expect(pieceBecomes({ grade: "good", ...raw })).toBe("bisque");
  expect(pieceBecomes({ grade: "good", ...glazed })).toBe("finished");
  expect(pieceBecomes({ grade: "second", ...glazed })).toBe("second");
  expect(pieceBecomes({ grade: "lost", ...raw })).toBe("lost");
  expect(pieceBecomes({ grade: "good", ...raw, firingKind: "once-fired" })).toBe("finished");
});

test("raw clay may be meant to stay bare; anything may be fired again", () => {
  expect(mayBecome({ grade: "good", ...raw })).toEqual(["bisque", "finished", "again"]);
  expect(mayBecome({ grade: "second", ...raw })).toEqual(["bisque", "second", "again"]);
  expect(mayBecome({ grade: "lost", ...glazed })).toEqual(["lost", "again"]);
});

test("what she said holds only as long as it may still be", () => {
  expect(becomesOf("again", { grade: "second", ...glazed })).toBe("again");
  expect(becomesOf("second", { grade: "lost", ...glazed })).toBe("lost");
  expect(becomesOf(undefined, { grade: "good", ...raw })).toBe("bisque");
});

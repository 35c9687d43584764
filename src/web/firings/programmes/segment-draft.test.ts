import { describe, expect, test } from "vitest";
import { writeProgramme } from "../../../firing/programme/write-programme.ts";
import { programmeWords } from "./programme-words.ts";
import {
  changedSegment,
  draftOfProgramme,
  movedSegment,
  programmeOfDraft,
  shownDegrees,
  typedDegrees,
  withOneMore,
} from "./segment-draft.ts";

const { programme } = writeProgramme({ cone: "04", kind: "bisque", pace: "slow" });
const draft = draftOfProgramme(programme);

describe("a programme being edited", () => {
  test("comes out as it went in", () => {
    expect(programmeOfDraft(draft)).toEqual(programme);
  });

  test("figures changed by hand lose the reason of the old ones and keep their stage", () => {
    const changed = programmeOfDraft(changedSegment(draft, 0, { rateCPerHour: 45 })).segments[0];
    expect(changed).toMatchObject({ rateCPerHour: 45, stage: "drying" });
    expect(changed).not.toHaveProperty("reason");
  });

  test("segments are added, and moved up and down but not out", () => {
    const more = withOneMore(draft);
    expect(more.segments.at(-1)).toMatchObject({ targetC: (programme.segments.at(-1)?.targetC ?? 0) + 100 });
    expect(movedSegment(draft, 0, 1).segments[1]?.key).toBe(draft.segments[0]?.key);
    expect(movedSegment(draft, 0, -1)).toEqual(draft);
    expect(new Set(more.segments.map(({ key }) => key)).size).toBe(more.segments.length);
  });

  test("what is no programme is refused at its field", () => {
    expect(() => programmeOfDraft(changedSegment(draft, 1, { targetC: null }))).toThrow(/segments\[1\]\.targetC/);
    expect(() => programmeOfDraft({ ...draft, name: " " })).toThrow(/name/);
  });

  test("degrees Fahrenheit: a target has an offset, a rate has none", () => {
    // Water boils at 212 °F; a kelvin is 1.8 Fahrenheit degrees.
    expect(shownDegrees(100, "F", "target")).toBe(212);
    expect(shownDegrees(100, "F", "rate")).toBe(180);
    expect(typedDegrees(212, "F", "target")).toBeCloseTo(100);
    expect(typedDegrees(180, "F", "rate")).toBeCloseTo(100);
    expect(shownDegrees(null, "F", "rate")).toBeNull();
  });
});

test("a programme's name says what it is for, or it is said beside it", () => {
  expect(programmeWords(programme)).toBe("cone 04 bisque, slow");
  expect(programmeWords({ ...programme, name: "the usual" })).toBe("the usual (bisque, cone 04)");
  expect(programmeWords({ name: "the usual" })).toBe("the usual");
});

import { describe, expect, test } from "vitest";
import { changed } from "../batch/batch-change.ts";
import { sampleBatch } from "../testing/sample-batches.ts";
import { changeToAlike, GLAZE_IN_WORDS, KEEP_ALL } from "./alike.ts";

describe("making many batches alike", () => {
  test("changes nothing that is to stay as it is", () => {
    expect(changeToAlike(KEEP_ALL)).toBeNull();
  });

  test("sets what is said, and takes out what is to be nothing", () => {
    expect(changeToAlike({ ...KEEP_ALL, cone: "6", firingKind: "glaze" })).toEqual({
      firingKind: "glaze",
      ware: { cone: "6" },
    });
    expect(changeToAlike({ ...KEEP_ALL, cone: "", due: "none", clayBody: "" })).toEqual({
      ware: { cone: null },
      dueOn: null,
      clayBodyId: null,
    });
  });

  test("a glaze takes the place of the one before, recorded or in words", () => {
    const inWords = sampleBatch("a", { glaze: "rust" });
    const recorded = sampleBatch("b", {}, { glazeId: "rain" });
    const toRecorded = changeToAlike({ ...KEEP_ALL, glaze: "slate" });
    expect(changed(inWords, toRecorded ?? {})).toEqual(sampleBatch("a", {}, { glazeId: "slate" }));
    const toWords = changeToAlike({ ...KEEP_ALL, glaze: GLAZE_IN_WORDS, glazeWords: " ash " });
    expect(changed(recorded, toWords ?? {})).toEqual(sampleBatch("b", { glaze: "ash" }));
  });

  test("waits for the day or the words that are meant", () => {
    expect(changeToAlike({ ...KEEP_ALL, cone: "6", due: "day" })).toBeNull();
    expect(changeToAlike({ ...KEEP_ALL, cone: "6", glaze: GLAZE_IN_WORDS })).toBeNull();
  });
});

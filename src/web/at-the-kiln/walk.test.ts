import { describe, expect, test } from "vitest";
import type { LoadPlan } from "../../loading/load-plan.ts";
import type { LoadRequest } from "../../loading/load-request.ts";
import { loadingStages } from "../../sheets/loading-steps.ts";
import { sheetLoad } from "../../sheets/sheet-load.ts";
import { handMadeLoad } from "../../sheets/testing/sheet-cases.ts";
import { layOut } from "./lay-out.ts";
import {
  AT_THE_LID,
  changedLevels,
  doneSteps,
  nothingDone,
  progressOf,
  settle,
  stepToShow,
  ticksAfter,
} from "./ticks.ts";
import { loadingWalk, pieceWords, type WalkStep } from "./walk.ts";

const { request, plan } = handMadeLoad();
const load = sheetLoad(request, plan);
const steps = loadingWalk(load, "metric");
const at = (minute: number): string => `2026-11-25T10:${String(minute).padStart(2, "0")}:00.000Z`;
const pieces = steps.filter((step) => step.kind === "piece");
const keysOf = (of: LoadPlan, asked: LoadRequest = request): string[] =>
  loadingWalk(sheetLoad(asked, of), "metric").map(({ key }) => key);

/** The plan with one level's placements or posts changed. */
const replanned = (level: number, change: (of: LoadPlan["levels"][number]) => object): LoadPlan => ({
  ...plan,
  levels: plan.levels.map((each, i) => (i === level ? { ...each, ...change(each) } : each)),
});

describe("the walk through a load", () => {
  test("says what the printed sheet says, in its order, but for the pieces", () => {
    const printed = loadingStages(load, "metric").flatMap((stage) =>
      stage.steps.filter(({ sets }) => sets !== "pieces"),
    );
    expect(steps.flatMap((step) => (step.kind === "do" ? [step.text] : []))).toEqual(
      // The first page's counts are on the screen itself.
      printed.map(({ text }) => text.replace("on the first page", "here")),
    );
  });

  test("has each piece once, with the sheet's numbers, after its shelf and the cone pack, before the look along the posts", () => {
    expect(pieces.map(({ key }) => key).sort()).toEqual(["0.0", "0.1", "0.2", "1.0", "1.1", "1.2", "1.3"]);
    const words = (step: WalkStep) => (step.kind === "piece" ? step.piece.number : (step.sets ?? "look"));
    const first = steps.filter(({ level }) => level === 0).map(words);
    expect(first).toEqual(["shelf", "posts", "look", 1, 2, 3, "look"]);
    const numbered = load.levels[0]?.pieces.map(({ piece, number }) => [number, piece.placement]);
    expect(pieces.filter(({ level }) => level === 0).map((each) => [each.piece.number, each.placement])).toEqual(
      numbered,
    );
  });

  test("begins before anything goes in and ends before the lid comes down", () => {
    expect(steps[0]).toMatchObject({ kind: "do", when: "before" });
    expect(steps[0]?.kind === "do" && steps[0].text).toContain("isolator");
    expect(steps.at(-1)).toMatchObject({ kind: "do", when: "closing" });
  });

  test("has no key twice, and the same keys in either unit", () => {
    const keys = steps.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    expect(loadingWalk(load, "inches").map(({ key }) => key)).toEqual(keys);
  });

  test("says where a piece goes: direction, distance, handle, spout, cookie", () => {
    const jug = pieces.find(({ piece }) => piece.piece.ware.name === "jug");
    expect(jug && pieceWords(jug.piece, "metric")).toEqual([
      "In the middle",
      "Handle to 2 o’clock",
      "Spout to 8 o’clock",
      "On its cookie",
    ]);
    const mug = pieces.find(({ level, placement }) => level === 0 && placement === 2);
    // Its axis at (100, −30), 43 mm of it and a handle of 34 mm pointing to 9 o'clock; the shelf's edge at 195 mm.
    expect(mug && pieceWords(mug.piece, "metric")).toEqual([
      "Toward 3:30, 48 mm in from the shelf’s edge",
      "Handle to 9 o’clock",
    ]);
  });
});

test("what is laid out is counted by kind, as the plan uses it", () => {
  expect(layOut(load, "metric")).toEqual({
    shelves: ["2 × full shelf"],
    posts: ["3 of 25 mm", "3 of 50 mm", "3 of 100 mm"],
    ware: ["3 mugs", "2 × bowl “wide”", "1 jug", "1 Łódź żółty"],
  });
});

describe("ticks", () => {
  const memory = nothingDone(plan);
  const ticked = (level: number, placement: number, minute: number) => ({ level, placement, at: at(minute) });

  test("of the studio and of this device count together; the later of two about one piece wins", () => {
    const [first, second, third] = ["0.0", "0.1", "0.2"] as const;
    const mug = { ware: "mug" };
    const bowl = { ware: "bowl “wide”" };
    const waiting = {
      [first]: { at: at(5), in: false, ...mug },
      [second]: { at: at(5), in: true, ...bowl },
      [third]: { at: at(1), in: false, ...mug },
    };
    const done = doneSteps(steps, [ticked(0, 0, 2), ticked(0, 2, 2)], { ...memory, waiting });
    expect([first, second, third].map((key) => done.has(key))).toEqual([false, true, true]);
    expect(progressOf(steps, done)).toMatchObject({ piecesIn: 2, pieces: 7, allIn: false, allDone: false });
  });

  test("shown before the studio answers: set, taken back, and an older one than is there changes nothing", () => {
    const kept = [ticked(0, 0, 4), ticked(1, 1, 4)];
    const change = (placement: number, minute: number, isIn: boolean) => ({
      ...ticked(0, placement, minute),
      in: isIn,
    });
    expect(ticksAfter(kept, [change(1, 5, true)])).toEqual([...kept, ticked(0, 1, 5)]);
    expect(ticksAfter(kept, [change(0, 5, false)])).toEqual([kept[1]]);
    expect(ticksAfter(kept, [change(0, 3, false)])).toEqual(kept);
  });

  test("about a piece that no longer stands at its place are not counted", () => {
    const waiting = { "0.1": { at: at(5), in: true, ware: "teapot" } };
    expect(doneSteps(steps, [], { ...memory, waiting }).has("0.1")).toBe(false);
  });

  test("all pieces in is not all done: the lid's own steps come after", () => {
    const all = pieces.map(({ level, placement }) => ticked(level, placement, 1));
    expect(progressOf(steps, doneSteps(steps, all, memory))).toMatchObject({ allIn: true, allDone: false });
    const done = Object.fromEntries(steps.filter(({ kind }) => kind === "do").map(({ key }) => [key, at(2)]));
    expect(progressOf(steps, doneSteps(steps, all, { ...memory, done }))).toMatchObject({ allDone: true });
  });

  test("go from this device when the studio has answered for that very tick, and not for an earlier one", () => {
    const waiting = { "0.0": { at: at(5), in: true, ware: "mug" }, "0.1": { at: at(6), in: true, ware: "bowl" } };
    const settled = settle({ ...memory, waiting }, { "0.0": at(5), "0.1": at(2) });
    expect(Object.keys(settled.waiting)).toEqual(["0.1"]);
  });
});

describe("where she goes on", () => {
  const memory = nothingDone(plan);
  test("is where she was; else the first thing not done; else the end", () => {
    const done = new Set(steps.slice(0, 3).map(({ key }) => key));
    expect(stepToShow(steps, done, null)).toBe(3);
    expect(stepToShow(steps, done, steps[1]?.key ?? null)).toBe(1);
    expect(stepToShow(steps, done, "gone")).toBe(3);
    expect(stepToShow(steps, done, AT_THE_LID)).toBe(steps.length);
    expect(stepToShow(steps, new Set(steps.map(({ key }) => key)), null)).toBe(steps.length);
    expect(stepToShow(steps, doneSteps(steps, [], memory), null)).toBe(0);
  });
});

describe("a plan changed meanwhile", () => {
  const memory = nothingDone(plan);
  test("is noticed by the levels that changed", () => {
    expect(changedLevels(plan, memory)).toBeNull();
    expect(
      changedLevels(
        replanned(1, () => ({ placements: [] })),
        memory,
      ),
    ).toEqual([2]);
    expect(changedLevels({ ...plan, levels: plan.levels.slice(0, 1) }, memory)).toEqual([2]);
    expect(
      changedLevels(
        replanned(0, ({ topMm }) => ({ topMm: topMm + 5 })),
        memory,
      ),
    ).toEqual([1]);
  });

  test("keeps the ticks of shelves and posts that stay, and drops those of what was built anew", () => {
    const before = keysOf(plan);
    const moved = keysOf(replanned(1, ({ placements }) => ({ placements: placements.slice(1) })));
    const furniture = (keys: string[]) => keys.filter((key) => /-(shelf|posts)-/.test(key));
    expect(furniture(before).length).toBe(4);
    expect(furniture(moved)).toEqual(furniture(before));
    const level = (keys: string[], index: number) => keys.filter((key) => key.startsWith(`building${index}-`));
    expect(level(moved, 0)).toEqual(level(before, 0));
    expect(level(moved, 1).at(-1)).not.toBe(level(before, 1).at(-1));
    const rebuilt = keysOf(replanned(1, ({ turnDeg }) => ({ turnDeg: turnDeg + 10 })));
    const shelf = (keys: string[], index: number) => keys.find((key) => key.startsWith(`building${index}-shelf`));
    expect(shelf(rebuilt, 0)).toBe(shelf(before, 0));
    expect(shelf(rebuilt, 1)).not.toBe(shelf(before, 1));
    expect(rebuilt.find((key) => key.startsWith("closing"))).not.toBe(before.find((key) => key.startsWith("closing")));
  });
});

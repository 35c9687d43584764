import { expect, test } from "vitest";
import type { LoadPlan } from "../../../loading/load-plan.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import { batch, load as exampleLoad, planOf } from "../../loads/testing/example-load.ts";
import { EditLine, type EditOutcome } from "./edit-line.ts";
import type { LoadEdit } from "./load-edit.ts";

/** A studio that does one change at a time, when told to, and minds versions as the real one does. */
function studio(first: LoadRecord) {
  let kept = first;
  let line: { on: LoadRecord; after: LoadRecord; answer: (outcome: EditOutcome) => void }[] = [];
  const refusals: unknown[] = [];
  const edits = new EditLine({
    send: (on, _, after) => new Promise((answer) => line.push({ on, after, answer })),
    read: async () => kept,
    takeBackAll: async () => {
      for (const { answer } of line.splice(0)) answer({ kind: "taken back" });
    },
    refused: (error) => refusals.push(error),
  });
  const settled = () => new Promise((resolve) => setTimeout(resolve, 0));
  return {
    edits,
    refusals,
    kept: () => kept,
    change: (change: Partial<LoadRecord>) => {
      kept = { ...kept, ...change, version: kept.version + 1 };
    },
    /** Answers what was sent first. */
    answer: async (outcome?: EditOutcome) => {
      const [next, ...rest] = line;
      line = rest;
      const isOld = next !== undefined && next.on.version !== kept.version;
      if (!outcome && !isOld && next) kept = next.after;
      next?.answer(outcome ?? (isOld ? { kind: "changed since" } : { kind: "done" }));
      await settled();
    },
    waiting: () => line.length,
  };
}

const load = exampleLoad("l1", [batch("mug"), batch("bowl")], ["mug", "bowl"]);
const at = (xMm: number, plan = load.plan): LoadEdit => {
  const [level] = plan?.levels ?? [];
  const placements = level?.placements.map((piece, i) => (i === 0 ? { ...piece, xMm } : piece));
  return {
    note: `moved the mug to ${xMm}`,
    plan: { ...plan, levels: [{ ...level, placements }] } as unknown as LoadPlan,
  };
};
const x = (record: LoadRecord | null | undefined) => record?.plan?.levels[0]?.placements[0]?.xMm;

test("edits made faster than the studio answers each build on the one before", async () => {
  const { edits, kept, answer } = studio(load);
  for (const to of [10, 20, 30]) edits.add(load, at(to));
  expect(x(edits.state().working)).toBe(30);
  for (const to of [10, 20, 30]) {
    await answer();
    expect(x(kept())).toBe(to);
  }
  expect(kept().version).toBe(4);
  expect(edits.state().working).toBeNull();
});

test("what changes nothing is not sent", () => {
  const { edits, waiting } = studio(load);
  edits.add(load, { note: "moved the mug", plan: load.plan as unknown as LoadPlan });
  expect(waiting()).toBe(0);
});

test("an edit she undid before it was saved is gone from the load at hand", async () => {
  const { edits, answer } = studio(load);
  edits.add(load, at(10));
  edits.add(load, at(20));
  await answer();
  expect(x(edits.state().working)).toBe(20);
  await answer({ kind: "taken back" });
  expect(edits.state().working).toBeNull();
});

test("where only a tick or a name came in between, her edits are laid on the newer load and sent again", async () => {
  const { edits, kept, change, answer } = studio(load);
  change({ name: "renamed elsewhere" });
  for (const to of [10, 20]) edits.add(load, at(to));
  await answer();
  expect(x(edits.state().working)).toBe(20);
  await answer();
  await answer();
  expect([kept().name, x(kept()), edits.state().working, edits.state().parted]).toEqual([
    "renamed elsewhere",
    20,
    null,
    null,
  ]);
});

test("where the plan was changed elsewhere nothing is overwritten, and hers is kept for her to decide", async () => {
  const { edits, kept, change, answer, waiting } = studio(load);
  for (const to of [10, 20]) edits.add(load, at(to));
  // A change whose version the second edit would fit by chance.
  change({ plan: planOf(["bowl", "mug"]) });
  await answer();
  expect(waiting()).toBe(0);
  expect(kept().plan).toEqual(planOf(["bowl", "mug"]));
  expect(edits.state().working).toBeNull();
  expect(x(edits.state().parted?.mine)).toBe(20);
  expect(edits.state().parted?.theirs).toBe(kept());
  edits.letGo();
  expect(edits.state().parted).toBeNull();
});

test("what the studio refuses is told, and what was built on it goes with it", async () => {
  const { edits, refusals, answer, waiting } = studio(load);
  for (const to of [10, 20]) edits.add(load, at(to));
  await answer({ kind: "refused", error: "no" });
  expect([waiting(), refusals, edits.state().working]).toEqual([0, ["no"], null]);
});

test("pins follow the pieces as the studio carries them", () => {
  const { edits } = studio(load);
  const pinned = { ...load, pins: [{ level: 0, placement: 1 }] };
  const plan = planOf(["bowl"]);
  const moves = [{ from: { level: 0, placement: 1 }, to: { level: 0, placement: 0 } }];
  edits.add(pinned, { note: "took out the mug", plan: plan as unknown as LoadPlan, moves });
  expect(edits.state().working?.pins).toEqual([{ level: 0, placement: 0 }]);
});

test("what she did before a reload and the studio would not do is kept for her too", async () => {
  const { edits, change, kept } = studio(load);
  change({ plan: planOf(["bowl", "mug"]) });
  await edits.takeIn({ ...load, plan: at(20).plan as never });
  expect([x(edits.state().parted?.mine), edits.state().parted?.theirs]).toEqual([20, kept()]);
});

import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Placement } from "../../loading/load-plan.ts";
import * as sample from "../../store/testing/sample-records.ts";
import { type StudioInUse, studioInUse } from "../../store/testing/studio-in-use.ts";
import { undo } from "../history/undo.ts";

let studio: StudioInUse;
const batch = (id: string, name: string, count: number) => ({
  ...{ id, stage: "glazed", firingKind: "glaze", dueOn: null, ownerNote: "", clayBodyId: null, glazeId: null },
  ware: { name, count, diameterMm: 80, heightMm: 90 },
});
const at = (ware: string, xMm: number): Placement => ({ ware, xMm, yMm: 0, turnDeg: 0 });
const planOf = (...levels: Placement[][]) => ({
  format: "load-plan/1",
  levels: levels.map((placements, i) => ({
    ...{ shelf: "full", topMm: 41 + 150 * i, xMm: 0, yMm: 0, turnDeg: 0, posts: [], placements },
  })),
  left: [],
});
const load = () => studio.get("loads", "l");
const change = async (input: object) =>
  studio.give("change-load", { id: "l", version: (await load()).version, ...input });
const choose = async (input: object) =>
  studio.give("choose-load-ware", { id: "l", version: (await load()).version, ...input });
const tick = (level: number, placement: number, more: object = {}) =>
  studio.give("tick-load", { id: "l", ticks: [{ level, placement, at: studio.now, in: true, ...more }] });

beforeEach(async () => {
  studio = await studioInUse();
  const { kiln, furniture } = sample.kiln();
  await studio.give("add-kiln", { id: "k", kiln, furniture, rules: { gapMm: 8 } });
  await studio.give("add-ware", {
    ware: [batch("cups", "cup", 6), batch("bowls", "bowl", 4), batch("more", "cup", 2)],
  });
  await studio.give("make-load", { id: "l", kilnId: "k", name: "first", wareIds: ["cups", "bowls"] });
});
afterEach(() => studio.end());

describe("a load is made of", () => {
  test("a kiln, its furniture and clearances, and all that waits of the batches chosen", async () => {
    const { request, sources, plan, state, version } = await load();
    expect({ plan, state, version }).toEqual({ plan: null, state: "planned", version: 1 });
    expect(request).toMatchObject({ kiln: { name: "back room" }, rules: { gapMm: 8 } });
    expect(request.ware.map(({ name, count }) => [name, count])).toEqual([
      ["cup", 6],
      ["bowl", 4],
    ]);
    expect(sources).toEqual([
      { ware: "cup", wareId: "cups" },
      { ware: "bowl", wareId: "bowls" },
    ]);
  });

  test("fewer of a batch where she says so, what is not promised elsewhere where she does not", async () => {
    await change({ plan: planOf([at("cup", 0), at("cup", 90)]) });
    const make = (input: object) => studio.give("make-load", { kilnId: "k", name: "second", ...input });
    const counts = ({ changed }: Awaited<ReturnType<typeof make>>) =>
      Object.values(changed.loads ?? {}).flatMap((made) => made?.request.ware.map(({ count }) => count));
    expect(counts(await make({ wareIds: ["cups"] }))).toEqual([4]);
    expect(counts(await make({ wareIds: ["cups"], counts: { cups: 6 } }))).toEqual([6]);
    await expect(make({ wareIds: ["cups"], counts: { cups: 7 } })).rejects.toMatchObject({
      code: "out-of-range",
      path: "counts.cups",
    });
    await change({ plan: planOf([-120, -60, 0, 60].map((x) => at("bowl", x))) });
    await expect(make({ wareIds: ["bowls"] })).rejects.toMatchObject({
      code: "none-waits",
      found: /all stand in first/,
    });
  });

  test("clearances of its own over the kiln's, and batches of one name told apart, in words", async () => {
    const made = await studio.give("make-load", {
      ...{ id: "m", kilnId: "k", name: "second", wareIds: ["cups", "more"], rules: { lidMm: 40 } },
    });
    expect(made.entry.summary).toBe(
      "Made the load second. Several batches are called cup; in this load they are cup and cup, 2.",
    );
    expect(made.changed.loads?.m?.request.rules).toEqual({ gapMm: 8, lidMm: 40 });
  });

  test("a note that ends in a name with a full stop of its own ends in one, not two", async () => {
    for (const [id, glaze] of [
      ["cups", "moss"],
      ["more", "iron brown."],
    ]) {
      await studio.give("change-ware", { ids: [id], change: { glazeId: null, ware: { glaze } } });
    }
    const made = await studio.give("make-load", { kilnId: "k", name: "no. 2.", wareIds: ["cups", "more"] });
    expect(made.entry.summary).toBe(
      "Made the load no. 2. Several batches are called cup; in this load they are cup, moss and cup, iron brown.",
    );
  });
});

describe("when the plan changes", () => {
  test("ticks and pins stay with the pieces that stay, and she is told of those that do not", async () => {
    await change({ plan: planOf([at("cup", -90), at("cup", 0), at("bowl", 90)]), pins: [{ level: 0, placement: 2 }] });
    await tick(0, 0);
    await tick(0, 2);
    const answer = await change({
      plan: planOf([at("cup", 0), at("bowl", 90), at("cup", -50)]),
      note: "moved the cup",
    });
    expect(answer.entry.summary).toBe("Moved the cup; 1 piece is to be set down again");
    expect(await load()).toMatchObject({
      ticks: [{ level: 0, placement: 1, at: studio.now }],
      pins: [{ level: 0, placement: 1 }],
    });
    await undo(studio.store, "load:l");
    expect((await load()).ticks.map(({ placement }) => placement)).toEqual([0, 2]);
    await change({
      plan: planOf([at("cup", 0), at("bowl", 90), at("cup", -50)]),
      moves: [{ from: { level: 0, placement: 0 }, to: { level: 0, placement: 2 } }],
      pins: [],
    });
    expect(await load()).toMatchObject({ ticks: [{ placement: 2 }, { placement: 1 }], pins: [] });
  });

  test("a change made from an older version is refused", async () => {
    await change({ name: "renamed" });
    await expect(studio.give("change-load", { id: "l", version: 1, state: "loaded" })).rejects.toMatchObject({
      code: "changed-since",
    });
    expect((await change({ state: "loaded" })).entry.summary).toBe("Marked renamed as loaded");
  });
});

describe("when other ware is chosen", () => {
  beforeEach(() => change({ plan: planOf([at("cup", -120), at("cup", -40), at("bowl", 40)], [at("cup", 0)]) }));

  test("what is still wanted stands where it stood; what is in the kiln stays first", async () => {
    await tick(1, 0);
    await choose({ wareIds: ["cups", "more"], counts: { cups: 2 } });
    const { plan, ticks, request, sources } = await load();
    expect(plan?.levels.map(({ placements }) => placements)).toEqual([[at("cup", -120)], [at("cup", 0)]]);
    expect(ticks).toEqual([{ level: 1, placement: 0, at: studio.now }]);
    expect(request.ware.map(({ name, count }) => [name, count])).toEqual([
      ["cup", 2],
      ["cup, 2", 2],
    ]);
    expect(sources.map(({ wareId }) => wareId)).toEqual(["cups", "more"]);
    expect(plan?.left).toEqual([{ ware: "cup, 2", count: 2, reason: "chosen since this was planned" }]);
  });

  test("sizes are taken from the batch as it is now; a batch that is gone stays as the load has it", async () => {
    await studio.give("change-ware", { ids: ["cups"], change: { ware: { heightMm: 95, count: 5 } } });
    await studio.give("remove-ware", { ids: ["bowls"] });
    await choose({ wareIds: ["cups", "bowls"] });
    const { request, sources, plan } = await load();
    expect(request.ware.map(({ name, count, heightMm }) => [name, count, heightMm])).toEqual([
      ["cup", 5, 95],
      ["bowl", 4, 90],
    ]);
    expect(sources).toContainEqual({ ware: "bowl", wareId: "bowls" });
    expect(plan?.levels.flatMap(({ placements }) => placements)).toHaveLength(4);
    await expect(choose({ wareIds: ["cups", "nobody"] })).rejects.toMatchObject({ code: "unknown-record" });
  });
});

test("another way to load the same pieces may have them all, whatever the first one has", async () => {
  await change({ plan: planOf([-150, -90, -30, 30, 90, 150].map((x) => at("cup", x))) });
  await studio.give("copy-load", { id: "l", name: "other", newId: "o" });
  await studio.give("choose-load-ware", { id: "o", version: 1, wareIds: ["bowls"] });
  await studio.give("choose-load-ware", { id: "o", version: 2, wareIds: ["bowls", "cups"] });
  const { request } = await studio.get("loads", "o");
  expect(request.ware.map(({ name, count }) => [name, count])).toEqual([
    ["bowl", 4],
    ["cup", 6],
  ]);
});

describe("ticks from the kiln", () => {
  beforeEach(() => change({ plan: planOf([at("cup", -90), at("bowl", 90)]) }));

  test("need no version, and the first one begins the loading", async () => {
    const answer = await tick(0, 0);
    expect(answer.entry.summary).toBe("Set cup in first");
    expect(answer.changed.loads?.l).toMatchObject({ state: "loading", ticks: [{ level: 0, placement: 0 }] });
    expect((await tick(0, 0, { in: false, at: "2026-11-25T11:00:00.000Z" })).changed).toEqual({});
    expect((await tick(0, 0, { in: false })).changed).toEqual({});
    expect((await load()).ticks).toHaveLength(1);
    studio.now = "2026-11-25T12:00:01.000Z";
    expect((await tick(0, 0, { in: false })).entry.summary).toBe("Took cup back out of first");
    expect(await load()).toMatchObject({ ticks: [], takenBack: [{ placement: 0 }], state: "loading" });
  });

  test("for a place that is no more, or where another piece stands now, are refused in words", async () => {
    await expect(tick(0, 5)).rejects.toMatchObject({
      ...{ code: "unknown-place", path: 'load "l"' },
      found: "a tick for piece 6 of level 1, which is not there",
    });
    await expect(tick(0, 1, { ware: "cup" })).rejects.toMatchObject({
      found: /cup as piece 2 of level 1, where bowl stands/,
    });
    await expect(tick(0, 0, { at: "noon" })).rejects.toMatchObject({ code: "not-a-moment", path: "ticks[0].at" });
    const some = { at: studio.now, in: true, level: 0 };
    const answer = await studio.give("tick-load", {
      id: "l",
      ticks: [
        { ...some, placement: 0 },
        { ...some, placement: 9 },
      ],
    });
    expect(answer.entry.summary).toBe("Set cup in first; left out 1 of places that have changed");
    expect((await load()).ticks).toHaveLength(1);
  });
});

test("a tick that names its spot finds its piece in a plan changed while the phone was away", async () => {
  await change({ plan: planOf([at("cup", -90), at("cup", 0)], [at("cup", 0)]) });
  await change({ plan: planOf([at("cup", 0), at("bowl", -90)], [at("cup", 0)]) });
  const spot = { topMm: 41, xMm: 0, yMm: 0 };
  await tick(0, 1, { ware: "cup", spot });
  expect((await load()).ticks).toEqual([{ level: 0, placement: 0, at: studio.now }]);
  const gone = tick(0, 0, { ware: "cup", spot: { ...spot, xMm: -90 } });
  await expect(gone).rejects.toMatchObject({
    code: "unknown-place",
    found: "a tick for cup as piece 1 of level 1, which stands elsewhere now",
  });
});

test("a copy is another way to load the same kiln: planned alike, with nothing in it yet", async () => {
  await change({ plan: planOf([at("cup", 0)]), pins: [{ level: 0, placement: 0 }] });
  await tick(0, 0);
  await studio.give("copy-load", { id: "l", name: "other", newId: "o" });
  await studio.give("copy-load", { id: "o", name: "third", newId: "p" });
  const first = await load();
  expect(await studio.get("loads", "o")).toMatchObject({
    ...{ alternativeOf: "l", state: "planned", ticks: [], version: 1, name: "other" },
    ...{ plan: first.plan, pins: first.pins, sources: first.sources, request: first.request },
  });
  expect((await studio.get("loads", "p")).alternativeOf).toBe("l");
});

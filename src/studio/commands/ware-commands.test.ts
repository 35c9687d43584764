import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type StudioInUse, studioInUse } from "../../store/testing/studio-in-use.ts";

let studio: StudioInUse;
const batch = (id: string, ware: object = {}, more: object = {}) => ({
  ...{ id, stage: "glazed", firingKind: "glaze", dueOn: null, ownerNote: "", clayBodyId: null, glazeId: null, ...more },
  ware: { name: "espresso cup", count: 6, diameterMm: 70, heightMm: 60, ...ware },
});
const add = (...ware: object[]) => studio.give("add-ware", { ware });
const change = (ids: string[], input: object) => studio.give("change-ware", { ids, change: input });
const ware = (id: string) => studio.get("ware", id);
beforeEach(async () => {
  studio = await studioInUse();
});
afterEach(() => studio.end());

describe("added ware", () => {
  test("is told of in her words", async () => {
    const summaries = [
      await add(batch("a")),
      await add(batch("b", { name: "lid", count: 1 })),
      await add(batch("c", { name: "dish", count: 3 })),
      await add(batch("d", { name: "vase no. 3", count: 2 })),
      await add(batch("e"), batch("f")),
    ].map(({ entry }) => entry.summary);
    expect(summaries).toEqual([
      ...["Added 6 espresso cups", "Added 1 lid", "Added 3 dishes", "Added 2 × vase no. 3", "Added 2 batches"],
    ]);
  });

  test("gets an id and its times; what is wrong with it is named by its place", async () => {
    const { id: _, ...nameless } = batch("a");
    const { changed } = await add(nameless);
    const [made] = Object.values(changed.ware ?? {});
    expect(made).toMatchObject({ id: expect.stringMatching(/^made-/), createdAt: studio.now, changedAt: studio.now });
    await expect(add(batch("b", { count: 0 }))).rejects.toMatchObject({ path: "ware[0].ware.count" });
    await expect(add(batch("b", {}, { dueOn: "2026-02-30" }))).rejects.toMatchObject({ path: 'ware "b".dueOn' });
    await expect(add({ ...batch("b"), createdAt: studio.now })).rejects.toMatchObject({ code: "unknown-field" });
  });
});

describe("changed ware", () => {
  test("keeps what is not named; null takes a field out", async () => {
    await add(batch("a", { cone: "6", mustFire: true, handle: { reachMm: 20, widthMm: 12, angleDeg: 0 } }));
    studio.now = "2026-11-26T08:00:00.000Z";
    await change(["a"], { ware: { cone: null, handle: null, count: 4 }, dueOn: "2026-12-18" });
    const { ware: piece, ...rest } = await ware("a");
    expect(piece).toEqual({ name: "espresso cup", count: 4, diameterMm: 70, heightMm: 60, mustFire: true });
    expect(rest).toMatchObject({ dueOn: "2026-12-18", stage: "glazed", changedAt: studio.now });
    await expect(change(["a"], { ware: { count: null } })).rejects.toMatchObject({ path: "change.ware.count" });
  });

  test("has its outline stretched with its size, unless she draws another", async () => {
    const profile = [
      [0, 20],
      [60, 35],
    ];
    await add(batch("a", { profile }));
    await change(["a"], { ware: { heightMm: 90, diameterMm: 140 } });
    expect((await ware("a")).ware.profile).toEqual([
      [0, 40],
      [90, 70],
    ]);
    await expect(
      change(["a"], {
        ware: {
          heightMm: 60,
          profile: [
            [0, 20],
            [90, 35],
          ],
        },
      }),
    ).rejects.toMatchObject({
      code: "wrong-profile",
    });
  });

  test("wears a recorded glaze or one in words, the last that was said", async () => {
    await studio.give("add-glaze", { id: "g", name: "moss", cones: null, runs: false, note: "" });
    await add(batch("a", { glaze: "ash" }));
    await change(["a"], { glazeId: "g" });
    expect(await ware("a")).toMatchObject({ glazeId: "g", ware: expect.not.objectContaining({ glaze: "ash" }) });
    await change(["a"], { ware: { glaze: "ash" } });
    expect(await ware("a")).toMatchObject({ glazeId: null, ware: { glaze: "ash" } });
    await expect(change(["a"], { glazeId: "g", ware: { glaze: "ash" } })).rejects.toMatchObject({ code: "said-twice" });
  });

  test("says what changed, by what is otherwise and not by what was sent along", async () => {
    const outline = [
      [0, 20],
      [60, 35],
    ];
    await add(batch("a", { profile: outline }), batch("b", { name: "lid", heightMm: 20 }));
    await studio.give("add-glaze", { id: "g", name: "moss", cones: null, runs: false, note: "" });
    const said = async (ids: string[], input: object) => (await change(ids, input)).entry.summary;
    expect(await said(["a"], { dueOn: "2026-12-18", stage: "glazed" })).toBe("Changed the due day of espresso cup");
    expect(await said(["a"], { ware: { heightMm: 66, count: 6 } })).toBe("Changed the height of espresso cup");
    expect(await said(["a"], { glazeId: "g", ware: { cone: "6" } })).toBe(
      "Changed the glaze and the cone of espresso cup",
    );
    expect(await said(["a"], { ware: { name: "mocha cup" } })).toBe("Renamed espresso cup to mocha cup");
    expect(await said(["a", "b"], { dueOn: "2026-12-19", firingKind: "glaze" })).toBe(
      "Changed the due day of 2 batches",
    );
    expect(await said(["a", "b"], { ware: { count: 2, massKg: 1, value: 3 }, ownerNote: "hers" })).toBe(
      "Changed the count, the mass and more of 2 batches",
    );
    expect(await said(["b"], { ware: { count: 2 } })).toBe("Left lid as it was");
  });

  test("is all of it changed or none", async () => {
    await add(batch("a"), batch("b"));
    await expect(change(["a", "nobody"], { stage: "bisque" })).rejects.toMatchObject({ code: "unknown-record" });
    expect((await ware("a")).stage).toBe("glazed");
    expect((await change(["a", "b"], { stage: "bisque" })).entry.summary).toBe("Marked 2 batches as bisque");
  });
});

describe("a ware list", () => {
  const head = "id,name,count,diameterMm,heightMm\n";

  test("is taken in as its preview says, and told of", async () => {
    await add(batch("a"));
    const csv = `${head}a,espresso cup,5,70,60\n,jar,3,90,100\n,jar,none,90,100\n`;
    const answer = await studio.give("import-ware", { csv, stage: "greenware" });
    expect(answer.entry.summary).toBe("Took in a ware list: 1 batch new, 1 changed, 1 left out");
    expect(Object.keys(answer.changed.ware ?? {})).toHaveLength(2);
  });

  test("of which no row will do is refused", async () => {
    const csv = `${head},jar,none,90,100\n`;
    await expect(studio.give("import-ware", { csv, stage: "bisque" })).rejects.toMatchObject({
      code: "no-row-will-do",
    });
    await expect(studio.give("import-ware", { csv: "hello" })).rejects.toMatchObject({ code: "not-a-ware-list" });
  });
});

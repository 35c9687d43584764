import { afterAll, describe, expect, test } from "vitest";
import { checkPlan } from "../../loading/checker/check-plan.ts";
import type { PlanFigures } from "../../loading/load-plan.ts";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { type StudioInUse, studioInUse } from "../../store/testing/studio-in-use.ts";
import { FORM_NAMES } from "../../ware/forms.ts";
import type { LoadRecord } from "../records/load-record.ts";
import { WARE_STAGES } from "../records/ware-record.ts";
import { beginEmpty, beginWithDemo, isNew } from "./begin.ts";
import { demoStudio } from "./demo-studio.ts";

const NOW = "2026-11-25T12:00:00.000Z";
const ids = () => {
  let n = 0;
  return () => `id-${++n}`;
};
const demo = demoStudio(NOW, ids());
const standingIn = (load: LoadRecord | undefined): string[] =>
  (load?.plan?.levels ?? []).flatMap(({ placements }) => placements.map(({ ware }) => ware));
const opened: StudioInUse[] = [];
const open = async () => {
  const studio = await studioInUse();
  opened.push(studio);
  return studio;
};
afterAll(() => Promise.all(opened.map((studio) => studio.end())));

describe("the demo studio", () => {
  test("has loads that keep every rule of theirs, and use their kilns well", () => {
    for (const load of demo.loads) {
      const request = readLoadRequest(load.request);
      const plan = readLoadPlan(load.plan, request);
      expect(checkPlan(request, plan), load.name).toEqual([]);
    }
    const figures = demo.loads.map(({ plan }) => plan?.figures as unknown as PlanFigures);
    expect(figures.map(({ pieces }) => pieces >= 11)).toEqual([true, true, true, true]);
  });

  test("has loads as they come in a studio: planned, another way, being loaded, unpacked", () => {
    const [market, tall, bisque, trial] = demo.loads;
    expect(demo.loads.map(({ state }) => state)).toEqual(["planned", "planned", "loading", "unpacked"]);
    expect(tall?.alternativeOf).toBe(market?.id);
    expect(standingIn(market)).toEqual(expect.arrayContaining(["soup bowl", "side plate", "round teapot"]));
    expect(standingIn(tall)).toEqual(expect.arrayContaining(["tall vase", "round teapot"]));
    expect(market?.plan?.left.map(({ ware }) => ware)).toContain("great platter");
    const pieces = (bisque?.plan?.levels ?? []).flatMap(({ placements }) => placements).length;
    expect(bisque?.ticks.length).toBeGreaterThan(5);
    expect(bisque?.ticks.length).toBeLessThan(pieces);
    expect(trial?.ticks).toHaveLength(11);
    for (const load of demo.loads) expect(load.sources.length).toBe(load.request.ware.length);
  });

  test("has waiting ware of every form and stage, about sixty batches, each name once", () => {
    expect(demo.ware.length).toBeGreaterThanOrEqual(58);
    expect(new Set(demo.ware.map(({ ware }) => ware.form))).toEqual(new Set(FORM_NAMES));
    expect(new Set(demo.ware.map(({ stage }) => stage))).toEqual(new Set(WARE_STAGES));
    expect(new Set(demo.ware.map(({ firingKind }) => firingKind))).toEqual(
      new Set(["bisque", "glaze", "once-fired", null]),
    );
    expect(new Set(demo.ware.map(({ ware }) => ware.name)).size).toBe(demo.ware.length);
  });

  test("has nothing due in the past and nothing written in the future, whenever it is begun", () => {
    const late = "2027-02-28T23:59:59.999Z";
    for (const [now, studio] of [[NOW, demo] as const, [late, demoStudio(late, ids())] as const]) {
      for (const { dueOn } of studio.ware) if (dueOn !== null) expect(dueOn >= now.slice(0, 10)).toBe(true);
      for (const { createdAt, changedAt } of [...studio.ware, ...studio.firings, ...studio.notes, ...studio.loads]) {
        expect(createdAt <= changedAt && changedAt <= now).toBe(true);
      }
    }
  });

  test("is the same each time, but for ids and times", () => {
    expect(demoStudio(NOW, ids())).toEqual(demo);
  });
});

describe("a new studio", () => {
  test("begins with the demo, once, and everything in it is kept", async () => {
    const { store } = await open();
    expect(await store.read(isNew)).toBe(true);
    await beginWithDemo(store, NOW, ids());
    await store.read(async (records) => {
      expect(await isNew(records)).toBe(false);
      expect(await records.ware.count()).toBe(demo.ware.length);
      expect(await records.loads.list()).toHaveLength(demo.loads.length);
      expect(await records.settings.get()).toEqual(demo.settings);
    });
    await expect(beginWithDemo(store, NOW, ids())).rejects.toMatchObject({ code: "begun-already" });
    await expect(beginEmpty(store)).rejects.toMatchObject({ code: "begun-already" });
  });

  test("begins empty, and is new no more", async () => {
    const { store } = await open();
    await beginEmpty(store);
    expect(await store.read(async (records) => [await isNew(records), await records.isEmpty()])).toEqual([false, true]);
    await expect(beginWithDemo(store, NOW, ids())).rejects.toMatchObject({ code: "begun-already" });
  });
});

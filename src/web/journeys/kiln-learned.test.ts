import type { Page } from "playwright-core";
import { describe, expect, test, vi } from "vitest";
import type { Prediction } from "../../firing/prediction/predict.ts";
import { planLoad } from "../../loading/planner/plan-load.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { seededChance } from "../../measures/seeded-chance.ts";
import type { ReadingsKept } from "../../studio/api/readings-contract.ts";
import { DEMO_KILNS } from "../../studio/demo/demo-kilns.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { Reading } from "../../studio/records/reading.ts";
import { loggedReadings, openedAfterMin } from "../../studio/year/true-firing.ts";
import { askStudio } from "../testing/ask-studio.ts";
import { beginJourney, type Journey } from "../testing/browser-journey.ts";
import { energyOff, localField, minutesAfter, wentInTruth } from "../testing/true-kiln.ts";

const journey = await beginJourney();
if (typeof journey === "string") test.skip(`from a planned load to a kiln that is known: ${journey}`, () => {});
else kilnLearned(journey);

/** A probe that slips reads too low from here on, so far into the climb, for so long. */
const SLIPPED = { aboveC: 800, lastsMin: 50, share: 0.85 };

/** The main path around a firing, in the browser: prepared and watched at the desk, unloaded on the phone, learned from. */
function kilnLearned({ studio, visit, faults }: Journey): void {
  const { post, command, list, get } = askStudio(studio.address);

  describe("a planned load", () => {
    test("is prepared, fired, watched, unloaded and learned from, and the next is foretold better", async () => {
      await beginWithTwoLoads();
      const { page } = await visit("desktop");
      await page.goto("/firings");
      await choose(page, "Prepare a firing", "for the shop");
      await page.getByText("Draws about").waitFor();
      const prepared = await kept(onlyFiring, ({ foretold }) => foretold !== undefined);
      const load = await get("loads", "first");
      const went = wentInTruth(prepared, load);
      const { shutOffMin } = went.firing;
      // Switched on so long ago that by now it has cooled: every time stamp that follows lies in the past.
      const startedAt = minutesAfter(new Date().toISOString(), -Math.ceil(openedAfterMin(went)) - 10);
      await seeToTheList(page, prepared);
      await page.getByRole("button", { name: "It is switched on" }).click();
      await page.getByLabel("Since when").fill(localField(startedAt));
      await page.getByRole("button", { name: "Yes, it fires" }).click();
      await page.waitForURL(/\/watch$/);
      await page.getByText("No reading yet").waitFor();

      const token = await addLogger(page);
      const started = (await onlyFiring()).startedAt as string;
      const readings = loggedReadings(went, started, seededChance(5));
      const slippedFrom = readings.findIndex(({ tempC }) => tempC > SLIPPED.aboveC);
      const fed = readings.map((each, i): Reading => {
        const slipped = i >= slippedFrom && i < slippedFrom + SLIPPED.lastsMin;
        return slipped ? { ...each, tempC: Math.round(10 * (20 + SLIPPED.share * (each.tempC - 20))) / 10 } : each;
      });
      const send = async (part: readonly Reading[]): Promise<void> => {
        const kept = await post<ReadingsKept>("readings", { readings: part }, { authorization: `Bearer ${token}` });
        expect(kept.kept).toBe(part.length);
      };

      await send(fed.slice(0, slippedFrom));
      await page.getByText(/^Wanted now/).waitFor();
      expect(await page.getByRole("alert").getByRole("heading").count()).toBe(0);
      await send(fed.slice(slippedFrom, slippedFrom + 20));
      await page.getByRole("alert").getByRole("heading", { name: "The probe may have slipped out" }).waitFor();
      await send(fed.slice(slippedFrom + 20, Math.ceil(shutOffMin) + 1));
      await page.getByText("One thing was noticed and is over").waitFor();

      await page.getByRole("button", { name: "It is shut off" }).click();
      await page.getByLabel("When").fill(localField(minutesAfter(started, shutOffMin)));
      await page.getByRole("button", { name: "Yes, it is off" }).click();
      await page.getByRole("button", { name: "It is opened" }).waitFor();
      await send(fed.slice(Math.ceil(shutOffMin) + 1));

      const phone = (await visit("phone")).page;
      await unload(phone, prepared.id, minutesAfter(started, openedAfterMin(went)), went);
      await kept(
        () => get("loads", "first"),
        ({ state }) => state === "unpacked",
      );
      const fired = await get("firings", prepared.id);
      expect(fired).toMatchObject({ state: "finished" });
      expect(fired.outcomes?.filter(({ grade }) => grade === "second").map((each) => each.faults)).toEqual([
        ["pinholes"],
      ]);
      expect(new Set(fired.cones?.map(({ level }) => level)).size).toBe(load.plan?.levels.length);
      expect(fired.notices?.map(({ kind }) => kind)).toContain("slipped probe");

      await page.goto(`/learn/${load.kilnId}`);
      await page.getByRole("button", { name: "Learn from the last firing" }).click();
      await page.getByRole("heading", { name: "What it learned of the kiln" }).waitFor();
      const [taught] = await list("calibrations");
      expect(taught?.firingIds).toEqual([prepared.id]);

      await page.goto("/firings");
      await choose(page, "Prepare a firing", "for the market");
      await page.getByText("Draws about").waitFor();
      const next = await kept(
        async () => (await list("firings")).find(({ loadId }) => loadId === "second"),
        (firing) => firing?.foretold !== undefined,
      );
      expect(next?.foretold?.calibrationId).toBe(taught?.id);
      const [before, after] = [
        energyOff(fired, went),
        energyOff(next as FiringRecord, wentInTruth(next as FiringRecord, await get("loads", "second"))),
      ];
      console.log(
        `energy foretold wrongly by ${(100 * before).toFixed(1)} % before, ${(100 * after).toFixed(1)} % after`,
      );
      expect(after).toBeLessThan(before / 2);
    });

    test("meets no error on the way", () => {
      expect(faults).toEqual([]);
    });
  });

  const onlyFiring = async (): Promise<FiringRecord> => {
    const [firing, ...others] = await list("firings");
    if (firing === undefined) throw new Error("No firing is kept yet.");
    expect(others).toEqual([]);
    return firing;
  };

  /** Two loads of like ware, planned. How a load is made and planned in the browser is another journey. */
  async function beginWithTwoLoads(): Promise<void> {
    await post("begin", { with: "empty" });
    await command("add-kiln", { id: "kiln", ...DEMO_KILNS.big });
    for (const [id, name] of [
      ["first", "for the shop"],
      ["second", "for the market"],
    ] as const) {
      await command("add-ware", { ware: wareOf(id) });
      await command("make-load", { id, kilnId: "kiln", name, wareIds: wareOf(id).map((each) => each.id) });
      const load = await get("loads", id);
      const outcome = planLoad(readLoadRequest(load.request), { seed: 1, workLimit: 20_000 });
      if (outcome.kind === "impossible") throw new Error(outcome.reasons[0]?.message);
      await command("change-load", { id, version: load.version, plan: outcome.plan });
    }
  }
}

const wareOf = (load: string) =>
  (
    [
      ["mug", 85, 95, 14],
      ["bowl", 140, 65, 8],
      ["vase", 95, 170, 4],
    ] as const
  ).map(([name, diameterMm, heightMm, count]) => ({
    ...{ id: `${load}-${name}`, stage: "glazed", firingKind: "glaze", dueOn: null, ownerNote: "" },
    ...{ clayBodyId: null, glazeId: null },
    ware: { name, count, diameterMm, heightMm, glaze: "oat satin", cone: "6" },
  }));

/** What the studio keeps once it is as it should be: a screen shows what she did before the studio has it. */
async function kept<Kept>(look: () => Promise<Kept>, is: (kept: Kept) => boolean): Promise<Kept> {
  return vi.waitFor(
    async () => {
      const now = await look();
      if (!is(now)) throw new Error(`Not kept so yet: ${JSON.stringify(now).slice(0, 300)}`);
      return now;
    },
    { timeout: 20_000, interval: 100 },
  );
}

async function choose(page: Page, menu: string, item: string): Promise<void> {
  await page.getByRole("button", { name: menu }).first().click();
  await page.getByRole("menuitem", { name: item }).click();
}

/** Ticks the first things of the list; what is open is told at the switch. */
async function seeToTheList(page: Page, { checklist = [] }: FiringRecord): Promise<void> {
  const boxes = page.getByRole("region", { name: "Before the switch" }).getByRole("checkbox");
  for (let i = 0; i < 3; i++) await boxes.nth(i).check({ force: true });
  await page.getByText(`3 of ${checklist.length}`).waitFor();
}

async function addLogger(page: Page): Promise<string> {
  await page.getByRole("button", { name: "What sends them" }).click();
  await page.getByLabel("Its name").fill("kiln-shed");
  await page.getByRole("button", { name: "Add it and show its token" }).click();
  const token = await page.locator("code").first().textContent();
  await page.getByRole("button", { name: "I have the token" }).click();
  return (token ?? "").trim();
}

/** The kiln opened, the meter read, every shelf's cone seen, one piece a second, the rest good. */
async function unload(page: Page, firingId: string, openedAt: string, { kWh, levels }: Prediction): Promise<void> {
  await page.goto(`/firings/${firingId}/unload`);
  await page.getByLabel("Opened", { exact: true }).fill(localField(openedAt));
  await page.getByLabel("Meter before, kWh").fill("4100");
  await page.getByLabel("Meter after, kWh").fill((4100 + kWh).toFixed(1));
  await page.getByRole("button", { name: "It is open" }).click();
  for (const [n, { level, ladder }] of [...levels].reverse().entries()) {
    const shelf = page.getByRole("region", { name: `Shelf ${level + 1}`, exact: true });
    await shelf.getByText("Witness cones").click();
    const cone = shelf.getByRole("slider", { name: "Firing cone 6" });
    // A clock's hours by what its shelf got: cone 6 is down at 27 on the ladder.
    const hours = Math.round(Math.min(6, Math.max(0, 6 + 3 * (ladder - 27))));
    await cone.press("Home");
    for (let hour = 0; hour < hours; hour++) await cone.press("ArrowRight");
    if (n === 0) {
      await shelf.getByRole("listitem").first().getByRole("button").click();
      await page.getByRole("button", { name: "Second", exact: true }).click();
      await page.getByRole("button", { name: /^pinholes/i }).click();
      await page.getByRole("button", { name: "Back to the shelf" }).click();
    }
    await page.getByRole("button", { name: /Rest is good/ }).click();
    await page.getByRole("button", { name: /^(On to|See it all)/ }).click();
  }
  await page.getByRole("button", { name: /Keep it.*the load is unpacked/ }).click();
  await page.getByRole("link", { name: "To the firing" }).waitFor();
}

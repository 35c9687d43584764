import type { Page } from "playwright-core";
import type { LoadRecord } from "../../src/studio/records/load-record.ts";
import { median, type Row } from "../row.ts";
import { measuredPage } from "./measured-page.ts";
import { ask, command, waiting } from "./studio-data.ts";
import type { Studios } from "./studios.ts";

const PIECES = 40;
const MOST_MS = 1000;

interface Planned {
  readonly seed: number;
  /** From the press to a plan painted in the editor. Milliseconds. */
  readonly shownMs: number;
  /** From the press until the planning was over. Milliseconds. */
  readonly overMs: number;
  /** What the plans she was told of were worth, one after the other. */
  readonly values: readonly number[];
}

/** From "Plan it" with 40 waiting pieces to a plan that she sees, five times with other pieces, each with a new visitor. */
export async function planning({ browser, own }: Studios) {
  const found: Planned[] = [];
  for (const seed of [1, 2, 3, 4, 5]) {
    const ware = waiting(seed, PIECES);
    await command(own, "add-ware", { ware });
    const page = await measuredPage(browser, own);
    found.push({ seed, ...(await planIt(page)) });
    await page.context().close();
    for (const { id } of await ask<LoadRecord[]>(own, "/loads")) await command(own, "remove-load", { id });
    await command(own, "remove-ware", { ids: ware.map(({ id }) => id) });
  }
  const shown = found.map(({ shownMs }) => shownMs);
  const rows: Row[] = [
    {
      what: `${PIECES} waiting: from "Plan it" to a plan in the editor`,
      target: "≤ 1000 ms",
      found: `${median(shown).toFixed(0)} ms, at worst ${Math.max(...shown).toFixed(0)} ms`,
      met: Math.max(...shown) <= MOST_MS,
    },
    {
      what: `${PIECES} waiting: how it goes on`,
      target: "",
      found: goesOn(found),
      met: null,
    },
  ];
  return { rows, result: { found } };
}

/** A plan that holds everything is the first and the last: then there is nothing to look for. */
function goesOn(found: readonly Planned[]): string {
  const improved = found.filter(({ values }) => values.length > 1);
  const better = improved.map(({ values }) => values.length - 1);
  const more = improved.map(({ values }) => ((values.at(-1) ?? 1) / (values[0] ?? 1) - 1) * 100);
  const over = median(found.map(({ overMs }) => overMs)).toFixed(0);
  if (improved.length === 0) return `none improved; over after ${over} ms`;
  return `${improved.length} of ${found.length} improved, ${median(better)} times, ${median(more).toFixed(1)} % more worth; over after ${over} ms`;
}

async function planIt(page: Page): Promise<Omit<Planned, "seed">> {
  await page.goto("/loads?new=1");
  const button = page.getByRole("button", { name: "Plan it" });
  await button.waitFor();
  await page.waitForTimeout(500);
  const told = page.evaluate<Omit<Planned, "seed">>(`(async () => {
    const pressed = await measured.pressed();
    let shownMs = null;
    measured.painted("[data-editor-drawing] [data-place]").then((at) => {
      shownMs = at - pressed;
    });
    const values = [];
    const line = () => [...document.querySelectorAll("[role=status]")].map((each) => each.textContent).join(" ");
    while (shownMs === null || /pieces so far|Looking for/.test(line())) {
      const value = Number(/worth ([\\d.]+)/.exec(line())?.[1]);
      if (value > 0 && value !== values.at(-1)) values.push(value);
      await new Promise(requestAnimationFrame);
    }
    return { shownMs, overMs: performance.now() - pressed, values };
  })()`);
  await button.click();
  return told;
}

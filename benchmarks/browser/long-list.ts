import type { Browser, Page } from "playwright-core";
import { benchmarkFile } from "../instances.ts";
import type { Row } from "../row.ts";
import { measuredPage, percentile, type Seen, watched } from "./measured-page.ts";
import { command, waitingBatch } from "./studio-data.ts";
import type { Studios } from "./studios.ts";

const BATCHES = 5000;
/** At sixty frames a second 18,000 a second: four or five rows a frame, faster than anybody reads. */
const PIXELS_A_FRAME = 300;
const TYPED = "bowl, batch 12";
/** A frame that comes later than this is seen as a stutter. */
const STUTTER_MS = 50;

interface LongList {
  /** From the beginning of the page's loading to the first row painted. Milliseconds. */
  readonly firstRowMs: number;
  readonly scrolling: Seen;
  readonly typing: Seen;
}

/** Thousands of batches, listed, scrolled through and filtered; beside as many plain rows in a page without a program. */
export async function longList({ browser, own }: Studios) {
  const kinds = benchmarkFile(1, BATCHES * 4).ware.slice(0, BATCHES);
  const ware = kinds.map((kind, i) => ({ id: `many-${i}`, ...waitingBatch(kind) }));
  await command(own, "add-ware", { ware });
  const ours = await listed(browser, own, async (page) => {
    await page.goto("/");
    return { row: "[role=grid] tr", search: page.getByRole("searchbox") };
  });
  await command(own, "remove-ware", { ids: ware.map(({ id }) => id) });
  const plain = await listed(browser, own, async (page) => {
    await page.setContent(plainRows(kinds));
    return { row: "tbody tr", search: page.getByRole("searchbox") };
  });
  const rows: Row[] = [
    {
      what: `${kinds.length} batches: first row`,
      target: "",
      found: `${ours.firstRowMs.toFixed(0)} ms; plain rows ${plain.firstRowMs.toFixed(0)} ms`,
      met: null,
    },
    ...(["scrolling", "typing"] as const).map(
      (what): Row => ({
        what: `${kinds.length} batches: ${what === "scrolling" ? "scrolled through" : `typing "${TYPED}" in the search`}`,
        target: "no task over 50 ms",
        found: `${seenWords(ours[what])}; plain rows ${seenWords(plain[what])}`,
        met: ours[what].longTasks.length === 0,
      }),
    ),
  ];
  return { rows, result: { ours: shortened(ours), plain: shortened(plain) } };
}

async function listed(
  browser: Browser,
  address: string,
  open: (page: Page) => Promise<{ row: string; search: ReturnType<Page["getByRole"]> }>,
): Promise<LongList> {
  const page = await measuredPage(browser, address);
  const { row, search } = await open(page);
  const firstRowMs = await page.evaluate<number>(`measured.painted(${JSON.stringify(row)})`);
  await page.waitForTimeout(2500);
  const scrolling = await watched(page, () => page.evaluate(`measured.scrollThrough(${PIXELS_A_FRAME})`));
  await page.evaluate("scrollTo(0, 0)");
  await search.click();
  await page.waitForTimeout(500);
  const typing = await watched(page, async () => {
    await search.pressSequentially(TYPED, { delay: 90 });
    for (const _ of TYPED) await page.keyboard.press("Backspace", { delay: 30 });
    await page.waitForTimeout(300);
  });
  await page.context().close();
  return { firstRowMs, scrolling, typing };
}

const seenWords = ({ longTasks, gaps }: Seen): string => {
  const late = gaps.filter((gap) => gap > STUTTER_MS).length;
  return `${longTasks.length} tasks over 50 ms (longest ${Math.max(0, ...longTasks).toFixed(0)}), ${late} of ${gaps.length} frames late, worst ${Math.max(...gaps).toFixed(0)} ms`;
};

const shortened = ({ firstRowMs, ...seen }: LongList) => ({
  firstRowMs,
  ...Object.fromEntries(
    Object.entries(seen).map(([what, { longTasks, gaps }]) => [
      what,
      { longTasks, frames: gaps.length, p95Ms: percentile(gaps, 0.95), worstMs: Math.max(...gaps) },
    ]),
  ),
});

/** The same batches as bare rows of text; typing hides those that do not fit. */
const plainRows = (kinds: readonly object[]): string => `<!doctype html>
<style>td { height: 72px; width: 200px } tr[hidden] { display: none }</style>
<input type="search">
<table><tbody>${kinds
  .map(
    (kind) =>
      `<tr>${Object.values(kind)
        .map((value) => `<td>${typeof value === "object" ? "" : value}</td>`)
        .join("")}</tr>`,
  )
  .join("")}</tbody></table>
<script>
  const rows = [...document.querySelectorAll("tr")].map((row) => ({ row, text: row.textContent }));
  document.querySelector("input").addEventListener("input", ({ target }) => {
    for (const { row, text } of rows) row.hidden = !text.includes(target.value);
  });
</script>`;

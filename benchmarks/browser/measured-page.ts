import { join } from "node:path";
import type { Browser, Page } from "playwright-core";

/** What `watch` and `seen` of in-page.js tell. Milliseconds. */
export interface Seen {
  readonly longTasks: readonly number[];
  readonly gaps: readonly number[];
}

/** A new visitor on a desktop with nothing remembered; each page measures itself (in-page.js). */
export async function measuredPage(browser: Browser, address: string): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 800 },
    baseURL: address,
    // What a first visit costs, not what one costs whose program is on the device.
    serviceWorkers: "block",
  });
  context.setDefaultTimeout(30_000);
  await context.addInitScript({ path: join(import.meta.dirname, "in-page.js") });
  return context.newPage();
}

/** Does something, and tells how the page bore it. */
export async function watched(page: Page, doing: () => Promise<unknown>): Promise<Seen> {
  await page.evaluate("measured.watch()");
  await doing();
  return page.evaluate<Seen>("measured.seen()");
}

/** The value that so many of a hundred stay under. */
export function percentile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

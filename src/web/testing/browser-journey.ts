import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll } from "vitest";
import { startChromium } from "./chromium.ts";
import { type ServedStudio, serveStudio } from "./served-studio.ts";

/** The sizes a journey is made in: a desktop, and a phone held in one hand. */
export const SIZES = {
  desktop: { viewport: { width: 1280, height: 800 }, hasTouch: false },
  phone: { viewport: { width: 380, height: 800 }, hasTouch: true, isMobile: true },
} as const;
export type Size = keyof typeof SIZES;

/** A browser with a studio of its own, for one file of journeys. */
export interface Journey {
  readonly browser: Browser;
  readonly studio: ServedStudio;
  /** A new visitor: a window of a size, with nothing remembered. What goes wrong in the page ends up in `faults`. */
  visit(size: Size, more?: Parameters<Browser["newContext"]>[0]): Promise<{ page: Page; context: BrowserContext }>;
  /** Errors that pages threw, and what the content policy refused. */
  readonly faults: string[];
}

/**
 * Begins a journey; in a sentence why not, where there is no browser and nobody may install one.
 *
 * @param passphrase serves the studio on the home network too, and asks everybody for this
 */
export async function beginJourney(passphrase: string | null = null): Promise<Journey | string> {
  const browser = await startChromium();
  if (typeof browser === "string") return browser;
  const studio = await serveStudio(passphrase);
  const faults: string[] = [];
  afterAll(async () => {
    await browser.close();
    await studio.end();
  });
  return {
    browser,
    studio,
    faults,
    visit: async (size, more) => {
      const context = await browser.newContext({ ...SIZES[size], baseURL: studio.address, ...more });
      context.setDefaultTimeout(15_000);
      const page = await context.newPage();
      page.on("pageerror", (error) => faults.push(error.message));
      page.on("console", (message) => {
        if (message.type() === "error" && /Content Security|Refused/.test(message.text())) faults.push(message.text());
      });
      return { page, context };
    },
  };
}

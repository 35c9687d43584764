import type { Browser } from "playwright-core";
import { startChromium } from "../../src/web/testing/chromium.ts";
import { beginWithDemo, serveStudio } from "../../src/web/testing/served-studio.ts";
import { ask, command, usualKiln } from "./studio-data.ts";

/** A browser, a studio with the demo, and one with nothing but a kiln; by address. */
export interface Studios {
  readonly browser: Browser;
  readonly demo: string;
  readonly own: string;
}

/** Serves both while something is done with them. */
export async function withStudios<Found>(doing: (studios: Studios) => Promise<Found>): Promise<Found> {
  const browser = await startChromium();
  if (typeof browser === "string") throw new Error(`Nothing can be measured in a browser: ${browser}.`);
  const [demo, own] = [await serveStudio(), await serveStudio()];
  try {
    await beginWithDemo(demo.address);
    await ask(own.address, "/begin", { with: "empty" });
    await command(own.address, "add-kiln", usualKiln());
    return await doing({ browser, demo: demo.address, own: own.address });
  } finally {
    await browser.close();
    await Promise.all([demo.end(), own.end()]);
  }
}

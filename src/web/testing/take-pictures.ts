// `npm run pictures`: every screen of the demo studio, on a desktop and a phone, light and dark, as PNG files to be looked at.
import { mkdirSync, rmSync } from "node:fs";
import { join, resolve } from "node:path";
import type { Browser } from "playwright-core";
import { startChromium } from "./chromium.ts";
import { screensOf } from "./screens.ts";
import { beginWithDemo, serveStudio } from "./served-studio.ts";

const SIZES = { desktop: { width: 1280, height: 800 }, phone: { width: 380, height: 800 } } as const;
const LOOKS = ["light", "dark"] as const;

const folder = resolve(process.argv[2] ?? ".cache/pictures");
const only = process.argv[3];
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const browser = await startChromium();
if (typeof browser === "string") throw new Error(`No pictures: ${browser}`);
const studio = await serveStudio();
try {
  await picture(browser, studio.address, [{ name: "begin", path: "/begin" }]);
  await beginWithDemo(studio.address);
  await picture(browser, studio.address, await screensOf(studio.address));
} finally {
  await browser.close();
  await studio.end();
}

async function picture(
  chromium: Browser,
  address: string,
  screens: readonly { readonly name: string; readonly path: string }[],
): Promise<void> {
  for (const [size, viewport] of Object.entries(SIZES)) {
    for (const colorScheme of LOOKS) {
      const context = await chromium.newContext({ viewport, colorScheme, hasTouch: size === "phone" });
      const page = await context.newPage();
      page.on("pageerror", (error) => process.stderr.write(`${error.message}\n`));
      for (const { name, path } of screens) {
        if (only !== undefined && !name.includes(only)) continue;
        await page.goto(`${address}${path}`);
        await page.waitForLoadState("load");
        await page.waitForTimeout(900);
        await page.screenshot({ path: join(folder, `${name}-${size}-${colorScheme}.png`) });
      }
      await context.close();
    }
  }
}

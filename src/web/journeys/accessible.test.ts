import { expect, test } from "vitest";
import { beginJourney, type Size } from "../testing/browser-journey.ts";
import { screensOf } from "../testing/screens.ts";
import { seriousFaults } from "../testing/serious-faults.ts";
import { beginWithDemo } from "../testing/served-studio.ts";

// Checked by axe-core, whose rules follow WCAG 2.2: nothing serious, nothing critical, on any screen in any look.
const LOOKS = ["light", "dark"] as const;
const sizes: readonly Size[] = ["desktop", "phone"];

const journey = await beginJourney();
if (typeof journey === "string") test.skip(`axe on every screen: ${journey}`, () => {});
else {
  const { studio, visit } = journey;
  await beginWithDemo(studio.address);
  const screens = await screensOf(studio.address);
  for (const size of sizes) {
    for (const colorScheme of LOOKS) {
      test(`every screen can be read and worked by everybody: ${size}, ${colorScheme}`, async () => {
        const { page, context } = await visit(size, { colorScheme, reducedMotion: "reduce" });
        const found: string[] = [];
        for (const { name, path } of screens) {
          await page.goto(path);
          await page.locator("main h1").first().waitFor();
          await page.waitForLoadState("networkidle").catch(() => {});
          found.push(...(await seriousFaults(page, name)));
        }
        await context.close();
        expect(found).toEqual([]);
      });
    }
  }
}

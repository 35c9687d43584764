import AxeBuilder from "@axe-core/playwright";
import type { Page } from "playwright-core";

/**
 * What axe-core, whose rules follow WCAG 2.2, finds serious or critical in the page as it stands; of a page with a dialog
 * open, in the dialog, for all else is out of reach then.
 */
export async function seriousFaults(page: Page, name: string): Promise<string[]> {
  const axe = new AxeBuilder({ page });
  if ((await page.locator("dialog[open]").count()) > 0) axe.include("dialog[open]");
  const { violations } = await axe.analyze();
  return violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .map(({ id, nodes }) => `${name}: ${id} (${nodes[0]?.target})`);
}

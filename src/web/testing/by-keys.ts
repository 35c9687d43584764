import type { Locator, Page } from "playwright-core";

/** More presses than any screen should ask for. */
const MOST_TABS = 90;

/**
 * Presses Tab (or Shift and Tab, for what stands at the end of a dialog) until the focus is on an element, as somebody does who has no mouse.
 *
 * @throws Error where Tab does not come there
 */
export async function tabTo(page: Page, element: Locator, key: "Tab" | "Shift+Tab" = "Tab"): Promise<void> {
  await element.first().waitFor();
  for (let presses = 0; presses < MOST_TABS; presses++) {
    if ((await element.and(page.locator(":focus")).count()) > 0) return;
    await page.keyboard.press(key);
  }
  throw new Error(`Tab does not come to ${element}.`);
}

/** Goes to an element by Tab and presses it with Enter. */
export async function pressByKeys(page: Page, element: Locator, key: "Tab" | "Shift+Tab" = "Tab"): Promise<void> {
  await tabTo(page, element, key);
  await page.keyboard.press("Enter");
}

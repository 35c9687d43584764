import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { beginJourney, type Size } from "../testing/browser-journey.ts";
import { screensOf } from "../testing/screens.ts";
import { seriousFaults } from "../testing/serious-faults.ts";
import { beginWithDemo } from "../testing/served-studio.ts";

/** Something that opens over a screen, or within it. */
interface Opened {
  readonly name: string;
  /** The screen's name in screens.ts, or an address. */
  readonly on: string;
  readonly open: (page: Page) => Promise<void>;
  /** What is there once it is open; a dialog where left out. */
  readonly shows?: string;
  readonly only?: Size;
}

const press = (name: RegExp | string) => (page: Page) => page.getByRole("button", { name }).first().click();
const key = (keys: string) => (page: Page) => page.keyboard.press(keys);
/** By its name from the list of everything that can be done. */
const find = (words: string) => async (page: Page) => {
  await page.keyboard.press("Control+k");
  const search = page.locator("dialog[open] input");
  await search.fill(words);
  await page.keyboard.press("Enter");
  await search.waitFor({ state: "detached" });
};
const tab = (name: RegExp) => (page: Page) => page.getByRole("tab", { name }).click();

const OPENED: readonly Opened[] = [
  { name: "new batch", on: "waiting", open: key("n") },
  { name: "a batch", on: "waiting", open: (page) => page.locator("[role=grid] tr").first().press("Enter") },
  { name: "take in a list", on: "waiting", open: find("Take in a list") },
  {
    name: "change many",
    on: "waiting",
    open: async (page) => {
      await press(/^Glaze, cone/)(page);
      await press("More with what is chosen")(page);
      await page.getByRole("menuitem", { name: "Change them all" }).click();
    },
  },
  { name: "palette", on: "waiting", open: key("Control+k") },
  { name: "keys", on: "load", open: key("?") },
  { name: "new load", on: "/loads?new=1", open: async () => {} },
  { name: "add a kiln", on: "kilns", open: key("n") },
  { name: "sheet", on: "load", open: find("The sheet to carry to the kiln") },
  { name: "menu of a load", on: "load", open: press("More for this load"), shows: "[role=menu]" },
  { name: "rules", on: "load", open: tab(/^Rules/), shows: "[role=tab][aria-selected=true]", only: "desktop" },
  {
    name: "pieces in words",
    on: "load",
    open: tab(/^Pieces/),
    shows: "[role=tab][aria-selected=true]",
    only: "desktop",
  },
  { name: "shelves", on: "load", open: tab(/^Shelves/), shows: "[role=tab][aria-selected=true]", only: "desktop" },
  { name: "what waits outside", on: "load", open: press(/^Waiting \d/), only: "phone" },
  { name: "the rules", on: "load", open: press(/^Rules/), only: "phone" },
  { name: "the level in words", on: "load", open: press("In words"), only: "phone" },
  { name: "planning", on: "load", open: press(/^Plan$/), only: "phone" },
  {
    name: "a chosen piece",
    on: "load",
    open: (page) => page.locator('[data-place="0.0"]').press("ArrowRight"),
    shows: "[data-place][aria-pressed=true]",
  },
];

const journey = await beginJourney();
if (typeof journey === "string") test.skip(`axe on every dialog: ${journey}`, () => {});
else {
  const { studio, visit } = journey;
  await beginWithDemo(studio.address);
  const paths = new Map((await screensOf(studio.address)).map(({ name, path }) => [name, path]));
  for (const [size, colorScheme] of [
    ["desktop", "light"],
    ["phone", "dark"],
  ] as const) {
    test(`whatever opens can be read and worked by everybody: ${size}, ${colorScheme}`, async () => {
      const { page, context } = await visit(size, { colorScheme, reducedMotion: "reduce" });
      const found: string[] = [];
      for (const { name, on, open, shows = "dialog[open] h2", only = size } of OPENED) {
        if (only !== size) continue;
        await page.goto(paths.get(on) ?? on);
        await page.locator("main h1").first().waitFor();
        await open(page);
        await page.locator(shows).first().waitFor();
        found.push(...(await seriousFaults(page, name)));
      }
      await context.close();
      expect(found).toEqual([]);
    });
  }
}

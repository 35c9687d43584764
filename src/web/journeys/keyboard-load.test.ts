import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { beginJourney } from "../testing/browser-journey.ts";
import { pressByKeys, tabTo } from "../testing/by-keys.ts";
import { keptBroken, keptLoad, keptPlan, piecesIn, placementAt, plannedLoad } from "../testing/kept-loads.ts";
import { beginWithDemo } from "../testing/served-studio.ts";

// Planning and adjusting a load without a mouse. What came of it is asked of the studio, not of the screen.
const journey = await beginJourney();
if (typeof journey === "string") test.skip(`a load by keyboard alone: ${journey}`, () => {});
else {
  const { studio, visit, faults } = journey;
  await beginWithDemo(studio.address);
  const { page } = await visit("desktop");
  let id = "";
  const load = () => keptLoad(studio.address, id);
  const plan = () => keptPlan(studio.address, id);
  const agreesWithChecker = () => agrees(page, () => keptBroken(studio.address, id));

  test("a firing's batches are chosen and planned", async () => {
    await page.goto("/");
    await pressByKeys(page, page.getByRole("button", { name: /^Glaze, cone 6/ }));
    await pressByKeys(page, page.getByRole("button", { name: "Plan a load of these" }));
    await pressByKeys(page, page.getByRole("button", { name: "Plan it" }), "Shift+Tab");
    await page.waitForURL(/\/loads\/[^/?]+$/);
    id = new URL(page.url()).pathname.split("/").at(-1) as string;
    await plannedLoad(studio.address, id);
    await page.getByText("Looking for better").waitFor({ state: "detached" });
    expect(piecesIn(await plan())).toBeGreaterThan(10);
    await agreesWithChecker();
  });

  test("the keys are told, and the help gives the focus back", async () => {
    await tabTo(page, page.locator("[data-place]"));
    await page.keyboard.press("?");
    const help = page.getByRole("dialog", { name: "Keys on this screen" });
    for (const name of ["Pick the piece up", "Turn it left", "Pin the piece", "Take the piece out"]) {
      await help.getByText(name).waitFor();
    }
    await page.keyboard.press("Escape");
    await help.waitFor({ state: "detached" });
    await page.locator("[data-place]:focus").waitFor();
  });

  test("a piece is chosen by arrows, picked up, nudged and set down", async () => {
    const key = await chooseByArrows(page, /./);
    const before = placementAt(await plan(), key);
    for (const press of ["Enter", "ArrowRight", "Shift+ArrowUp", "Shift+ArrowUp", "Enter"]) {
      await page.keyboard.press(press);
    }
    await eventually(async () => placementAt(await plan(), key).xMm).toBeCloseTo(tenth(before.xMm + 5), 6);
    expect(placementAt(await plan(), key).yMm).toBeCloseTo(tenth(before.yMm + 2), 6);
    await agreesWithChecker();
  });

  test("what Escape puts back has not moved", async () => {
    const { version } = await load();
    for (const press of ["Enter", "ArrowLeft", "Escape"]) await page.keyboard.press(press);
    await page.waitForTimeout(1000);
    expect((await load()).version).toBe(version);
  });

  test("a piece with a handle is turned", async () => {
    const key = await chooseByArrows(page, /mug|espresso|jug/);
    const before = placementAt(await plan(), key);
    for (const press of ["q", "q", "Shift+E"]) await page.keyboard.press(press);
    await eventually(async () => placementAt(await plan(), key).turnDeg).toBeCloseTo(
      tenth((before.turnDeg + 29) % 360),
      6,
    );
    await agreesWithChecker();
  });

  test("it is pinned, and carries its pin to the next level", async () => {
    await page.keyboard.press("p");
    await eventually(async () => (await load()).pins.length).toBe(1);
    const pieces = piecesIn(await plan());
    const from = (await load()).pins[0]?.level ?? 0;
    const isTop = from === (await plan()).levels.length - 1;
    const to = isTop ? from - 1 : from + 1;
    await page.keyboard.press(isTop ? "PageDown" : "PageUp");
    // Where that level is full it says so, and offers to set it there all the same.
    const anyway = page.getByRole("button", { name: "Set it there anyway" });
    const carried = async () => (await load()).pins[0]?.level === to;
    await eventually(async () => (await carried()) || (await anyway.count()) > 0).toBe(true);
    if (!(await carried())) await pressByKeys(page, anyway);
    await eventually(carried).toBe(true);
    expect(piecesIn(await plan())).toBe(pieces);
    await agreesWithChecker();
  });

  test("a piece is taken out, and one that waits is put in", async () => {
    await tabTo(page, page.locator("[data-place]"), "Shift+Tab");
    await chooseByArrows(page, /./);
    const pieces = piecesIn(await plan());
    await page.keyboard.press("Delete");
    await eventually(async () => piecesIn(await plan())).toBe(pieces - 1);
    await agreesWithChecker();

    await tabTo(page, page.getByRole("tab", { name: /^Waiting/ }));
    const small = page.getByRole("tabpanel").or(page.locator("[data-drop-tray]")).getByRole("button", { name: /./ });
    await pressByKeys(page, small);
    const anyway = page.getByRole("button", { name: "Set it there anyway" });
    const isIn = async () => piecesIn(await plan()) === pieces;
    await eventually(async () => (await isIn()) || (await anyway.count()) > 0).toBe(true);
    if (!(await isIn())) await pressByKeys(page, anyway);
    await eventually(isIn).toBe(true);
    await agreesWithChecker();
  });

  test("all of it is undone and done again, also after a reload", async () => {
    const [undo, redo] = [page.getByRole("button", { name: /^Undo/ }), page.getByRole("button", { name: /^Redo/ })];
    // A key asked too early, before the screen knows the history, does nothing.
    const press = async (button: Locator, keys: string) => {
      await button.and(page.locator(":enabled")).waitFor();
      await page.keyboard.press(keys);
    };
    const last = await plan();
    await press(undo, "Control+z");
    await eventually(async () => piecesIn(await plan())).toBe(piecesIn(last) - 1);
    const before = await plan();
    await press(redo, "Control+Shift+Z");
    await eventually(plan).toEqual(last);

    await page.reload();
    await page.locator("[data-place]").first().waitFor();
    await press(undo, "Control+z");
    await eventually(plan).toEqual(before);
    await press(undo, "Control+z");
    await eventually(async () => piecesIn(await plan())).toBe(piecesIn(last));
    await press(redo, "Control+Shift+Z");
    await eventually(plan).toEqual(before);
    await agreesWithChecker();
  });

  test("nothing throws on the way", () => {
    expect(faults).toEqual([]);
  });
}

/** The rules as the screen counts them are the rules as the checker finds them in what is kept. */
async function agrees(page: Page, broken: () => Promise<number>): Promise<void> {
  const count = async () => {
    const words = (await page.getByRole("tab", { name: /^Rules/ }).textContent()) ?? "";
    return Number(/\d+/.exec(words)?.[0] ?? 0);
  };
  await eventually(async () => (await count()) - (await broken())).toBe(0);
}

/** Goes from piece to piece by arrows, and up from level to level, until one has such a name; gives its place. */
async function chooseByArrows(page: Page, name: RegExp): Promise<string> {
  const way = ["Right", "Right", "Down", "Left", "Down", "Right", "Up", "Right", "Down", "Down", "Left", "Left", "Up"];
  for (let level = 0; level < 8; level++) {
    for (let presses = 0; presses < 39; presses++) {
      await page.keyboard.press(`Arrow${way[presses % way.length]}`);
      const chosen = page.locator("[data-place][aria-pressed=true]:focus");
      await chosen.waitFor();
      const key = await chosen.getAttribute("data-place");
      if (key !== null && name.test((await chosen.getAttribute("aria-label")) ?? "")) return key;
    }
    await page.keyboard.press("Shift+PageUp");
    await tabTo(page, page.locator("[data-place]"));
  }
  throw new Error(`Arrows come to no piece called ${name}.`);
}

/** By hand a piece is set to a tenth of a millimetre and of a degree. */
const tenth = (value: number): number => Math.round(value * 10) / 10;

/** An edit is kept a moment after it shows. */
const eventually = <Found>(ask: () => Promise<Found>) => expect.poll(ask, { timeout: 10_000 });

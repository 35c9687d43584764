import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import { beginJourney } from "../testing/browser-journey.ts";
import { between, type Point, setFingerDown } from "../testing/by-finger.ts";
import { keptBroken, keptPlan, piecesIn, placementAt } from "../testing/kept-loads.ts";
import { beginWithDemo } from "../testing/served-studio.ts";

// Pieces pushed about by mouse and by finger. What came of it is asked of the studio, not of the screen.
const journey = await beginJourney();
if (typeof journey === "string") test.skip(`pieces dragged by mouse and finger: ${journey}`, () => {});
else {
  const { studio, visit, faults } = journey;
  await beginWithDemo(studio.address);
  const loads = (await (await fetch(`${studio.address}/api/loads`)).json()) as LoadRecord[];
  const { id } = loads.find(({ state, plan }) => state === "planned" && plan !== null) as LoadRecord;
  const plan = () => keptPlan(studio.address, id);
  const whole = await plan();
  const open = async (page: Page): Promise<void> => {
    await page.goto(`/loads/${id}`);
    await page.locator("[data-place]").first().waitFor();
  };
  /** Takes back what was done and sees that nothing is left of it. */
  const undone = async (page: Page): Promise<void> => {
    await page.getByRole("button", { name: /^Undo: / }).click();
    await expect.poll(plan, SOON).toEqual(whole);
  };

  test("a dragged piece is answered while it moves, set down, and taken back", async () => {
    const { page, context } = await visit("desktop");
    await open(page);
    const answer = page.locator("[data-answer]:has([data-words])");
    const [piece, other] = [page.locator('[data-place="0.0"]'), page.locator('[data-place="0.1"]')];
    await take(page, piece);
    await go(page, await middleOf(other));
    expect(await answer.getAttribute("data-answer")).toBe("breaks");
    expect(await answer.textContent()).toMatch(/mm into|touches|at least|more too near/);
    await page.mouse.up();

    await expect.poll(async () => placementAt(await plan(), "0.0"), SOON).not.toEqual(placementAt(whole, "0.0"));
    const broken = await keptBroken(studio.address, id);
    expect(broken).toBeGreaterThan(0);
    const rules = (await page.getByRole("tab", { name: /^Rules/ }).textContent()) ?? "";
    expect(Number(/\d+/.exec(rules)?.[0])).toBe(broken);
    await undone(page);
    expect(await page.getByRole("tab", { name: /^Rules/ }).textContent()).toBe("Rules");

    await take(page, piece);
    await go(page, { x: 640, y: 8 });
    await page.getByText("Let go here and it stays where it was").waitFor();
    await page.mouse.up();
    await page.waitForTimeout(1000);
    expect(await plan()).toEqual(whole);
    await context.close();
  });

  test("a piece is dragged out of the load, and one that waits into it", async () => {
    const { page, context } = await visit("desktop");
    await open(page);
    const waits = page.locator("[data-drop-tray]").getByRole("button").first();
    await take(page, page.locator('[data-place="0.0"]'));
    await go(page, await middleOf(waits));
    await page.getByText(/Let go to take the .* out/).waitFor();
    await page.mouse.up();
    await expect.poll(async () => piecesIn(await plan()), SOON).toBe(piecesIn(whole) - 1);

    await take(page, waits);
    await go(page, await middleOf(page.locator("[data-editor-drawing]")));
    await page.mouse.up();
    await expect.poll(async () => piecesIn(await plan()), SOON).toBe(piecesIn(whole));
    await page.getByRole("button", { name: /^Undo: Put/i }).click();
    await expect.poll(async () => piecesIn(await plan()), SOON).toBe(piecesIn(whole) - 1);
    await page.getByRole("button", { name: /^Undo: Took/i }).waitFor();
    await undone(page);
    await context.close();
  });

  test("on a phone a finger drags a piece and the page stays where it is", async () => {
    const { page, context } = await visit("phone");
    await open(page);
    const piece = page.locator('[data-place="0.0"]');
    await piece.scrollIntoViewIfNeeded();
    const scrolled = await page.evaluate("scrollY");
    const from = await middleOf(piece);
    const finger = await setFingerDown(page, from);
    await finger.moveTo({ x: from.x, y: from.y + 60 });
    await page.locator("[data-answer] [data-words]").waitFor();
    await finger.takeUp();
    await expect.poll(async () => placementAt(await plan(), "0.0"), SOON).not.toEqual(placementAt(whole, "0.0"));
    const [before, after] = [placementAt(whole, "0.0"), placementAt(await plan(), "0.0")];
    expect(after.yMm).toBeLessThan(before.yMm - 20);
    expect(await page.evaluate("scrollY")).toBe(scrolled);
    await undone(page);
    await context.close();
  });

  test("nothing throws on the way", () => {
    expect(faults).toEqual([]);
  });
}

/** An edit is kept a moment after it shows. */
const SOON = { timeout: 10_000 };

async function middleOf(element: Locator): Promise<Point> {
  const box = await element.boundingBox();
  if (!box) throw new Error(`${element} is not on the screen.`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

async function take(page: Page, piece: Locator): Promise<void> {
  const { x, y } = await middleOf(piece);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 10, y + 4);
}

async function go(page: Page, to: Point): Promise<void> {
  for (const { x, y } of between({ x: to.x - 40, y: to.y - 20 }, to)) await page.mouse.move(x, y);
}

import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import { beginJourney } from "../testing/browser-journey.ts";
import { beginWithDemo } from "../testing/served-studio.ts";

const journey = await beginJourney();
if (typeof journey === "string") test.skip(`at the kiln without a network: ${journey}`, () => {});
else {
  const { studio, visit, faults } = journey;
  await beginWithDemo(studio.address);
  const answer = await fetch(`${studio.address}/api/loads`);
  const loading = ((await answer.json()) as LoadRecord[]).find((load) => load.state === "loading") as LoadRecord;
  const ticked = async (): Promise<number> => {
    const kept = await fetch(`${studio.address}/api/loads/${loading.id}`);
    return ((await kept.json()) as LoadRecord).ticks.length;
  };

  test("at the kiln, ticks hold without a network and through a reload, and are kept once it is back", async () => {
    const { page, context } = await visit("phone");
    const walk = `/loads/${loading.id}/at-the-kiln`;
    await page.goto("/");
    await page.getByRole("heading", { name: "What waits" }).waitFor();
    await onDevice(page);
    await page.goto(walk);
    const count = page.getByText(/\d+ of \d+ in/).first();
    await count.waitFor();
    const before = await inKiln(page);

    await context.setOffline(true);
    await page.reload();
    await count.waitFor();
    expect(await inKiln(page)).toBe(before);
    await setDownOne(page, before + 1);
    await page.reload();
    await count.waitFor();
    await expect.poll(() => inKiln(page)).toBe(before + 1);
    await setDownOne(page, before + 2);
    expect(await ticked()).toBe(loading.ticks.length);

    await context.setOffline(false);
    await expect.poll(ticked, { timeout: 30_000 }).toBe(loading.ticks.length + 2);
    await context.close();
  });

  test("an edit made while the studio is away is kept, and saved when it is back", async () => {
    const { page, context } = await visit("desktop");
    await page.goto("/materials");
    await page.getByRole("heading", { name: "Glazes", exact: true }).waitFor();
    await page.goto("/settings");
    const name = page.getByLabel("Name", { exact: true }).first();
    await name.waitFor();
    await studio.kill();
    await name.fill("Studio by the water");
    await page.keyboard.press("Tab");
    await page
      .getByText(/not saved yet/i)
      .first()
      .waitFor();
    await page.close();

    await studio.again();
    const later = await context.newPage();
    await later.goto(`${studio.address}/settings`);
    await expect
      .poll(
        async () =>
          ((await (await fetch(`${studio.address}/api/settings`)).json()) as { studioName: string }).studioName,
        {
          timeout: 30_000,
        },
      )
      .toBe("Studio by the water");
    await context.close();
  });

  test("nothing throws on the way", () => {
    expect(faults).toEqual([]);
  });
}

/** Waits until the whole program is kept on the device. */
const onDevice = (page: Page): Promise<unknown> =>
  page.evaluate("navigator.serviceWorker.ready.then(() => new Promise((done) => setTimeout(done, 1500)))");

async function inKiln(page: Page): Promise<number> {
  const text = await page
    .getByText(/\d+ of \d+ in/)
    .first()
    .textContent();
  return Number(/(\d+) of/.exec(text ?? "")?.[1]);
}

/** Presses the large button until one more piece is in. */
async function setDownOne(page: Page, wanted: number): Promise<void> {
  for (let presses = 0; presses < 40; presses++) {
    if ((await inKiln(page)) >= wanted) return;
    await page
      .getByRole("button", { name: /^(Done|It is in|In)/ })
      .first()
      .click();
    await page.waitForTimeout(150);
  }
  throw new Error("No piece could be set down.");
}

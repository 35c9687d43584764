import { expect, test } from "vitest";
import { beginJourney } from "../testing/browser-journey.ts";

const PASSPHRASE = "four words of clay";
const journey = await beginJourney(PASSPHRASE);
if (typeof journey === "string") test.skip(`a phone on the home network: ${journey}`, () => {});
else {
  const { studio, visit, faults } = journey;
  // By this machine's own address on the network, as a phone comes; by its own name where it is on none.
  const baseURL = studio.homeAddresses[0] ?? studio.address;

  test("a phone on the home network is asked for the passphrase, once", async () => {
    const { page, context } = await visit("phone", { baseURL });
    const refused = await page.request.get("/api/ware");
    expect(refused.status()).toBe(401);

    await page.goto("/");
    const field = page.getByLabel("Passphrase");
    await field.fill("a word of glass");
    await page.getByRole("button", { name: "Go in" }).click();
    await page.getByRole("alert").waitFor();
    await field.fill(PASSPHRASE);
    await page.getByRole("button", { name: "Go in" }).click();
    await page.getByRole("button", { name: /demo|look around/i }).click();
    await page.getByRole("heading", { name: "What waits" }).waitFor();
    await page.locator("[role=grid] tr").first().waitFor();

    await page.reload();
    await page.locator("[role=grid] tr").first().waitFor();
    expect(await field.count()).toBe(0);
    await context.close();

    const stranger = await visit("phone", { baseURL });
    await stranger.page.goto("/loads");
    await stranger.page.getByLabel("Passphrase").waitFor();
    await stranger.context.close();
  });

  test("nothing throws on the way", () => {
    expect(faults).toEqual([]);
  });
}

import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../loading/checker/check-plan.ts";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { beginJourney, type Journey, type Size } from "../testing/browser-journey.ts";
import { plannedLoad } from "../testing/kept-loads.ts";

const sizes: readonly Size[] = ["desktop", "phone"];
for (const size of sizes) {
  const journey = await beginJourney();
  if (typeof journey === "string") test.skip(`from an empty studio to a printed sheet, ${size}: ${journey}`, () => {});
  else firstLoad(size, journey);
}

/** The main job, as a newcomer does it: her kiln, her pots, a load, its sheet, and the kiln. */
function firstLoad(size: Size, { studio, visit, faults }: Journey): void {
  describe(`a newcomer on a ${size}`, () => {
    test("goes from an empty studio to a printed load sheet of her own pots", async () => {
      const { page } = await visit(size);
      await page.goto("/");
      await page.getByRole("button", { name: /Start with your own/ }).click();

      await page
        .getByRole("button", { name: /Add a kiln/ })
        .first()
        .click();
      await page.getByRole("button", { name: /Eight-sided/ }).click();
      await page.getByLabel("Depth, floor to lid").fill("17 3/4 in");
      await page.keyboard.press("Tab");

      await page.getByRole("link", { name: "Waiting" }).click();
      await page
        .getByRole("button", { name: /New batch/ })
        .first()
        .click();
      await addBatch(page, { form: "Mug", across: "3 1/2 in", tall: "9.5 cm", count: "8" });
      await addBatch(page, { form: "Bowl", across: "150", tall: "70", count: "4" });
      await addBatch(page, { form: "Vase", across: "11 cm", tall: "19 cm", count: "3", isLast: true });
      await page.getByText("Mug 89 × 95").first().waitFor();

      await page.getByRole("link", { name: "Loads" }).click();
      await page
        .getByRole("button", { name: /New load/ })
        .first()
        .click();
      await page.getByRole("button", { name: "Plan it" }).click();
      await page.waitForURL(/\/loads\/[^/?]+$/);
      const id = new URL(page.url()).pathname.split("/").at(-1) as string;
      const load = await plannedLoad(studio.address, id);

      expect(load.request.ware.reduce((sum, { count }) => sum + count, 0)).toBe(15);
      expect(load.request.ware.find(({ name }) => name === "Mug 89 × 95")?.diameterMm).toBeCloseTo(88.9, 6);
      expect(load.request.kiln.chamber.depthMm).toBeCloseTo(450.85, 6);
      const request = readLoadRequest(load.request);
      expect(checkPlan(request, readLoadPlan(load.plan, request))).toEqual([]);

      const sheet = await page.request.get(`/api/loads/${id}/sheet?paper=a4&units=metric&kind=pdf`);
      expect(sheet.headers()["content-type"]).toContain("application/pdf");
      expect((await sheet.body()).subarray(0, 5).toString()).toBe("%PDF-");
    });

    test("meets no error on the way", () => {
      expect(faults).toEqual([]);
    });
  });
}

interface Batch {
  readonly form: string;
  readonly across: string;
  readonly tall: string;
  readonly count: string;
  readonly isLast?: boolean;
}

async function addBatch(page: Page, { form, across, tall, count, isLast = false }: Batch): Promise<void> {
  await page.getByRole("radio", { name: form, exact: true }).click();
  await page.getByLabel(/^Across/).fill(across);
  await page.getByLabel("Tall").fill(tall);
  await page.getByLabel("How many").fill(count);
  await page.getByRole("button", { name: isLast ? "Add" : "Add and another", exact: true }).click();
}

import type { Row } from "../row.ts";
import { median } from "../row.ts";
import { measuredPage, percentile, watched } from "./measured-page.ts";
import { plannedLoad } from "./planned-load.ts";
import type { Studios } from "./studios.ts";

const MOVES = 100;

/** The view in space turned by hand, with some sixty pieces; drawn by the processor, for there is no graphics card. */
export async function inSpace({ browser, own }: Studios) {
  const load = await plannedLoad(own, "larger", 90);
  const page = await measuredPage(browser, own);
  await page.goto(`/loads/${load.record.id}/in-space`);
  const canvas = page.locator("canvas").first();
  await canvas.waitFor();
  await page.waitForTimeout(2500);
  const box = await canvas.boundingBox();
  if (!box) throw new Error("There is no view in space.");
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  const { gaps, longTasks } = await watched(page, async () => {
    for (let i = 0; i < MOVES; i++) {
      await page.mouse.move(x + 150 * Math.sin(i / 20), y + 40 * Math.sin(i / 33));
      await page.evaluate("new Promise(requestAnimationFrame)");
    }
  });
  await page.mouse.up();
  await page.context().close();
  await load.remove();
  const rows: Row[] = [
    {
      what: `${load.pieces} pieces in space, turned: time a frame, drawn without a graphics card`,
      target: "",
      found: `half ≤ ${median(gaps).toFixed(0)} ms, 95 of 100 ≤ ${percentile(gaps, 0.95).toFixed(0)} ms, worst ${Math.max(...gaps).toFixed(0)} ms; ${longTasks.length} tasks over 50 ms`,
      met: null,
    },
  ];
  return { rows, result: { pieces: load.pieces, gaps, longTasks } };
}

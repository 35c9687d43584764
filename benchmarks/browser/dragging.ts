import type { Page } from "playwright-core";
import type { LoadRecord } from "../../src/studio/records/load-record.ts";
import type { Row } from "../row.ts";
import { measuredPage, percentile } from "./measured-page.ts";
import { plannedLoad } from "./planned-load.ts";
import type { Studios } from "./studios.ts";

const MOST_MS = 16;
const MOVES = 300;

/** How long one pointer move took. Milliseconds. */
interface Move {
  /** All script that listens to it, the rules' answer and the drawing's attributes with it. */
  readonly script: number;
  /** From its coming until the frame that shows the answer was made; the wait for the next frame counts too. */
  readonly painted: number | null;
}

/** A piece dragged about the fullest level of a planned load, in kilns of some 40 and some 60 pieces. */
export async function dragging(studios: Studios) {
  const rows: Row[] = [];
  const result: object[] = [];
  for (const [kilnId, waiting] of [
    ["usual", 40],
    ["larger", 90],
  ] as const) {
    const load = await plannedLoad(studios.own, kilnId, waiting);
    const page = await measuredPage(studios.browser, studios.own);
    const moves = await drag(page, load.record);
    await page.context().close();
    await load.remove();
    const script = moves.map((move) => move.script);
    const painted = moves.flatMap((move) => move.painted ?? []);
    const p95 = percentile(script, 0.95);
    rows.push({
      what: `${load.pieces} pieces: dragging one, script for a pointer move`,
      target: "≤ 16 ms (95 of 100)",
      found: `${p95.toFixed(1)} ms, half ${percentile(script, 0.5).toFixed(1)}, worst ${Math.max(...script).toFixed(1)}, of ${script.length}; drawn within ${percentile(painted, 0.95).toFixed(0)} ms`,
      met: p95 <= MOST_MS,
    });
    result.push({ pieces: load.pieces, script, painted });
  }
  return { rows, result: { moves: result } };
}

async function drag(page: Page, load: LoadRecord): Promise<readonly Move[]> {
  await page.goto(`/loads/${load.id}`);
  await page.locator("[data-editor-drawing] [data-place]").first().waitFor();
  await toFullestLevel(page, load);
  await page.waitForTimeout(2500);
  const drawing = await page.locator("[data-editor-drawing]").boundingBox();
  const piece = await page.locator("[data-editor-drawing] [data-place]").first().boundingBox();
  if (!drawing || !piece) throw new Error("There is no piece to drag.");
  const [x, y] = [drawing.x + drawing.width / 2, drawing.y + drawing.height / 2];
  const most = Math.min(drawing.width, drawing.height) / 2 - 30;
  await page.mouse.move(piece.x + piece.width / 2, piece.y + piece.height / 2);
  await page.mouse.down();
  await page.evaluate("window.moves = measured.moves()");
  for (let i = 0; i < MOVES; i++) {
    // Round and round, farther and farther out: near everything that stands there, over shelf and wall.
    const angle = i * 0.13;
    const out = (most * i) / MOVES;
    await page.mouse.move(x + out * Math.cos(angle), y + out * Math.sin(angle));
  }
  await page.waitForTimeout(200);
  const moves = await page.evaluate<Move[]>("window.moves");
  await page.keyboard.press("Escape");
  await page.mouse.up();
  return moves;
}

async function toFullestLevel(page: Page, { plan }: LoadRecord): Promise<void> {
  const counts = plan?.levels.map(({ placements }) => placements.length) ?? [];
  const fullest = counts.indexOf(Math.max(...counts));
  for (let level = 0; level < fullest; level++) await page.keyboard.press("Shift+PageUp");
  await page.locator(`[data-editor-drawing] [data-place^="${fullest}."]`).first().waitFor();
}

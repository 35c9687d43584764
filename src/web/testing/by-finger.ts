import type { Page } from "playwright-core";

/** A place on the screen. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

const STEPS = 8;

/** Points from one place to another, a small way apart, as a hand goes. */
export const between = (from: Point, to: Point): Point[] =>
  Array.from({ length: STEPS }, (_, i) => ({
    x: from.x + ((to.x - from.x) * (i + 1)) / STEPS,
    y: from.y + ((to.y - from.y) * (i + 1)) / STEPS,
  }));

/** A finger set down on the screen, moved, and taken up again: real touches, which the page may also scroll by. */
export async function setFingerDown(page: Page, at: Point) {
  const session = await page.context().newCDPSession(page);
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", touchPoints: Point[]) =>
    session.send("Input.dispatchTouchEvent", { type, touchPoints });
  let now = at;
  await touch("touchStart", [at]);
  return {
    moveTo: async (to: Point): Promise<void> => {
      for (const point of between(now, to)) await touch("touchMove", [point]);
      now = to;
    },
    takeUp: async (): Promise<void> => {
      await touch("touchEnd", []);
      await session.detach();
    },
  };
}

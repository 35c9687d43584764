import { dragging } from "./browser/dragging.ts";
import { firstScreen } from "./browser/first-screen.ts";
import { inSpace } from "./browser/in-space.ts";
import { longList } from "./browser/long-list.ts";
import { planning } from "./browser/planning.ts";
import { type Studios, withStudios } from "./browser/studios.ts";
import type { Row } from "./row.ts";

const PARTS: Readonly<Record<string, (studios: Studios) => Promise<{ rows: Row[]; result: object }>>> = {
  firstScreen,
  planning,
  longList,
  dragging,
  inSpace,
};

/** The built application in a real browser, headless and without a graphics card. */
export function inBrowser(): Promise<{ rows: Row[]; result: object }> {
  return withStudios(async (studios) => {
    const rows: Row[] = [];
    const result: Record<string, object> = {};
    for (const [name, part] of Object.entries(PARTS)) {
      const found = await part(studios);
      rows.push(...found.rows);
      result[name] = found.result;
    }
    return { rows, result: { version: studios.browser.version(), ...result } };
  });
}

import { readLoadPlan } from "../../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../../loading/read-load-request.ts";
import { type SheetLoad, sheetLoad } from "../../../sheets/sheet-load.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import type { WareRecord } from "../../../studio/records/ware-record.ts";
import { batch, load } from "../../loads/testing/example-load.ts";

/** An invented fired load: two mugs, one behind the other, on the lower shelf; a bowl still raw on the upper. */
export const MUGS: WareRecord = batch("mug", { count: 2 });
export const BOWLS: WareRecord = batch("bowl", { count: 1, stage: "greenware", firingKind: "bisque" });

const level = { shelf: "full", xMm: 0, yMm: 0, turnDeg: 0, posts: [] };

export const FIRED: LoadRecord = load("fired", [MUGS, BOWLS], null, {
  state: "fired",
  plan: {
    format: "load-plan/1",
    levels: [
      {
        ...{ ...level, topMm: 41 },
        placements: [
          { ware: "mug", xMm: 0, yMm: 100, turnDeg: 0 },
          { ware: "mug", xMm: 0, yMm: -100, turnDeg: 0 },
        ],
      },
      { ...{ ...level, topMm: 200 }, placements: [{ ware: "bowl", xMm: 0, yMm: 0, turnDeg: 0 }] },
    ],
    left: [],
  },
});

export function firedSheet(): SheetLoad {
  const request = readLoadRequest(FIRED.request);
  return sheetLoad(request, readLoadPlan(FIRED.plan, request));
}

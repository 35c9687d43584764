import { GLAZE_WARE_RULES } from "../../loading/clearance-rules.ts";
import type { WareFile } from "../../ware/ware.ts";
import type { LoadRecord } from "../records/load-record.ts";

/**
 * The space a piece takes in a kiln, litres: an upright cylinder about its widest place, half the gap to its neighbour
 * all round, and the headroom over it; its handle and spout stand in their neighbours' air and are left out.
 */
export function pieceLitres(
  ware: Pick<WareFile, "diameterMm" | "heightMm" | "cookie">,
  rules: LoadRecord["request"]["rules"] = {},
): number {
  const { gapMm = GLAZE_WARE_RULES.gapMm, headroomMm = GLAZE_WARE_RULES.headroomMm } = rules;
  const acrossMm = Math.max(ware.diameterMm, ware.cookie?.diameterMm ?? 0) + gapMm;
  return (Math.PI / 4) * acrossMm ** 2 * (ware.heightMm + (ware.cookie?.thicknessMm ?? 0) + headroomMm) * 1e-6;
}

import type { KilnRecord } from "../../../studio/records/kiln-record.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";

/** The kiln a new load is most likely for: the one most loads were made for, else the largest. */
export function usualKiln(kilns: readonly KilnRecord[], loads: readonly LoadRecord[]): string | undefined {
  const times = (kilnId: string): number => loads.filter((load) => load.kilnId === kilnId).length;
  return [...kilns].sort((a, b) => times(b.id) - times(a.id) || roomMm3(b) - roomMm3(a))[0]?.id;
}

/** Width by width by depth: enough to tell a large kiln from a small one. */
function roomMm3({ kiln: { chamber } }: KilnRecord): number {
  if (chamber.shape === "rectangle") return chamber.widthMm * chamber.lengthMm * chamber.depthMm;
  return (chamber.shape === "round" ? chamber.diameterMm : chamber.acrossFlatsMm) ** 2 * chamber.depthMm;
}

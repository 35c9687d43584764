import type { ConeName } from "../../firing/cones/cone.ts";
import type { ConeRange } from "../../firing/cones/cone-range.ts";
import { type Curve, curveThrough } from "../../firing/heat-work/curve.ts";
import type { Place } from "../loads/places.ts";
import type { ClayBodyRecord, GlazeRecord } from "../records/clay-and-glaze-records.ts";
import type { FiringRecord } from "../records/firing-record.ts";
import type { LoadRecord } from "../records/load-record.ts";
import type { ReadingSeries } from "../records/reading.ts";
import { byTheMinute, controllingSeries } from "./firing-evidence.ts";
import { type FiringPace, firingPace } from "./firing-pace.ts";
import { type LevelHeat, levelHeats } from "./level-heat.ts";
import { type PiecePlace, piecePlace } from "./piece-place.ts";

/** Where and how one piece was fired: what its faults are weighed by. */
export interface PieceFacts {
  readonly kind: "bisque" | "glaze" | "once-fired" | "lustre" | null;
  /** The cone the firing was meant for. */
  readonly cone: ConeName | null;
  readonly place: PiecePlace | null;
  /** What its level got. */
  readonly heat: LevelHeat | null;
  readonly pace: FiringPace | null;
  /** Whether the pace was read by a probe or only foretold. */
  readonly paceFrom: "readings" | "foretold" | null;
  readonly glaze: { readonly name: string; readonly runs: boolean; readonly cones: ConeRange | null } | null;
  readonly clay: { readonly name: string; readonly cones: ConeRange | null } | null;
  /** The probe's temperature when the firing was called over; null where it was not read then. */
  readonly openedAtC: number | null;
  readonly brokenOff: boolean;
}

/** What a piece's facts are gathered from. */
export interface FactSources {
  readonly firing: FiringRecord;
  readonly load: LoadRecord | null;
  readonly readings?: readonly ReadingSeries[];
  /** The glaze and clay the piece wears and is made of, where they are recorded. */
  readonly glaze?: GlazeRecord | null;
  readonly clay?: ClayBodyRecord | null;
}

const OPENED_WITHIN_MS = 30 * 60_000;

/** Gathers what is known of how the piece at a place was fired. */
export function pieceFacts(sources: FactSources, at: Place): PieceFacts {
  const { firing, load, readings = [], glaze = null, clay = null } = sources;
  const series = controllingSeries(readings);
  const read: Curve | null = series && series.readings.length > 20 ? byTheMinute(series.readings) : null;
  const told = firing.foretold?.curve ?? [];
  const curve: Curve | null = read ?? (told.length > 1 ? curveThrough(told) : null);
  const place = load && piecePlace(load, at);
  const worn = glaze ?? (place?.ware.glaze ? { name: place.ware.glaze, runs: false, cones: null } : null);
  return {
    kind: firing.programme?.kind ?? null,
    cone: firing.foretold?.cone ?? null,
    place,
    heat: levelHeats(firing).find(({ level }) => level === at.level) ?? null,
    pace: curve && firingPace(curve),
    paceFrom: read ? "readings" : curve ? "foretold" : null,
    glaze: worn && { name: worn.name, runs: worn.runs, cones: worn.cones },
    clay: clay && { name: clay.name, cones: clay.cones },
    openedAtC: openedAt(firing, series),
    brokenOff: firing.state === "broken off",
  };
}

function openedAt({ endedAt }: FiringRecord, series: ReadingSeries | null): number | null {
  if (endedAt === null || series === null) return null;
  const end = Date.parse(endedAt);
  const last = series.readings.findLast(({ at }) => at <= endedAt);
  return last && end - Date.parse(last.at) <= OPENED_WITHIN_MS ? last.tempC : null;
}

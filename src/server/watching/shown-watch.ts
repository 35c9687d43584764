import { type ConeName, conePlace } from "../../firing/cones/cone.ts";
import type { HeatWork } from "../../firing/heat-work/heat-work.ts";
import type { Estimate, Outlook } from "../../firing/watching/outlook.ts";
import type { WatchState } from "../../firing/watching/watch-firing.ts";
import type {
  FiringWatch,
  WatchedHeat,
  WatchedMoment,
  WatchedOutlook,
  WatchedPlace,
} from "../../studio/api/watch-contract.ts";
import { isDanger } from "../notices/quiet-rules.ts";

/** So many cones (and half cones) on either side of the one waited for. */
const CONES_BESIDE = 2;
/** From when to when something may be: two standard deviations, nineteen times of twenty. */
const SIGMAS = 2;

/** What of a firing does not come from its watch. */
export type WatchFrame = Pick<FiringWatch, "now" | "pace" | "startedAt" | "latest">;

/** A firing's watch as a browser is told of it. */
export function shownWatch(frame: WatchFrame, state: WatchState | null, cone: ConeName | null): FiringWatch {
  if (state === null) return { ...frame, place: null, heat: [], faults: [], outlook: null };
  return {
    ...frame,
    place: state.place && shownPlace(state.place),
    heat: shownHeat(state, cone),
    faults: state.faults.map(({ noticedMin: _, ...fault }) => ({ ...fault, isDanger: isDanger(fault.kind) })),
    outlook: state.outlook && shownOutlook(state.outlook),
  };
}

function shownPlace(place: NonNullable<WatchState["place"]>): WatchedPlace {
  const { segment, doing, rising, askedCPerHour, wantedC, behindC, rest } = place;
  const holdLeftMin = doing === "hold" ? (rest[0]?.holdMin ?? null) : null;
  return { segment, doing, rising, askedCPerHour, wantedC, behindC, holdLeftMin };
}

function shownHeat({ heatWork, levels }: WatchState, cone: ConeName | null): WatchedHeat[] {
  if (heatWork === null) return [];
  const { ladder, coneDown, next, towardNext } = heatWork;
  const probe = { level: null, ladder, coneDown, next, towardNext, cones: conesAbout(heatWork, cone ?? next) };
  const onLevels = levels.map((each, level) => {
    const { ladder: place, coneDown: down, next: coming, towardNext: toward } = each;
    return { level, ladder: place, coneDown: down, next: coming, towardNext: toward, cones: [] };
  });
  return [probe, ...onLevels];
}

function conesAbout({ cones }: HeatWork, cone: ConeName | null): WatchedHeat["cones"] {
  const at = cone === null ? cones.length - 1 : conePlace(cone);
  return cones
    .slice(Math.max(0, at - CONES_BESIDE), at + CONES_BESIDE + 1)
    .map(({ cone: name, bendDeg, downAtMin }) => ({ cone: name, bendDeg, downAtMin }));
}

function shownOutlook(outlook: Outlook): WatchedOutlook {
  const { cone, ends, cool, curve, kWhSoFar, kWhToGo } = outlook;
  return {
    cone: cone && { cone: cone.cone, down: momentOf(cone.probe) },
    shutOff: momentOf(ends),
    cool: cool.map(({ tempC, means, at }) => ({ tempC, means, when: momentOf(at) })),
    curve,
    kWh: { soFar: kWhSoFar, inAll: kWhSoFar + kWhToGo },
  };
}

const momentOf = (estimate: Estimate | null): WatchedMoment | null =>
  estimate && {
    atMin: estimate.atMin,
    fromMin: estimate.atMin - SIGMAS * estimate.spreadMin,
    toMin: estimate.atMin + SIGMAS * estimate.spreadMin,
  };

import { type ParameterValues, withValues } from "../../firing/calibration/parameters.ts";
import { CONES, type ConeName, conePlace } from "../../firing/cones/cone.ts";
import { heatWork } from "../../firing/heat-work/heat-work.ts";
import { type Prediction, predict } from "../../firing/prediction/predict.ts";
import type { Programme } from "../../firing/programme/programme.ts";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import type { Chance } from "../../measures/seeded-chance.ts";
import { readingsOfCurve } from "../firings/readings-of-curve.ts";
import { plannedFiring } from "../planned-firing.ts";
import type { SeenCone } from "../records/firing-parts.ts";
import type { LoadRecord } from "../records/load-record.ts";
import type { Reading } from "../records/reading.ts";

/** How often the logger speaks, and how far its thermometer scatters one way. */
const EVERY_MIN = 1;
const SCATTER_C = 1.5;
/** How far a cone's own place is from its shelf's mean, one way. */
const CONE_PLACE_C = 4;
/** She opens it when the probe is under this. */
const OPENED_AT_C = 70;

/** What is fired, in what kiln. */
export interface TrueWish {
  readonly load: LoadRecord;
  readonly programme: Programme;
  readonly truth: ParameterValues;
  readonly roomC: number;
}

/** How a load's firing goes in the kiln as it is in truth. @throws BadInput where the load has no plan */
export function firedInTruth({ load, programme, truth, roomC }: TrueWish): Prediction {
  const request = readLoadRequest(load.request);
  const { setting } = plannedFiring(request, readLoadPlan(load.plan, request), programme.kind, roomC);
  return predict({ ...setting, ...withValues(setting.kiln, setting.load, truth), programme });
}

/** Minutes from the start until the probe is cool enough to open the kiln. */
export function openedAfterMin({ firing: { minutes, probeC, shutOffMin } }: Prediction): number {
  const cool = minutes.findIndex((minute, i) => minute > shutOffMin && (probeC[i] as number) < OPENED_AT_C);
  return (cool < 0 ? minutes.at(-1) : minutes[cool]) as number;
}

/** What the logger sent until the kiln was opened. */
export function loggedReadings(went: Prediction, startedAt: string, chance: Chance): Reading[] {
  const { minutes, probeC } = went.firing;
  const logger = { everyMin: EVERY_MIN, scatterC: SCATTER_C, chance };
  const openedAt = new Date(Date.parse(startedAt) + openedAfterMin(went) * 60_000).toISOString();
  return readingsOfCurve({ minutes, tempC: probeC }, startedAt, logger).filter(({ at }) => at <= openedAt);
}

/** On each shelf the cone below the wanted one, that one, and the one above, bent as the heat of their places bent them. */
export function seenCones({ firing }: Prediction, wanted: ConeName, chance: Chance): SeenCone[] {
  const whole = CONES.filter((cone) => !cone.endsWith(".5"));
  const middle = whole.findIndex((cone) => conePlace(cone) >= conePlace(wanted));
  return firing.levelC.flatMap((levelC, level) => {
    const offC = CONE_PLACE_C * (2 * chance.next() - 1);
    const work = heatWork({ minutes: firing.minutes, tempC: levelC.map((celsius) => celsius + offC) });
    return whole.slice(Math.max(0, middle - 1), middle + 2).map((cone): SeenCone => {
      const bent = work.cones.find((each) => each.cone === cone)?.bendDeg ?? 8;
      // Read by eye, to five degrees.
      const bendDeg = Math.min(90, Math.max(8, 5 * Math.round((bent + 4 * (chance.next() - 0.5)) / 5)));
      return { level, cone, bendDeg, place: level === 0 ? "at the front" : "by the spyhole" };
    });
  });
}

import { AT_REST } from "../../firing/calibration/parameters.ts";
import type { Prediction } from "../../firing/prediction/predict.ts";
import type { Programme } from "../../firing/programme/programme.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import { firedInTruth } from "../../studio/year/true-firing.ts";

/** What the kiln of a journey is in truth: nobody in the studio knows. */
const TRUTH = { ...AT_REST, wallFactor: 1.12, powerFactor: 1.08, leakFactor: 1.3, probeOffsetC: 4, tilt: 0.06 };

/** How a firing that is prepared will go. */
export const wentInTruth = (firing: FiringRecord, load: LoadRecord): Prediction =>
  firedInTruth({ load, programme: firing.programme as Programme, truth: TRUTH, roomC: 20 });

/** How far a firing's energy was foretold wrongly, as a share of what it drew. */
export const energyOff = ({ foretold }: FiringRecord, went: Prediction): number =>
  Math.abs((foretold?.kWh ?? 0) - went.kWh) / went.kWh;

/** The moment so many minutes after another. */
export const minutesAfter = (at: string, minutes: number): string =>
  new Date(Date.parse(at) + Math.round(minutes * 60_000)).toISOString();

/** A moment as a browser's field for date and time takes it, by this machine's clock, which is the browser's too. */
export function localField(moment: string): string {
  const time = new Date(moment);
  const two = (value: number): string => String(value).padStart(2, "0");
  const day = `${time.getFullYear()}-${two(time.getMonth() + 1)}-${two(time.getDate())}`;
  return `${day}T${two(time.getHours())}:${two(time.getMinutes())}`;
}

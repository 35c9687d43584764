import type { CheckedCone, EvidenceKind } from "./evidence.ts";
import { comparedPlaces, type MeasuredFiring, stepsOf } from "./measured-firing.ts";
import type { ThermalSetting } from "./parameters.ts";
import { replay } from "./replay.ts";

/** Evidence that is missing, and a firing that has nothing but it: to reckon what it would teach. */
export interface MissingEvidence {
  readonly kind: EvidenceKind;
  /** What to do, for the potter. */
  readonly how: string;
  readonly trial: MeasuredFiring;
}

const COOLING_MIN = 12 * 60;
const POWER_EVERY_MIN = 30;
/** Past the quartz step, where most ware that was bisqued takes all that a small kiln gives. */
const FULL_FROM_C = 650;
const FULL_SHORT_OF_PEAK_C = 30;
const FULL_MOST_MIN = 240;
const WORTH_LOGGING_MIN = 120;

const HOW = {
  cooling:
    "Leave the log running until the kiln is cold: how fast it cools without power is the walls' and the load's own doing.",
  power:
    "Note how much of the time the elements are on, every half hour (or log it): the power that a temperature takes is what tells kilns apart.",
  cones: "Set a cone on every shelf and note how far each has bent: the one witness of what the ware itself got.",
  meter: "Read the meter before and after the firing.",
  "full power":
    "Let one climb run at full power from 650 °C to near the peak, with ware that can take it and within the kiln's manual: power and mass show at once.",
} as const;

/** What evidence of a firing is missing. The trials' temperatures are those of the kiln as it is now believed to be. */
export function missingEvidence(
  firings: readonly MeasuredFiring[],
  setting: ThermalSetting,
  probeHeightM: number,
): MissingEvidence[] {
  const last = firings.at(-1) as MeasuredFiring;
  const bare: MeasuredFiring = { ...last, compared: [], power: [], cones: [], kWh: null };
  const missing: MissingEvidence[] = [];
  const add = (kind: keyof typeof HOW, trial: Partial<MeasuredFiring>): void => {
    missing.push({ kind, how: HOW[kind], trial: { ...bare, ...trial } });
  };
  if (!firings.some(hasCooling)) add("cooling", withCooling(bare));
  if (!firings.some((each) => each.power.length > 0)) add("power", { power: everyHalfHour(last.shutOffMin) });
  const bareLevels = last.load.levels.flatMap((_, level) =>
    firings.some((each) => each.cones.some((cone) => cone.level === level)) ? [] : [level],
  );
  if (bareLevels.length > 0) add("cones", { cones: bareLevels.map((level): CheckedCone => ({ level, ladder: 27 })) });
  if (!firings.some((each) => each.kWh !== null)) add("meter", { kWh: 1 });
  if (!firings.some(hasFullPower)) {
    const trial = atFullPower(bare, { ...setting, load: last.load }, probeHeightM);
    if (trial !== null) add("full power", trial);
  }
  return missing;
}

const hasCooling = ({ compared, modes, minutes, shutOffMin }: MeasuredFiring): boolean =>
  compared.some(({ at }) => modes[at] === "off" && (minutes[at] as number) > shutOffMin + WORTH_LOGGING_MIN);
const hasFullPower = ({ compared, modes }: MeasuredFiring): boolean => compared.some(({ at }) => modes[at] === "full");

function everyHalfHour(shutOffMin: number): MeasuredFiring["power"] {
  const count = Math.floor(shutOffMin / POWER_EVERY_MIN);
  return Array.from({ length: count }, (_, i) => ({
    fromMin: i * POWER_EVERY_MIN,
    toMin: (i + 1) * POWER_EVERY_MIN,
    shareOn: 0.5,
  }));
}

function withCooling(firing: MeasuredFiring): Partial<MeasuredFiring> {
  const heating = firing.minutes.filter((minute) => minute <= firing.shutOffMin + 1e-6).length;
  const cooling = stepsOf(firing.shutOffMin, firing.shutOffMin + COOLING_MIN, []);
  const off = cooling.modes.indexOf("off");
  const minutes = Float64Array.from([...firing.minutes.slice(0, heating), ...cooling.minutes.slice(off)]);
  const modes = [...firing.modes.slice(0, heating), ...cooling.modes.slice(off)];
  // Whatever the log will say: only how the kiln's own curve would change counts here.
  const tempC = Float64Array.from(minutes, (_, at) => (at < heating ? (firing.tempC[at] as number) : 0));
  return { minutes, modes, tempC, compared: comparedPlaces(minutes, tempC, modes).filter(({ at }) => at >= heating) };
}

/** The same firing, let go at full power on the way up; null where that lasts no half hour. */
function atFullPower(
  firing: MeasuredFiring,
  setting: ThermalSetting,
  probeHeightM: number,
): Partial<MeasuredFiring> | null {
  const from = firing.tempC.findIndex((celsius) => celsius >= FULL_FROM_C);
  if (from < 0) return null;
  const peak = firing.tempC.filter((each) => !Number.isNaN(each)).reduce((most, each) => Math.max(most, each), 0);
  const fromMin = firing.minutes[from] as number;
  const run = (toMin: number) => {
    const { minutes, modes } = stepsOf(toMin, toMin, [{ fromMin, toMin }]);
    const tempC = Float64Array.from(minutes, (minute) => temperatureAt(firing, minute));
    return { minutes, modes, tempC, shutOffMin: toMin };
  };
  const long = run(fromMin + FULL_MOST_MIN);
  const climbed = replay({ ...firing, ...long }, setting, probeHeightM).probeC;
  const reached = climbed.findIndex(
    (celsius, at) => long.modes[at] === "full" && celsius >= peak - FULL_SHORT_OF_PEAK_C,
  );
  const toMin = reached < 0 ? fromMin + FULL_MOST_MIN : (long.minutes[reached] as number);
  if (toMin - fromMin < 30) return null;
  const trial = run(toMin);
  return {
    ...trial,
    compared: comparedPlaces(trial.minutes, trial.tempC, trial.modes).filter(({ at }) => trial.modes[at] === "full"),
  };
}

function temperatureAt({ minutes, tempC }: MeasuredFiring, minute: number): number {
  const after = minutes.findIndex((each) => each >= minute);
  if (after <= 0) return (after === 0 ? tempC[0] : 0) as number;
  const share =
    (minute - (minutes[after - 1] as number)) / ((minutes[after] as number) - (minutes[after - 1] as number));
  const [from, to] = [tempC[after - 1] as number, tempC[after] as number];
  const between = from + share * (to - from);
  return Number.isNaN(between) ? 0 : between;
}

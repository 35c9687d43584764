import type { ConeName } from "../cones/cone.ts";
import { degreesApart, type HeatWork, heatWork } from "../heat-work/heat-work.ts";
import { BRICK_23, BRICK_26, FIBRE } from "../materials/materials.ts";
import { outsideRange } from "../materials/outside-range.ts";
import type { Programme } from "../programme/programme.ts";
import { fire, type SimulatedFiring } from "../thermal/fire.ts";
import { kilnNetwork, type ThermalKiln, type ThermalLoad } from "../thermal/kiln-network.ts";
import { COOL_STEPS } from "./cool-steps.ts";
import { troubleText } from "./trouble-text.ts";

/** What one level is expected to get. */
export interface LevelPrediction {
  /** As in the plan, from zero. */
  readonly level: number;
  readonly peakC: number;
  /** Its place on the cone ladder. */
  readonly ladder: number;
  readonly coneDown: ConeName | null;
  readonly next: ConeName | null;
  readonly towardNext: number;
  /** Heat work more than at the probe's place, in equivalent °C. */
  readonly offsetC: number;
}

/** A firing foretold. Times in minutes from the start where a name says Min; curves in °C. */
export interface Prediction {
  /** From the start until the programme has ended and the kiln shuts off. */
  readonly hours: number;
  readonly kWh: number;
  readonly peakC: number;
  readonly levels: readonly LevelPrediction[];
  /** Hours from shut-off until the hottest of probe and ware is under each temperature; null where it takes over a week. */
  readonly coolHours: Readonly<Record<string, number | null>>;
  /** The probe's curve, [minutes, °C], thinned for reading. */
  readonly curve: readonly (readonly [number, number])[];
  /** Heat made or lost by the arithmetic, as a share of all given. */
  readonly energyResidual: number;
  readonly probe: HeatWork;
  readonly troubles: readonly string[];
  readonly warnings: readonly string[];
  /** True where the programme ran to its end. */
  readonly finished: boolean;
  /** Everything that was reckoned, for charts and for cost. */
  readonly firing: SimulatedFiring;
}

export interface PredictInput {
  readonly kiln: ThermalKiln;
  readonly load: ThermalLoad;
  readonly programme: Programme;
  /** The probe's height above the floor, in metres; the middle of the chamber where there is none. */
  readonly probeHeightM?: number | undefined;
  /** The probe reads this much above its place. */
  readonly probeOffsetC?: number | undefined;
}

/** Only the firing itself, nothing read off it: for trying many programmes. */
export function simulate({ kiln, load, programme, probeHeightM, probeOffsetC = 0 }: PredictInput): SimulatedFiring {
  const network = kilnNetwork(kiln, load);
  return fire(network, programme, {
    probeZone: network.zoneAt(probeHeightM ?? kiln.depthM / 2),
    probeOffsetC,
    powerW: kiln.powerW,
    startC: kiln.roomC,
    coolToC: 50,
  });
}

/** Foretells a firing: the programme run through the kiln with this load, and its cooling. */
export function predict(input: PredictInput): Prediction {
  const { kiln, programme } = input;
  const firing = simulate(input);
  const { minutes, probeC } = firing;
  const probe = heatWork({ minutes, tempC: probeC });
  const levels = firing.levelC.map((tempC, level): LevelPrediction => {
    const work = heatWork({ minutes, tempC });
    return {
      level,
      peakC: tempC.reduce((most, each) => Math.max(most, each), Number.NEGATIVE_INFINITY),
      ladder: work.ladder,
      coneDown: work.coneDown,
      next: work.next,
      towardNext: work.towardNext,
      offsetC: degreesApart(work, probe),
    };
  });
  return {
    hours: firing.shutOffMin / 60,
    kWh: firing.kWh,
    peakC: firing.peakC,
    levels,
    coolHours: Object.fromEntries(COOL_STEPS.map(({ tempC }) => [String(tempC), coolHours(firing, tempC)])),
    curve: thinned(minutes, probeC),
    energyResidual: firing.energyResidual,
    probe,
    troubles: firing.trouble.map((each) => troubleText(each, programme)),
    warnings: [...probe.warnings.map((each) => each.message), ...beyondData(kiln, firing.peakC)],
    finished: firing.trouble.every((each) => each.kind === "behind"),
    firing,
  };
}

/** Hours from shut-off until everything is under a temperature. */
function coolHours(firing: SimulatedFiring, underC: number): number | null {
  const { minutes, probeC, levelC, shutOffMin } = firing;
  const hottest = (i: number): number =>
    levelC.reduce((most, level) => Math.max(most, level[i] as number), probeC[i] as number);
  for (let i = minutes.length - 1; i >= 0; i--) {
    if (hottest(i) <= underC && (minutes[i] as number) > shutOffMin) continue;
    if (i === minutes.length - 1) return null;
    if ((minutes[i] as number) < shutOffMin) return 0;
    const above = hottest(i);
    const share = above <= underC ? 0 : (above - underC) / (above - hottest(i + 1));
    const minute = (minutes[i] as number) + share * ((minutes[i + 1] as number) - (minutes[i] as number));
    return Math.max(0, (minute - shutOffMin) / 60);
  }
  return null;
}

/** At most a few hundred points: those where the curve bends, none further than a degree from a straight line. */
export function thinned(minutes: Float64Array, tempC: Float64Array): [number, number][] {
  const kept: [number, number][] = [];
  let from = 0;
  const last = minutes.length - 1;
  const point = (i: number): [number, number] => [
    Math.round((minutes[i] as number) * 100) / 100,
    Math.round((tempC[i] as number) * 100) / 100,
  ];
  kept.push(point(0));
  for (let to = 2; to <= last; to++) {
    if (straight(minutes, tempC, from, to)) continue;
    from = to - 1;
    kept.push(point(from));
  }
  if (last > 0) kept.push(point(last));
  return kept;
}

function straight(minutes: Float64Array, tempC: Float64Array, from: number, to: number): boolean {
  const t0 = minutes[from] as number;
  const rise = ((tempC[to] as number) - (tempC[from] as number)) / ((minutes[to] as number) - t0 || 1);
  for (let i = from + 1; i < to; i++) {
    const line = (tempC[from] as number) + rise * ((minutes[i] as number) - t0);
    if (Math.abs(line - (tempC[i] as number)) > 0.5) return false;
  }
  return true;
}

const WALLS = { "brick 23": BRICK_23, "brick 26": BRICK_26, fibre: FIBRE } as const;

/** Where the hot face's material has no data for what it gets. */
function beyondData(kiln: ThermalKiln, peakC: number): string[] {
  const hot = kiln.wall[0];
  const beyond = hot && outsideRange(WALLS[hot.material], peakC);
  return beyond ? [beyond.message] : [];
}

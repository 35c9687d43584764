import type { Chance } from "../../../measures/seeded-chance.ts";
import { conePlace } from "../../cones/cone.ts";
import { bendDeg } from "../../heat-work/bend.ts";
import { GROWTH_PER_C } from "../../heat-work/ladder-position.ts";
import { workOf } from "../../heat-work/questions.ts";
import { PROGRAMME_FORMAT, type Programme } from "../../programme/programme.ts";
import { type FireOptions, fire, type SimulatedFiring } from "../../thermal/fire.ts";
import { type KilnNetwork, kilnNetwork, type ThermalKiln, type ThermalLoad } from "../../thermal/kiln-network.ts";
import { type FiringEvidence, NOISE, type ShelfCone } from "../evidence.ts";
import { AT_REST, PARAMETERS, type ParameterValues, valuesFromSteps, withValues } from "../parameters.ts";

/** A small kiln as its owner would describe it: 57 L, 64 mm of brick, 6 kW (firing.md's reference case). */
export const DESCRIBED_KILN: ThermalKiln = {
  floorAreaM2: 0.125,
  wallRoundM: 1.3,
  depthM: 0.456,
  wall: [{ material: "brick 23", thicknessM: 0.064 }],
  powerW: 6000,
  leakWattsPerK: 0.5,
  bandShares: [1, 1, 1],
  wallFactor: 1,
  roomC: 20,
};

/** Three shelves, 12 kg of ware. */
export const DESCRIBED_LOAD: ThermalLoad = {
  levels: [0.03, 0.17, 0.31].map((shelfTopM) => ({
    shelfTopM,
    shelfThicknessM: 0.016,
    shelfAreaM2: 0.085,
    openAreaM2: 0.04,
    wareKg: 4,
    wareThicknessM: 0.006,
    postsKg: 0.6,
  })),
  green: false,
  massFactor: 1,
};

const programme = (name: string, rows: readonly (readonly [number | null, number, number])[]): Programme => ({
  format: PROGRAMME_FORMAT,
  name,
  segments: rows.map(([rateCPerHour, targetC, holdMin]) => ({ rateCPerHour, targetC, holdMin })),
});
/** Three usual firings, of which all is logged. */
export const LOGGED_PROGRAMMES: readonly Programme[] = [
  programme("glaze to cone 6", [
    [80, 120, 0],
    [220, 1100, 0],
    [60, 1215, 10],
  ]),
  programme("bisque to cone 04", [
    [60, 200, 30],
    [110, 950, 0],
    [60, 1055, 10],
  ]),
  programme("glaze to cone 5", [
    [120, 600, 0],
    [180, 1080, 0],
    [80, 1190, 15],
  ]),
];
/** Slower on the whole and with soaks: none of it in a log. */
export const UNSEEN_PROGRAMME = programme("slow glaze to cone 7", [
  [60, 200, 30],
  [130, 1130, 20],
  [90, 1220, 25],
]);

/** A kiln whose unknowns were drawn by chance. */
export interface HiddenKiln {
  readonly values: ParameterValues;
  readonly network: KilnNetwork;
  readonly powerW: number;
  readonly probeOffsetC: number;
}

/** Twice the cells in everything, and steps of 20 s: another discretisation than calibration uses. */
const TIMES_THE_CELLS = 2;
const STEP_S = 20;

/**
 * Draws a kiln from the priors, no parameter further off than two of their sigmas, and draws again while it is one that
 * its owner would not fire so: too weak for one of the programmes, which leaves nothing to hold a prediction to.
 */
export function hiddenKiln(chance: Chance): HiddenKiln {
  for (;;) {
    const kiln = drawn(chance);
    const able = [...LOGGED_PROGRAMMES, UNSEEN_PROGRAMME].every((each) => canFire(kiln, each));
    if (able) return kiln;
  }
}

const canFire = (kiln: HiddenKiln, fired: Programme): boolean =>
  !fire(kiln.network, fired, { ...optionsOf(kiln), fixedStepS: 300 }).trouble.some((each) => each.kind === "stalled");

/** The kiln just as it is described. */
export const plainKiln = (): HiddenKiln => kilnOf(AT_REST);

/** Chance without any: every error is nought. */
export const NO_ERRORS: Chance = { next: () => 0.25, below: () => 0 };

function drawn(chance: Chance): HiddenKiln {
  const steps = Float64Array.from(PARAMETERS, () => {
    for (;;) {
      const step = normal(chance);
      if (Math.abs(step) <= 2) return step;
    }
  });
  return kilnOf(valuesFromSteps(steps, {}));
}

function kilnOf(values: ParameterValues): HiddenKiln {
  const { kiln, load, probeOffsetC } = withValues(DESCRIBED_KILN, DESCRIBED_LOAD, values);
  const coarse = kilnNetwork(kiln, load);
  const columns = coarse.network.columns.map((column) => ({
    ...column,
    layers: column.layers.map((layer) => ({ ...layer, cells: layer.cells * TIMES_THE_CELLS })),
  }));
  return { values, network: { ...coarse, network: { ...coarse.network, columns } }, powerW: kiln.powerW, probeOffsetC };
}

/** What really happens in a hidden kiln. */
export const fireHidden = (kiln: HiddenKiln, fired: Programme): SimulatedFiring =>
  fire(kiln.network, fired, optionsOf(kiln));

const optionsOf = (kiln: HiddenKiln): FireOptions => ({
  probeZone: kiln.network.zoneAt(DESCRIBED_KILN.depthM / 2),
  probeOffsetC: kiln.probeOffsetC,
  powerW: kiln.powerW,
  startC: DESCRIBED_KILN.roomC,
  fixedStepS: STEP_S,
  coolToC: 60,
});

/** All evidence that its owner could gather, each with the error that calibration expects of it. */
export function evidenceOf(
  kiln: HiddenKiln,
  firing: SimulatedFiring,
  chance: Chance,
): Required<Omit<FiringEvidence, "load" | "programme">> {
  const { minutes, probeC, watts, levelC, shutOffMin } = firing;
  const every = 2;
  const count = Math.floor((minutes.at(-1) as number) / every);
  const at = Float64Array.from({ length: count }, (_, i) => i * every);
  const kept = Math.exp(-every / NOISE.tempLastsMin);
  let error = 0;
  const tempC = at.map((minute, i) => {
    error = kept * error + NOISE.tempC * Math.sqrt(1 - kept * kept) * normal(chance);
    // Both the controller's thermometer and the room agree before the firing begins.
    return Math.round(reading(minutes, probeC, minute) + (i === 0 ? 0 : error));
  });
  const half = Array.from({ length: Math.floor(shutOffMin / 30) }, (_, i) => ({ fromMin: i * 30, toMin: i * 30 + 30 }));
  const power = half.map((stretch) => {
    const share = meanOver(minutes, watts, stretch) / kiln.powerW + NOISE.powerShare * normal(chance);
    return { ...stretch, shareOn: Math.min(1, Math.max(0, share)) };
  });
  return {
    log: { minutes: at, tempC },
    shutOffMin,
    power,
    fullPower: fullStretches(minutes, watts, kiln.powerW),
    cones: levelC.map((level, i) => coneOn(i, { minutes, tempC: level }, chance)),
    kWh: firing.kWh + NOISE.meterKWh * normal(chance),
  };
}

/** A pack of cones was set; the one that bent without falling flat is read. */
function coneOn(level: number, curve: { minutes: Float64Array; tempC: Float64Array }, chance: Chance): ShelfCone {
  const off = NOISE.coneC * normal(chance);
  const pack = [
    "07",
    "06",
    "05",
    "04",
    "03",
    "02",
    "01",
    "1",
    "2",
    "3",
    "4",
    "5",
    "5.5",
    "6",
    "7",
    "8",
    "9",
    "10",
    "11",
    "12",
  ] as const;
  const bends = pack.map((cone) => {
    const work = workOf(cone, curve) * Math.exp(off * (GROWTH_PER_C[conePlace(cone)] as number));
    return { level, cone, bendDeg: bendDeg(work) };
  });
  return bends.find((each) => each.bendDeg < 85) ?? (bends.at(-1) as (typeof bends)[number]);
}

function fullStretches(minutes: Float64Array, watts: Float64Array, powerW: number) {
  const stretches: { fromMin: number; toMin: number }[] = [];
  let from: number | null = null;
  for (let i = 1; i < minutes.length; i++) {
    const full = (watts[i] as number) > powerW * 0.9999;
    if (full && from === null) from = minutes[i - 1] as number;
    if (full || from === null) continue;
    if ((minutes[i - 1] as number) - from >= 30) stretches.push({ fromMin: from, toMin: minutes[i - 1] as number });
    from = null;
  }
  return stretches;
}

function meanOver(minutes: Float64Array, values: Float64Array, stretch: { fromMin: number; toMin: number }): number {
  let sum = 0;
  for (let i = 1; i < minutes.length; i++) {
    const shared = Math.min(stretch.toMin, minutes[i] as number) - Math.max(stretch.fromMin, minutes[i - 1] as number);
    if (shared > 0) sum += shared * (values[i] as number);
  }
  return sum / (stretch.toMin - stretch.fromMin);
}

function reading(minutes: Float64Array, values: Float64Array, minute: number): number {
  let after = minutes.findIndex((each) => each >= minute);
  if (after <= 0) after = 1;
  const span = (minutes[after] as number) - (minutes[after - 1] as number);
  const share = span > 0 ? (minute - (minutes[after - 1] as number)) / span : 0;
  return (values[after - 1] as number) + share * ((values[after] as number) - (values[after - 1] as number));
}

/** A draw from the normal distribution, by Box and Muller's method. */
function normal(chance: Chance): number {
  return Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());
}

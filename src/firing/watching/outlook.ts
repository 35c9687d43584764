import { type ConeName, coneAtLadder, conePlace } from "../cones/cone.ts";
import { CONE_KINETICS, type ConeKinetics } from "../heat-work/cone-kinetics.ts";
import { coneWork, prepareCurve } from "../heat-work/cone-work.ts";
import type { Curve } from "../heat-work/curve.ts";
import { type HeatWork, heatWork } from "../heat-work/heat-work.ts";
import { degreesBeyond, equivalentC } from "../heat-work/ladder-position.ts";
import { COOL_STEPS } from "../prediction/cool-steps.ts";
import { thinned } from "../prediction/predict.ts";
import type { SimulatedFiring } from "../thermal/fire.ts";
import { coolAtMin, hottestThrough } from "./cool-until.ts";
import type { BankEstimate, KilnBank } from "./kiln-bank.ts";
import type { LiveKiln } from "./live-kiln.ts";
import type { LiveModel } from "./live-model.ts";
import type { ProgrammePlace } from "./programme-follower.ts";

/** When something will be, and how sure that is. */
export interface Estimate {
  /** On the readings' clock. */
  readonly atMin: number;
  /** One standard deviation, minutes. */
  readonly spreadMin: number;
}

/** What a place in the kiln will have got once all is over, cooling counted. */
export interface FinalHeat {
  /** 022 = 0 … 6 = 27 … 14 = 35, as everywhere. */
  readonly ladder: number;
  readonly coneDown: ConeName | null;
  readonly equivalentC: number;
  /** One standard deviation, °C of heat work. */
  readonly spreadC: number;
}

/** How a firing will go on, by the kilns that fit its readings. */
export interface Outlook {
  /** As of this minute. */
  readonly asOfMin: number;
  /** When the programme ends; null where the kiln will not get there. Past once it has ended. */
  readonly ends: Estimate | null;
  /** When the cone goes down, at the probe and on each level; null where it will not. Past where it is down. */
  readonly cone: {
    readonly cone: ConeName;
    readonly probe: Estimate | null;
    readonly levels: readonly (Estimate | null)[];
  } | null;
  readonly final: { readonly probe: FinalHeat | null; readonly levels: readonly FinalHeat[] };
  /** When probe and ware are under each temperature; null where that takes over a week. */
  readonly cool: readonly { readonly tempC: number; readonly means: string; readonly at: Estimate | null }[];
  /** What the probe is expected to read from now on, by the likeliest kiln of the bank: [minute, °C], thinned for reading. */
  readonly curve: readonly (readonly [number, number])[];
  /** What the elements have drawn so far, by the model. */
  readonly kWhSoFar: number;
  /** What the rest of the firing will take. */
  readonly kWhToGo: number;
  /** False where the kiln cannot end the programme. */
  readonly finishes: boolean;
}

/**
 * What a model errs by besides its unknowns. Judgement, no published source: 3 °C of heat work is what a perfect model is
 * still off by at a cone (calibration/evidence.ts); the rest was measured on synthetic kilns (benchmarks/watching.ts).
 */
const MODEL_ERROR = { coneC: 3, endShare: 0.01, endMin: 1, coolShare: 0.03, coolC: 2 } as const;

/**
 * Fires every kiln of the bank on from now and reads off what a potter waits for.
 *
 * @param place where the programme is, as of the model's last step
 * @param log the readings so far
 * @param aimed the cone to wait for; null for the hottest that will be down
 */
export function outlookOf(model: LiveModel, place: ProgrammePlace, log: Curve, aimed: ConeName | null): Outlook {
  const { roomC } = model;
  const { bank, estimate } = model.known();
  const now = model.now();
  // What the best kiln is still off by lasts a while: at full power as it is, off by as much as is left to lose.
  const aboveC = combined(
    bank,
    estimate,
    bank.kilns.map((kiln) => kiln.aboveC),
  );
  const residualC = now.mode === "follow" ? 0 : -aboveC;
  const leftC = Math.max(1, now.tempC - roomC);
  const shownC = (tempC: number): number => (now.mode === "off" ? (residualC * Math.max(0, tempC - roomC)) / leftC : 0);
  const firings = bank.kilns.map((kiln) => kiln.fireOn(place.rest, now.mode === "full" ? residualC : 0));
  const hottest = firings.map((firing, k) => {
    const { minutes, hottestC } = bank.kilns[k] as LiveKiln;
    return hottestThrough({ minutes, tempC: hottestC }, firing, now.minute, shownC);
  });
  const middle = firings[0] as SimulatedFiring;
  const finishes = !middle.trouble.some((each) => each.kind !== "behind");
  const estimateOf = (values: readonly (number | null)[], errorMin: (atMin: number) => number): Estimate | null => {
    const found = bank.combined(values, estimate);
    return found && { atMin: found.value, spreadMin: Math.hypot(found.sigma, errorMin(found.value)) };
  };
  const toGo = (atMin: number): number => Math.max(0, atMin - now.minute);

  const past = bank.kilns.map((kiln) => kiln.levelC.map((tempC) => ({ minutes: kiln.minutes, tempC })));
  const probeCurves = firings.map((firing) => joined(log, firing, firing.probeC, now.minute));
  const levelCurves = middle.levelC.map((_, level) =>
    firings.map((firing, k) =>
      joined(past[k]?.[level] as Past, firing, firing.levelC[level] as Float64Array, now.minute),
    ),
  );
  const ends = place.overMin;
  const works = [probeCurves, ...levelCurves].map((curves) => finalOf(bank, estimate, curves, aimed));
  const cone = aimed ?? works[0]?.heat.coneDown ?? null;
  return {
    asOfMin: now.minute,
    ends:
      ends !== null
        ? { atMin: ends, spreadMin: 0 }
        : finishes
          ? estimateOf(
              firings.map((firing) => (stuck(firing) ? null : now.minute + firing.shutOffMin)),
              (atMin) => MODEL_ERROR.endMin + MODEL_ERROR.endShare * toGo(atMin),
            )
          : null,
    cone: cone && {
      cone,
      probe: coneDown(probeCurves, cone, estimateOf),
      levels: levelCurves.map((curves) => coneDown(curves, cone, estimateOf)),
    },
    final: {
      probe: works[0]?.final ?? null,
      levels: works.slice(1).map((each) => each.final),
    },
    cool: COOL_STEPS.map(({ tempC, means }) => {
      const under = (celsius: number): (number | null)[] =>
        hottest.map((each, k) =>
          coolAtMin(each, ends ?? now.minute + (firings[k] as SimulatedFiring).shutOffMin, celsius),
        );
      const found = under(tempC);
      const sooner = under(tempC + MODEL_ERROR.coolC)[0] ?? 0;
      // Slow as it cools at the end, degrees are many minutes.
      const degreesMin = (found[0] ?? sooner) - sooner;
      return {
        tempC,
        means,
        at: estimateOf(found, (atMin) => Math.hypot(degreesMin, MODEL_ERROR.coolShare * toGo(atMin))),
      };
    }),
    curve: thinned(middle.minutes, middle.probeC).map(([minute, tempC]) => [now.minute + minute, tempC] as const),
    kWhSoFar: combined(
      bank,
      estimate,
      bank.kilns.map((kiln) => kiln.kWh()),
    ),
    kWhToGo: Math.max(
      0,
      combined(
        bank,
        estimate,
        firings.map((firing) => firing.kWh),
      ),
    ),
    finishes,
  };
}

const stuck = (firing: SimulatedFiring): boolean => firing.trouble.some((each) => each.kind !== "behind");

const combined = (bank: KilnBank, estimate: BankEstimate, values: readonly number[]): number =>
  bank.combined(values, estimate)?.value ?? Number.NaN;

interface Past {
  readonly minutes: ArrayLike<number>;
  readonly tempC: ArrayLike<number>;
}

/** What was, and what is to come, as one curve. */
function joined(past: Past, firing: SimulatedFiring, tempC: Float64Array, nowMin: number): Curve {
  let kept = past.minutes.length;
  while (kept > 0 && (past.minutes[kept - 1] as number) > nowMin) kept--;
  const length = kept + tempC.length;
  const curve = { minutes: new Float64Array(length), tempC: new Float64Array(length) };
  for (let i = 0; i < kept; i++) {
    curve.minutes[i] = past.minutes[i] as number;
    curve.tempC[i] = past.tempC[i] as number;
  }
  for (let i = 0; i < tempC.length; i++) {
    curve.minutes[kept + i] = nowMin + (firing.minutes[i] as number);
    curve.tempC[kept + i] = tempC[i] as number;
  }
  return curve;
}

const kineticsOf = (cone: ConeName): ConeKinetics => CONE_KINETICS[conePlace(cone)] as ConeKinetics;
const LEAST_WORK = 1e-9;

/** What the middle kiln gives a place, moved and spread as the other kilns differ from it. */
function finalOf(bank: KilnBank, estimate: BankEstimate, curves: readonly Curve[], aimed: ConeName | null) {
  const heat: HeatWork = heatWork(curves[0] as Curve);
  const cone = aimed ?? heat.next ?? heat.coneDown ?? "022";
  const beyond = curves.map((curve) =>
    degreesBeyond(cone, Math.max(LEAST_WORK, coneWork(kineticsOf(cone), prepareCurve(curve)).work)),
  );
  const found = bank.combined(beyond, estimate) as { value: number; sigma: number };
  const celsius = heat.equivalentC + found.value - (beyond[0] as number);
  const ladder = ladderAt(celsius);
  const final: FinalHeat = {
    ladder,
    coneDown: coneAtLadder(Math.floor(ladder + 1e-6)),
    equivalentC: celsius,
    spreadC: Math.hypot(found.sigma, MODEL_ERROR.coneC),
  };
  return { heat, final };
}

/** When a cone goes down, by every kiln; a perfect model would still be some degrees off. */
function coneDown(
  curves: readonly Curve[],
  cone: ConeName,
  estimateOf: (values: readonly (number | null)[], errorMin: (atMin: number) => number) => Estimate | null,
): Estimate | null {
  const kinetics = kineticsOf(cone);
  const prepared = curves.map(prepareCurve);
  const found = prepared.map((each) => coneWork(kinetics, each).downAtMin);
  const hotter = { ...kinetics, fitErrorC: kinetics.fitErrorC.map((each) => each + MODEL_ERROR.coneC) };
  const sooner = coneWork(hotter as unknown as ConeKinetics, prepared[0] as (typeof prepared)[number]).downAtMin;
  return estimateOf(found, () => Math.abs((found[0] ?? 0) - (sooner ?? found[0] ?? 0)));
}

/** The place on the ladder with an equivalent temperature, by halving. */
function ladderAt(celsius: number): number {
  let [low, high] = [-1, 35];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (equivalentC(middle) < celsius) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

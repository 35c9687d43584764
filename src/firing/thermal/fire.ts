import type { Programme } from "../programme/programme.ts";
import { type Demand, HeatSolver } from "./heat-solver.ts";
import type { KilnNetwork } from "./kiln-network.ts";

/** A firing as it was reckoned. Arrays share their places; temperatures in °C. */
export interface SimulatedFiring {
  readonly minutes: Float64Array;
  readonly probeC: Float64Array;
  readonly wantedC: Float64Array;
  readonly watts: Float64Array;
  /** One array a level: its ware's surface. */
  readonly levelC: readonly Float64Array[];
  /** When the programme had ended and the kiln shut off. */
  readonly shutOffMin: number;
  readonly kWh: number;
  readonly peakC: number;
  readonly energyResidual: number;
  readonly trouble: readonly Trouble[];
  readonly steps: number;
}

/**
 * Where the kiln could not do what the programme asks: it fell behind a ramp and came later; it stood still at full power and
 * was shut off; it stood still with its elements off above a falling target; the programme takes more than a week.
 */
export interface Trouble {
  readonly kind: "behind" | "stalled" | "still-hot" | "too-long";
  readonly segment: number;
  readonly tempC: number;
  readonly atMin: number;
  /** What was asked and what the kiln managed, °C an hour. */
  readonly askedCPerHour: number | null;
  readonly managedCPerHour: number;
}

export interface FireOptions {
  readonly probeZone: number;
  /** The probe reads this much above its zone. */
  readonly probeOffsetC: number;
  readonly powerW: number;
  readonly startC: number;
  /** A fixed step in seconds, for studies of convergence; else steps follow the error. */
  readonly fixedStepS?: number;
  /** Cooling is followed down to here. */
  readonly coolToC: number;
  /** A kiln of this network that is hot already, to go on from in place of `startC`; it is stepped on. */
  readonly solver?: HeatSolver;
  /** How large a step's error may be, kelvin; a quarter unless told. */
  readonly stepErrorK?: number;
}

const STEP_ERROR_K = 0.25;
const SHORTEST_S = 2;
const LONGEST_S = 900;
const MOST_STEPS = 20_000;
/** Rising slower than this at full power, or falling slower than this without any, is standing still. */
const STALL_C_PER_HOUR = 4;
/** As near as this to a target is there. */
const ARRIVED_C = 0.02;
const LONGEST_FIRING_S = 7 * 86400;
const BEHIND_C = 8;

/**
 * Fires a programme in a kiln, then lets it cool; a week at most of each. Where the kiln cannot go on, the firing ends there
 * and `trouble` says why.
 */
export function fire(kiln: KilnNetwork, programme: Programme, options: FireOptions): SimulatedFiring {
  const solver = options.solver ?? new HeatSolver(kiln.network, options.startC);
  const heldAtStart = solver.heldJ();
  const [givenBefore, lostBefore, stepsBefore] = [solver.givenJ, solver.lostJ, solver.steps];
  const mostErrorK = options.stepErrorK ?? STEP_ERROR_K;
  const rows = new Rows(kiln.levelColumns.length);
  const surfaces = kiln.levelColumns.map((column) => solver.flat.start[column] as number);
  const demand: Demand = {
    zone: options.probeZone,
    steer: true,
    wantedC: new Float64Array(2),
    watts: 0,
    mostWatts: options.powerW,
  };
  const trouble: Trouble[] = [];
  const probe = (): number => solver.zoneC(options.probeZone) + options.probeOffsetC;
  let seconds = 0;
  let step = options.fixedStepS ?? 30;
  const note = (wanted: number): void => rows.add(seconds / 60, probe(), wanted, solver.watts, surfaces, solver.tempC);
  note(options.solver === undefined ? options.startC : probe());

  /** One step of at most `most` seconds toward wanted(t); returns the seconds taken. */
  const advance = (most: number, wanted: (later: number) => number): number => {
    for (;;) {
      const length = Math.min(most, options.fixedStepS ?? step);
      demand.wantedC[0] = wanted(length * (1 - Math.SQRT1_2)) - options.probeOffsetC;
      demand.wantedC[1] = wanted(length) - options.probeOffsetC;
      solver.step(length, demand);
      if (options.fixedStepS === undefined) {
        const error = Math.max(solver.errorK, 1e-6);
        const better = Math.min(
          LONGEST_S,
          Math.max(SHORTEST_S, length * Math.min(3, 0.85 * Math.sqrt(mostErrorK / error))),
        );
        if (error > 2 * mostErrorK && length > SHORTEST_S) {
          solver.stepBack();
          step = Math.min(better, length / 2);
          continue;
        }
        // A step cut short by the end of a segment says nothing of the next.
        step = length < step && better >= length ? Math.max(better, step * 0.5) : better;
      }
      seconds += length;
      note(demand.wantedC[1] + options.probeOffsetC);
      return length;
    }
  };

  const tooLong = (): boolean => rows.count > MOST_STEPS || seconds > LONGEST_FIRING_S;
  let stopped = false;
  for (const [index, segment] of programme.segments.entries()) {
    if (stopped) break;
    const from = index === 0 ? probe() : (programme.segments[index - 1] as Programme["segments"][number]).targetC;
    const rising = segment.targetC >= from;
    if (!rising) solver.settleFired();
    const rate = segment.rateCPerHour;
    const rampS = rate === null ? 0 : (Math.abs(segment.targetC - from) / rate) * 3600;
    demand.steer = true;
    let spent = 0;
    let behind = false;
    let checkedAt = seconds;
    let checkedC = probe();
    const facts = (managedCPerHour: number): Omit<Trouble, "kind"> => ({
      segment: index,
      tempC: probe(),
      atMin: seconds / 60,
      askedCPerHour: rate,
      managedCPerHour: Math.abs(managedCPerHour),
    });
    const stop = (kind: Trouble["kind"], managedCPerHour: number): void => {
      trouble.push({ kind, ...facts(managedCPerHour) });
      stopped = true;
    };
    const wantedAt = (at: number): number =>
      at >= rampS ? segment.targetC : from + ((segment.targetC - from) * at) / rampS;
    for (;;) {
      const left = rampS - spent;
      const short = rising ? segment.targetC - probe() : probe() - segment.targetC;
      if (left <= 1e-6 && short <= ARRIVED_C) break;
      if (tooLong()) {
        stop("too-long", rows.paceCPerSecond() * 3600);
        break;
      }
      // Once the ramp is over but the kiln is not there, the step is cut to where it will be.
      const pace = rows.paceCPerSecond();
      const reach = left > 1e-6 ? left : Math.abs(pace) > 1e-6 ? Math.max(1, short / Math.abs(pace)) : 60;
      spent += advance(Math.max(0.5, reach), (later) => wantedAt(spent + later));
      if (seconds - checkedAt < 1200) continue;
      const managed = ((probe() - checkedC) / (seconds - checkedAt)) * 3600;
      const lag = rising ? wantedAt(spent) - probe() : probe() - wantedAt(spent);
      const full = solver.watts >= options.powerW * 0.999;
      if (rising && !behind && lag > BEHIND_C && full) {
        behind = true;
        if (rate !== null) trouble.push({ kind: "behind", ...facts(managed) });
      }
      const still = (rising ? managed : -managed) < STALL_C_PER_HOUR && (lag > BEHIND_C || left <= 1e-6);
      if (still && (rising ? full : solver.watts <= options.powerW * 0.001)) {
        stop(rising ? "stalled" : "still-hot", managed);
        break;
      }
      checkedAt = seconds;
      checkedC = probe();
    }
    if (stopped) break;
    let held = 0;
    while (segment.holdMin * 60 - held > 1e-6) {
      held += advance(segment.holdMin * 60 - held, () => segment.targetC);
      if (!tooLong()) continue;
      stop("too-long", 0);
      break;
    }
  }
  const shutOffMin = seconds / 60;
  demand.steer = false;
  demand.watts = 0;
  solver.settleFired();
  const hottest = (): number => surfaces.reduce((most, node) => Math.max(most, solver.tempC[node] as number), probe());
  while (hottest() > options.coolToC && seconds < shutOffMin * 60 + LONGEST_FIRING_S && rows.count < 2 * MOST_STEPS) {
    advance(LONGEST_S, () => options.coolToC);
  }
  const givenJ = solver.givenJ - givenBefore;
  const balance = solver.heldJ() - heldAtStart - givenJ + (solver.lostJ - lostBefore);
  return {
    ...rows.done(),
    shutOffMin,
    kWh: givenJ / 3.6e6,
    energyResidual: Math.abs(balance) / Math.max(1, givenJ),
    trouble,
    steps: solver.steps - stepsBefore,
  };
}

/** Rows that grow by doubling, so that the time loop seldom allocates. */
class Rows {
  count = 0;
  private minutes = new Float64Array(4096);
  private probe = new Float64Array(4096);
  private wanted = new Float64Array(4096);
  private power = new Float64Array(4096);
  private levels: Float64Array<ArrayBuffer>[];

  constructor(levels: number) {
    this.levels = Array.from({ length: levels }, () => new Float64Array(4096));
  }

  add(
    minutes: number,
    probe: number,
    wanted: number,
    watts: number,
    surfaces: readonly number[],
    tempC: Float64Array,
  ): void {
    if (this.count === this.minutes.length) this.grow();
    const at = this.count++;
    this.minutes[at] = minutes;
    this.probe[at] = probe;
    this.wanted[at] = wanted;
    this.power[at] = watts;
    for (let l = 0; l < surfaces.length; l++)
      (this.levels[l] as Float64Array)[at] = tempC[surfaces[l] as number] as number;
  }

  /** How fast the probe rose or fell over the last step, °C a second. */
  paceCPerSecond(): number {
    if (this.count < 2) return 0;
    const a = this.count - 1;
    const seconds = ((this.minutes[a] as number) - (this.minutes[a - 1] as number)) * 60;
    return ((this.probe[a] as number) - (this.probe[a - 1] as number)) / seconds;
  }

  done() {
    const cut = (array: Float64Array): Float64Array => array.slice(0, this.count);
    const probeC = cut(this.probe);
    return {
      minutes: cut(this.minutes),
      probeC,
      wantedC: cut(this.wanted),
      watts: cut(this.power),
      levelC: this.levels.map(cut),
      peakC: probeC.reduce((most, each) => Math.max(most, each), Number.NEGATIVE_INFINITY),
    };
  }

  private grow(): void {
    const larger = (array: Float64Array<ArrayBuffer>): Float64Array<ArrayBuffer> => {
      const next = new Float64Array(array.length * 2);
      next.set(array);
      return next;
    };
    this.minutes = larger(this.minutes);
    this.probe = larger(this.probe);
    this.wanted = larger(this.wanted);
    this.power = larger(this.power);
    this.levels = this.levels.map(larger);
  }
}

import type { Chance } from "../../measures/seeded-chance.ts";
import { PARAMETERS, valuesFromSteps, withValues } from "../calibration/parameters.ts";
import type { PredictInput } from "../prediction/predict.ts";
import type { Programme } from "../programme/programme.ts";
import { type Demand, HeatSolver } from "../thermal/heat-solver.ts";
import { kilnNetwork } from "../thermal/kiln-network.ts";
import { RehearsalController } from "./rehearsal-controller.ts";
import {
  FAULT_TIMES,
  JUMP_C,
  OVERSHOT_C,
  type RehearsedFault,
  SLIPPED_SHARE,
  STALLED_SHARE,
} from "./rehearsed-fault.ts";

/** One step of a rehearsed firing. */
export interface RehearsedStep {
  /** Minutes since it was switched on. */
  readonly minute: number;
  /** What the logger sends: whole degrees; null where it sends nothing. */
  readonly tempC: number | null;
  /** True once the elements are off for good. */
  readonly isOff: boolean;
}

/** How far a rehearsed kiln may be from the one described: within one sigma of what a calibration expects, in halves. */
const UNLIKE_SIGMAS = 0.5;
const STEP_S = 30;
/** What a thermocouple and its logger err by, and for how long they err alike. Common practice, no source. */
const NOISE = { celsius: 0.7, lastsMin: 4 };

/**
 * A firing of an invented kiln, to practise with: the kiln as it is described, a little unlike that in everything a
 * calibration knows of, its controller following the programme by what its probe reads, a logger's small errors, and one
 * fault if wished.
 */
export class RehearsedFiring {
  /** How far a step goes, milliseconds. */
  static readonly STEP_MS = STEP_S * 1000;
  private readonly setting: ReturnType<typeof withValues>;
  private readonly solver: HeatSolver;
  private readonly controller: RehearsalController;
  private readonly demand: Demand;
  private readonly zone: number;
  private readonly chance: Chance;
  private readonly fault: RehearsedFault | null;
  private readonly faultFromC: number;
  private readonly mostC: number;
  private isTooHot = false;
  private faultSinceMin: number | null = null;
  private minute = 0;
  private errorC = 0;
  private wasRising = true;

  /** @param input the planned firing; @param chance what makes this kiln another than described, and its logger err */
  constructor(input: PredictInput, chance: Chance, fault: RehearsedFault | null) {
    const steps = Float64Array.from(PARAMETERS, () => UNLIKE_SIGMAS * Math.max(-1, Math.min(1, normal(chance))));
    this.setting = withValues(input.kiln, input.load, valuesFromSteps(steps, {}));
    const network = kilnNetwork(this.setting.kiln, this.setting.load);
    this.zone = network.zoneAt(input.probeHeightM ?? input.kiln.depthM / 2);
    this.solver = new HeatSolver(network.network, input.kiln.roomC);
    this.controller = new RehearsalController(input.programme, input.kiln.roomC);
    this.demand = { zone: this.zone, steer: true, wantedC: new Float64Array(2), watts: 0, mostWatts: 0 };
    this.chance = chance;
    this.fault = fault;
    this.mostC = peakOf(input.programme) + OVERSHOT_C;
    this.faultFromC = fault === null ? 0 : FAULT_TIMES[fault].fromShareOfPeak * peakOf(input.programme);
  }

  /** Half a minute on. */
  step(): RehearsedStep {
    const wantedC = this.controller.wantedC(this.minute, this.readC());
    this.heat(wantedC);
    this.minute += STEP_S / 60;
    const readC = this.readC();
    this.followFault(readC);
    this.errorC = erred(this.errorC, this.chance);
    const isSilent = this.isWrong("silence");
    return {
      minute: this.minute,
      tempC: isSilent ? null : Math.round(readC + this.errorC),
      isOff: this.controller.isOver && !this.isWrong("overshoot"),
    };
  }

  /** What its probe reads, before the logger's errors. */
  private readC(): number {
    const { roomC } = this.setting.kiln;
    const hereC = this.solver.zoneC(this.zone);
    // Its own error grows with the heat: cold, every thermometer agrees with the room.
    const ownC = this.setting.probeOffsetC * Math.min(1, Math.max(0, (hereC - roomC) / 600));
    const wholeC = hereC + ownC;
    if (this.isWrong("slipped")) return roomC + SLIPPED_SHARE * (wholeC - roomC);
    return this.isWrong("jump") ? wholeC + JUMP_C : wholeC;
  }

  private heat(wantedC: number | null): void {
    const { demand, solver } = this;
    const { powerW } = this.setting.kiln;
    const welded = this.isWrong("overshoot");
    const rising = wantedC !== null && (wantedC >= this.solver.zoneC(this.zone) - 2 || welded);
    if (this.wasRising && !rising && this.minute > 0) solver.settleFired();
    this.wasRising = rising;
    demand.steer = wantedC !== null && !welded;
    demand.watts = welded ? powerW : 0;
    demand.mostWatts = this.isWrong("stall") ? powerW * STALLED_SHARE : powerW;
    // The controller goes by what it reads: what its probe reads too low, the kiln gets too much.
    demand.wantedC.fill((wantedC ?? 0) - (this.readC() - solver.zoneC(this.zone)));
    solver.step(STEP_S, demand);
  }

  private isWrong(fault: RehearsedFault): boolean {
    return this.fault === fault && this.faultSinceMin !== null && !this.isMended();
  }

  private isMended(): boolean {
    if (this.isTooHot) return true;
    const since = this.faultSinceMin;
    return since !== null && this.fault !== null && this.minute - since >= FAULT_TIMES[this.fault].lastsMin;
  }

  private followFault(readC: number): void {
    if (this.fault === null) return;
    if (this.faultSinceMin === null && readC >= this.faultFromC) this.faultSinceMin = this.minute;
    if (this.fault === "overshoot" && readC >= this.mostC) this.isTooHot = true;
    // A welded relay is only ended by hand, at the isolator: then the firing is over.
    if (this.fault === "overshoot" && this.isMended()) this.controller.end();
  }
}

const peakOf = ({ segments }: Pick<Programme, "segments">): number =>
  segments.reduce((most, { targetC }) => Math.max(most, targetC), 0);

function erred(before: number, chance: Chance): number {
  const kept = Math.exp(-STEP_S / 60 / NOISE.lastsMin);
  return kept * before + NOISE.celsius * Math.sqrt(1 - kept * kept) * normal(chance);
}

/** A draw from the normal distribution, by Box and Muller's method. */
const normal = (chance: Chance): number =>
  Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());

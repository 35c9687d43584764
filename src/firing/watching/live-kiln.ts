import { NOISE } from "../calibration/evidence.ts";
import { LivedKiln } from "../calibration/lived-kiln.ts";
import type { ThermalSetting } from "../calibration/parameters.ts";
import { type FireOptions, fire, type SimulatedFiring } from "../thermal/fire.ts";
import { HeatSolver } from "../thermal/heat-solver.ts";
import { COOLEST_C } from "./cool-until.ts";
import type { LiveStep } from "./live-steps.ts";
import type { Segments } from "./programme-follower.ts";

/** The same as where a replay is compared (calibration/compare.ts). */
const STEERED_SLACK_C = 2 * NOISE.tempC;
const OF_LATE_MIN = 20;
/** This much above its room a cooling kiln's model has its whole error; never less than a share, for the thermometer's own. */
const WHOLE_ERROR_C = 500;
const LEAST_ERROR = 0.25;
/** What is foretold of one kiln of several may be reckoned in larger steps: it moves the end by less than a minute. */
const STEP_ERROR_K = 2;
const JOULES_A_KWH = 3.6e6;

/** One kiln that might be the one being fired: it lives through the same readings, and can be fired on from there. */
export class LiveKiln {
  readonly minutes: number[];
  readonly levelC: readonly number[][];
  /** How far above the readings it has been of late, °C: one reading's noise is none of it. */
  aboveC = 0;
  /** The hottest of probe and ware. */
  readonly hottestC: number[];
  private readonly setting: ThermalSetting;
  private readonly kiln: LivedKiln;
  private readonly onward: HeatSolver;
  private before = 0;
  private last: LiveStep;

  constructor(setting: ThermalSetting, probeHeightM: number, start: LiveStep) {
    this.setting = setting;
    this.kiln = new LivedKiln(setting, probeHeightM, start.tempC);
    this.onward = new HeatSolver(this.kiln.network.network, start.tempC - setting.probeOffsetC);
    this.last = start;
    this.minutes = [start.minute];
    this.levelC = this.kiln.surfaces.map((_, level) => [this.kiln.levelC(level)]);
    this.hottestC = [start.tempC];
  }

  /** What its probe reads. */
  probeC(): number {
    return this.kiln.probeC();
  }

  /** What its elements have drawn so far. */
  kWh(): number {
    return this.kiln.solver.givenJ / JOULES_A_KWH;
  }

  /** Lives through a step: held to the readings, or left to itself at full power or off. */
  live(step: LiveStep): void {
    const { last } = this;
    const seconds = (step.minute - last.minute) * 60;
    this.kiln.live(seconds, step.mode, last.tempC, step.tempC);
    const aboveC = this.probeC() - step.tempC;
    const kept = step.mode === last.mode ? Math.exp(-seconds / 60 / OF_LATE_MIN) : 0;
    this.aboveC = kept * this.aboveC + (1 - kept) * aboveC;
    this.last = step;
    this.minutes.push(step.minute);
    let hottest = this.probeC();
    this.levelC.forEach((kept, level) => {
      const celsius = this.kiln.levelC(level);
      kept.push(celsius);
      hottest = Math.max(hottest, celsius);
    });
    this.hottestC.push(hottest);
  }

  /** How far it is above the reading now, in sigmas of what the comparison before lets expect. @param kept how much of it lasts */
  compare(kept: number): number {
    const whole = this.probeC() - this.last.tempC;
    const steered = this.last.mode === "follow";
    const apart = steered ? Math.sign(whole) * Math.max(0, Math.abs(whole) - STEERED_SLACK_C) : whole;
    const inSigmas = (apart - kept * this.before) / (this.errorC() * Math.sqrt(1 - kept * kept));
    this.before = apart;
    return inSigmas;
  }

  /** Off, a model's error shrinks with what is left to lose. */
  private errorC(): number {
    if (this.last.mode !== "off") return NOISE.tempC;
    const left = (this.last.tempC - this.setting.kiln.roomC) / WHOLE_ERROR_C;
    return NOISE.tempC * Math.min(1, Math.max(LEAST_ERROR, left));
  }

  /** The firing from now on: the rest of the programme, then cooling. It stays where it is. @param probeOffsetC besides its own */
  fireOn(rest: Segments, probeOffsetC: number): SimulatedFiring {
    this.onward.takeStateOf(this.kiln.solver);
    const options: FireOptions = {
      probeZone: this.kiln.zone,
      probeOffsetC: this.setting.probeOffsetC + probeOffsetC,
      powerW: this.setting.kiln.powerW,
      startC: this.last.tempC,
      coolToC: Math.max(COOLEST_C, this.setting.kiln.roomC + 2),
      solver: this.onward,
      stepErrorK: STEP_ERROR_K,
    };
    return fire(this.kiln.network, { format: "programme/1", name: "the rest", segments: rest }, options);
  }
}

import { type Demand, HeatSolver } from "../thermal/heat-solver.ts";
import { type KilnNetwork, kilnNetwork } from "../thermal/kiln-network.ts";
import type { Mode } from "./measured-firing.ts";
import type { ThermalSetting } from "./parameters.ts";

const FIRST_STAGE = 1 - Math.SQRT1_2;
/** How fast a kiln that was let go comes back to the log. */
const RETURN_MIN = 60;

/**
 * A kiln that lives through a measured firing, step by step. While the controller held the probe, so does this one, to the
 * very temperatures that were measured; in a stretch of full power, and once the elements are off, it is left to itself.
 */
export class LivedKiln {
  readonly network: KilnNetwork;
  readonly solver: HeatSolver;
  readonly zone: number;
  /** The node of each level's ware in the solver. */
  readonly surfaces: readonly number[];
  private readonly setting: ThermalSetting;
  private readonly demand: Demand;
  private mode: Mode = "follow";
  private apart = 0;

  /**
   * @param probeHeightM the probe's height above the floor, metres
   * @param startC what the probe read at the start, °C
   */
  constructor(setting: ThermalSetting, probeHeightM: number, startC: number) {
    this.setting = setting;
    this.network = kilnNetwork(setting.kiln, setting.load);
    this.zone = this.network.zoneAt(probeHeightM);
    this.solver = new HeatSolver(this.network.network, startC - setting.probeOffsetC);
    this.surfaces = this.network.levelColumns.map((column) => this.solver.flat.start[column] as number);
    const mostWatts = setting.kiln.powerW;
    this.demand = { zone: this.zone, steer: true, wantedC: new Float64Array(2), watts: 0, mostWatts };
  }

  /** What its probe reads, °C. */
  probeC(): number {
    return this.solver.zoneC(this.zone) + this.setting.probeOffsetC;
  }

  /** A level's ware, °C. */
  levelC(level: number): number {
    return this.solver.tempC[this.surfaces[level] as number] as number;
  }

  /** Lives through a step in which the measured probe went from one temperature to another, °C. */
  live(seconds: number, mode: Mode, measuredFromC: number, measuredToC: number): void {
    const { demand, solver } = this;
    const { kiln, probeOffsetC } = this.setting;
    // As in `fire`: once it cools, clay that has lost its water does not take it up again.
    if (mode === "off" && this.mode !== "off") solver.settleFired();
    demand.steer = mode === "follow";
    if (mode === "follow") {
      if (this.mode !== "follow") this.apart = this.probeC() - measuredFromC;
      const from = measuredFromC + this.apart - probeOffsetC;
      this.apart *= Math.exp(-seconds / 60 / RETURN_MIN);
      const to = measuredToC + this.apart - probeOffsetC;
      demand.wantedC[0] = from + FIRST_STAGE * (to - from);
      demand.wantedC[1] = to;
    } else {
      demand.watts = mode === "full" ? kiln.powerW : 0;
    }
    this.mode = mode;
    solver.step(seconds, demand);
  }
}

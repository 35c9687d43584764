import { type Demand, HeatSolver } from "../thermal/heat-solver.ts";
import { kilnNetwork } from "../thermal/kiln-network.ts";
import type { MeasuredFiring } from "./measured-firing.ts";
import type { ThermalSetting } from "./parameters.ts";

/** What a kiln would have done in a firing's place. Arrays share the places of the measured firing. */
export interface Replay {
  readonly probeC: Float64Array;
  /** Mean power over the step that ends there. */
  readonly watts: Float64Array;
  readonly levelC: readonly Float64Array[];
  readonly kWh: number;
}

const FIRST_STAGE = 1 - Math.SQRT1_2;
/** How fast a replay that was let go comes back to the log. */
const RETURN_MIN = 60;

/**
 * Lives through a measured firing in another kiln. While the controller held the probe, so does the replay, to the very
 * temperatures that were measured, and what tells kilns apart is the power that it takes; in a stretch of full power, and
 * once the elements are off, it is left to itself and its temperature tells. The steps are the same for every kiln, so
 * that two kilns' answers differ by the kilns alone (`fire` chooses its own, and waits for a slow kiln: a log does not).
 *
 * @param probeHeightM the probe's height above the floor, metres
 */
export function replay(firing: MeasuredFiring, setting: ThermalSetting, probeHeightM: number): Replay {
  const { minutes, tempC, modes } = firing;
  const { kiln, probeOffsetC } = setting;
  const network = kilnNetwork(kiln, setting.load);
  const zone = network.zoneAt(probeHeightM);
  const solver = new HeatSolver(network.network, (tempC[0] as number) - probeOffsetC);
  const surfaces = network.levelColumns.map((column) => solver.flat.start[column] as number);
  const places = minutes.length;
  const probeC = new Float64Array(places);
  const watts = new Float64Array(places);
  const levelC = surfaces.map(() => new Float64Array(places));
  const demand: Demand = { zone, steer: true, wantedC: new Float64Array(2), watts: 0, mostWatts: kiln.powerW };
  const note = (at: number): void => {
    probeC[at] = solver.zoneC(zone) + probeOffsetC;
    watts[at] = at === 0 ? 0 : solver.watts;
    surfaces.forEach((node, level) => {
      (levelC[level] as Float64Array)[at] = solver.tempC[node] as number;
    });
  };
  note(0);
  let apart = 0;
  for (let at = 1; at < places; at++) {
    const seconds = ((minutes[at] as number) - (minutes[at - 1] as number)) * 60;
    const mode = modes[at];
    // As in `fire`: once it cools, clay that has lost its water does not take it up again.
    if (mode === "off" && modes[at - 1] !== "off") solver.settleFired();
    demand.steer = mode === "follow";
    if (mode === "follow") {
      if (modes[at - 1] === "full") apart = (probeC[at - 1] as number) - (tempC[at - 1] as number);
      const from = (tempC[at - 1] as number) + apart - probeOffsetC;
      apart *= Math.exp(-seconds / 60 / RETURN_MIN);
      const to = (tempC[at] as number) + apart - probeOffsetC;
      demand.wantedC[0] = from + FIRST_STAGE * (to - from);
      demand.wantedC[1] = to;
    } else {
      demand.watts = mode === "full" ? kiln.powerW : 0;
    }
    solver.step(seconds, demand);
    note(at);
  }
  return { probeC, watts, levelC, kWh: solver.givenJ / 3.6e6 };
}

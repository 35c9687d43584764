import { LivedKiln } from "./lived-kiln.ts";
import type { MeasuredFiring, Mode } from "./measured-firing.ts";
import type { ThermalSetting } from "./parameters.ts";

/** What a kiln would have done in a firing's place. Arrays share the places of the measured firing. */
export interface Replay {
  readonly probeC: Float64Array;
  /** Mean power over the step that ends there. */
  readonly watts: Float64Array;
  readonly levelC: readonly Float64Array[];
  readonly kWh: number;
}

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
  const kiln = new LivedKiln(setting, probeHeightM, tempC[0] as number);
  const places = minutes.length;
  const probeC = new Float64Array(places);
  const watts = new Float64Array(places);
  const levelC = kiln.surfaces.map(() => new Float64Array(places));
  const note = (at: number): void => {
    probeC[at] = kiln.probeC();
    watts[at] = at === 0 ? 0 : kiln.solver.watts;
    for (let level = 0; level < levelC.length; level++) {
      (levelC[level] as Float64Array)[at] = kiln.levelC(level);
    }
  };
  note(0);
  for (let at = 1; at < places; at++) {
    const seconds = ((minutes[at] as number) - (minutes[at - 1] as number)) * 60;
    kiln.live(seconds, modes[at] as Mode, tempC[at - 1] as number, tempC[at] as number);
    note(at);
  }
  return { probeC, watts, levelC, kWh: kiln.solver.givenJ / 3.6e6 };
}

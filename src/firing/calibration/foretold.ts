import { heatWork } from "../heat-work/heat-work.ts";
import { LID_LIFTS_C } from "../prediction/cool-steps.ts";
import type { Programme } from "../programme/programme.ts";
import { fire } from "../thermal/fire.ts";
import { kilnNetwork } from "../thermal/kiln-network.ts";
import type { ThermalSetting } from "./parameters.ts";

/** What is foretold of a firing: its energy, every shelf's heat work as equivalent °C, hours from shut-off to 95 °C. */
export interface Foretold {
  readonly kWh: number;
  readonly shelvesC: readonly number[];
  readonly coolHours: number;
  /** False where the kiln is too weak for the programme: the rest is then of what it did manage. */
  readonly finished: boolean;
}

/** Fires a programme in a kiln and says what a potter wants to know of it. */
export function foretell(setting: ThermalSetting, programme: Programme, probeHeightM: number): Foretold {
  const network = kilnNetwork(setting.kiln, setting.load);
  const firing = fire(network, programme, {
    probeZone: network.zoneAt(probeHeightM),
    probeOffsetC: setting.probeOffsetC,
    powerW: setting.kiln.powerW,
    startC: setting.kiln.roomC,
    coolToC: LID_LIFTS_C - 5,
  });
  return foretoldOf(firing);
}

/** The same figures of a firing that was reckoned otherwise. */
export function foretoldOf(firing: ReturnType<typeof fire>): Foretold {
  const { minutes, levelC, shutOffMin, kWh, trouble } = firing;
  let coolMin = minutes.at(-1) as number;
  for (let i = minutes.length - 1; i > 0; i--) {
    const here = hottest(levelC, i);
    if (here <= LID_LIFTS_C) continue;
    const next = Math.min(i + 1, minutes.length - 1);
    const share = next === i ? 0 : (here - LID_LIFTS_C) / (here - hottest(levelC, next));
    coolMin = (minutes[i] as number) + share * ((minutes[next] as number) - (minutes[i] as number));
    break;
  }
  return {
    kWh,
    shelvesC: levelC.map((tempC) => heatWork({ minutes, tempC }).equivalentC),
    coolHours: (coolMin - shutOffMin) / 60,
    finished: !trouble.some((each) => each.kind === "stalled"),
  };
}

const hottest = (levelC: readonly Float64Array[], at: number): number =>
  levelC.reduce((most, each) => Math.max(most, each[at] as number), Number.NEGATIVE_INFINITY);

/** How unsure a foretold firing is, one sigma each. */
export interface Unsure {
  readonly kWhPercent: number;
  /** Of the shelf least sure. */
  readonly shelfC: number;
  readonly coolPercent: number;
}

/** Foretold figures as a row of numbers on scales that add: ln for those that are shares. */
export const asRow = ({ kWh, shelvesC, coolHours }: Foretold): Float64Array =>
  Float64Array.from([100 * Math.log(kWh), ...shelvesC, 100 * Math.log(coolHours)]);

/** The spreads of such a row, named again. */
export function asUnsure(row: Float64Array): Unsure {
  return {
    kWhPercent: row[0] as number,
    shelfC: row.subarray(1, row.length - 1).reduce((most, each) => Math.max(most, each), 0),
    coolPercent: row[row.length - 1] as number,
  };
}

/** What a calibrated prediction is meant to reach: the project's own targets (docs/physics.md). */
export const AIM: Unsure = { kWhPercent: 5, shelfC: 5, coolPercent: 10 };

/** One number for it: the root mean square of the three, each as a share of what is aimed at. */
export function unsureInAll(unsure: Unsure): number {
  const shares = [unsure.kWhPercent / AIM.kWhPercent, unsure.shelfC / AIM.shelfC, unsure.coolPercent / AIM.coolPercent];
  return Math.sqrt(shares.reduce((sum, share) => sum + share * share, 0) / shares.length);
}

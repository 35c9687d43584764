import { type ConeName, conePlace } from "../cones/cone.ts";
import { CONE_TABLE } from "../cones/cone-table.ts";
import { heatWork } from "../heat-work/heat-work.ts";
import { PUBLISHED_RATES } from "../heat-work/trailing-rate.ts";
import { PROGRAMME_FORMAT, type Programme } from "../programme/programme.ts";
import { fire, type SimulatedFiring } from "../thermal/fire.ts";
import { kilnNetwork, type ThermalKiln, type ThermalLoad } from "../thermal/kiln-network.ts";
import { resistanceFactor } from "./element-wire.ts";

/** A kiln, a load and a cone to reach. */
export interface ClimbQuestion {
  readonly kiln: ThermalKiln;
  readonly load: ThermalLoad;
  readonly cone: ConeName;
  /** The elements' power with cold wire, W: measured (`elementCondition`), else the kiln's own. */
  readonly coldPowerW?: number;
  /** The middle of the chamber where left out, m. */
  readonly probeHeightM?: number;
}

/** Whether a kiln still climbs to a cone, and how well. */
export interface Climb {
  /** `yes`: the last 100 °C at 60 °C/h or more; `slowly`: at 15 or more; `no`: slower than cones are published for, or never. */
  readonly verdict: "yes" | "slowly" | "no";
  /** Over the last 100 °C before the cone falls at the probe, at full power, °C/h; null where it never does. */
  readonly rateCPerHour: number | null;
  /** The probe's temperature when the cone falls; null where it never does. */
  readonly coneDownC: number | null;
  /** Hours of full power from cold until then. */
  readonly hours: number | null;
  /** Where it climbs no further, °C; null where it reaches the cone first. */
  readonly stallsAtC: number | null;
  readonly powerW: number;
  readonly sentence: string;
}

/** The climb is tried to this far above the cone's own temperature. */
const BEYOND_C = 40;
const LAST_C = 100;

/**
 * Runs the kiln at full power with this load until the cone falls at the probe or the climb ends. The power is taken as
 * it is with the wire hot, for the whole climb: up to 4 % too little while it is still cold.
 */
export function canClimb(question: ClimbQuestion): Climb {
  const { kiln, load, cone } = question;
  const coneC = (CONE_TABLE[conePlace(cone)] as (typeof CONE_TABLE)[number]).at60C;
  const powerW = (question.coldPowerW ?? kiln.powerW) / resistanceFactor(coneC);
  const network = kilnNetwork(kiln, load);
  const firing = fire(network, climbTo(coneC + BEYOND_C), {
    probeZone: network.zoneAt(question.probeHeightM ?? kiln.depthM / 2),
    probeOffsetC: 0,
    powerW,
    startC: kiln.roomC,
    // Only the climb is asked for.
    coolToC: coneC,
  });
  const climb = climbOf(firing);
  const downAtMin = heatWork(climb).cones[conePlace(cone)]?.downAtMin ?? null;
  const stalled = firing.trouble.find((each) => each.kind === "stalled");
  const kW = `${(powerW / 1000).toFixed(1)} kW`;
  const needs = `cone ${cone}, ${coneC} °C at 60 °C/h`;
  if (downAtMin === null) {
    const stallsAtC = stalled?.tempC ?? firing.peakC;
    const sentence = `At full power, ${kW} with hot elements, it stalls near ${Math.round(stallsAtC)} °C, short of ${needs}.`;
    return { verdict: "no", rateCPerHour: null, coneDownC: null, hours: null, stallsAtC, powerW, sentence };
  }
  const coneDownC = tempAt(climb, downAtMin);
  const rateCPerHour = (LAST_C * 60) / (downAtMin - firstAt(climb, coneDownC - LAST_C));
  const [slowest, usual] = PUBLISHED_RATES;
  const verdict = rateCPerHour >= usual ? "yes" : rateCPerHour >= slowest ? "slowly" : "no";
  const rate = `its last 100 °C at ${Math.round(rateCPerHour)} °C/h`;
  const ends = {
    yes: `it still has power to spare for ${needs}`,
    slowly: `it reaches cone ${cone} only slower than 60 °C/h: ask for no more than that`,
    no: `slower than any published cone: do not count on cone ${cone}`,
  } as const;
  return {
    verdict,
    rateCPerHour,
    coneDownC,
    hours: downAtMin / 60,
    stallsAtC: null,
    powerW,
    sentence: `At full power, ${kW} with hot elements, it climbs ${rate}; ${ends[verdict]}.`,
  };
}

/** Beyond this no wire still holds together. */
const MOST_WORN = 1;

/**
 * How far the elements may wear before this kiln, with this load, no longer climbs to the cone at 60 °C/h.
 *
 * @returns rise of resistance as a share of when new, to a hundredth; null where the kiln never did, even new
 */
export function wornShareAtLimit(question: Omit<ClimbQuestion, "coldPowerW">, newPowerW: number): number | null {
  const still = (worn: number): boolean =>
    canClimb({ ...question, coldPowerW: newPowerW / (1 + worn) }).verdict === "yes";
  if (!still(0)) return null;
  if (still(MOST_WORN)) return MOST_WORN;
  let [holds, fails] = [0, MOST_WORN];
  while (fails - holds > 0.01) {
    const middle = (holds + fails) / 2;
    if (still(middle)) holds = middle;
    else fails = middle;
  }
  return holds;
}

const climbTo = (targetC: number): Programme => ({
  format: PROGRAMME_FORMAT,
  name: "full power",
  segments: [{ rateCPerHour: null, targetC, holdMin: 0 }],
});

/** The curve up to shut-off. */
function climbOf({ minutes, probeC, shutOffMin }: SimulatedFiring): { minutes: Float64Array; tempC: Float64Array } {
  let end = minutes.length;
  while (end > 2 && (minutes[end - 1] as number) > shutOffMin + 1e-6) end--;
  return { minutes: minutes.slice(0, end), tempC: probeC.slice(0, end) };
}

type Climbing = ReturnType<typeof climbOf>;

function tempAt({ minutes, tempC }: Climbing, minute: number): number {
  const after = Math.max(
    1,
    minutes.findIndex((each) => each >= minute),
  );
  const [from, to] = [minutes[after - 1] as number, minutes[after] as number];
  const share = (minute - from) / (to - from || 1);
  return (tempC[after - 1] as number) + share * ((tempC[after] as number) - (tempC[after - 1] as number));
}

/** The minute at which it first is that hot. */
function firstAt({ minutes, tempC }: Climbing, celsius: number): number {
  const after = Math.max(
    1,
    tempC.findIndex((each) => each >= celsius),
  );
  const [from, to] = [tempC[after - 1] as number, tempC[after] as number];
  const share = (celsius - from) / (to - from || 1);
  return (minutes[after - 1] as number) + share * ((minutes[after] as number) - (minutes[after - 1] as number));
}

import { type ConeName, conePlace } from "../cones/cone.ts";
import { CONE_TABLE } from "../cones/cone-table.ts";
import { heatWork } from "../heat-work/heat-work.ts";
import { whereReached } from "../heat-work/questions.ts";
import { PUBLISHED_RATES } from "../heat-work/trailing-rate.ts";
import { PROGRAMME_FORMAT, type Programme } from "../programme/programme.ts";
import { fire, type SimulatedFiring } from "../thermal/fire.ts";
import { kilnNetwork, type ThermalKiln, type ThermalLoad } from "../thermal/kiln-network.ts";
import { ELEMENT_WIRE, resistanceFactor } from "./element-wire.ts";

/** A kiln, a load and a cone to reach. */
export interface ClimbQuestion {
  readonly kiln: ThermalKiln;
  readonly load: ThermalLoad;
  readonly cone: ConeName;
  /** The elements' power with cold wire, W, as measured (`elementCondition`); else the kiln's own, which is meant hot. */
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
  /** Where it climbs no further at full power, °C, whether or not the cone falls before; null where it is past 1400 °C. */
  readonly stallsAtC: number | null;
  readonly powerW: number;
  readonly sentence: string;
}

/** The climb is tried to this far above the cone's own temperature. */
const BEYOND_C = 40;
/** A strong kiln outruns its cones: it holds so long at the top that they come down. */
const CATCH_UP_MIN = 60;
const LAST_C = 100;

/**
 * Runs the kiln at full power with this load until it stands still, and looks when the cone falls at the probe. The power
 * is taken as it is with the wire hot, for the whole climb: up to 4 % too little while it is still cold.
 */
export function canClimb(question: ClimbQuestion): Climb {
  const { kiln, load, cone } = question;
  const coneC = (CONE_TABLE[conePlace(cone)] as (typeof CONE_TABLE)[number]).at60C;
  const powerW = question.coldPowerW === undefined ? kiln.powerW : question.coldPowerW / resistanceFactor(coneC);
  const network = kilnNetwork(kiln, load);
  const probeZone = network.zoneAt(question.probeHeightM ?? kiln.depthM / 2);
  const fullPower = (targetC: number, holdMin: number): SimulatedFiring =>
    // Only the climb is asked for: cooling ends where it begins.
    fire(network, climbTo(targetC, holdMin), {
      probeZone,
      probeOffsetC: 0,
      powerW,
      startC: kiln.roomC,
      coolToC: coneC,
    });
  const climb = climbOf(fullPower(coneC + BEYOND_C, CATCH_UP_MIN));
  const downAtMin = heatWork(climb).cones[conePlace(cone)]?.downAtMin ?? null;
  const stalled = fullPower(ELEMENT_WIRE.hottestC, 0).trouble.find((each) => each.kind === "stalled");
  const stallsAtC = stalled?.tempC ?? null;
  const kW = `${(powerW / 1000).toFixed(1)} kW`;
  const needs = `cone ${cone}, ${coneC} °C at 60 °C/h`;
  if (downAtMin === null) {
    const where = stallsAtC === null ? "never gets there" : `stalls near ${Math.round(stallsAtC)} °C`;
    const sentence = `At full power, ${kW} with hot elements, it ${where}, short of ${needs}.`;
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
    stallsAtC,
    powerW,
    sentence: `At full power, ${kW} with hot elements, it climbs ${rate}; ${ends[verdict]}.`,
  };
}

/** Beyond this no wire still holds together. */
const MOST_WORN = 1;

/**
 * How far the elements may wear before this kiln, with this load, no longer climbs to the cone.
 *
 * @param question its kiln's power is what the elements give when new, on this supply
 * @param asking what must still hold: the last 100 °C at 60 °C/h ("usual"), or at 15 ("at all")
 * @returns rise of resistance as a share of when new, to half a hundredth; null where the kiln never did, even new
 */
export function wornShareAtLimit(
  question: Omit<ClimbQuestion, "coldPowerW">,
  asking: "usual" | "at all" = "usual",
): number | null {
  const still = (worn: number): boolean => {
    const kiln = { ...question.kiln, powerW: question.kiln.powerW / (1 + worn) };
    const { verdict } = canClimb({ ...question, kiln });
    return verdict === "yes" || (asking === "at all" && verdict === "slowly");
  };
  if (!still(0)) return null;
  const ends = whereReached((worn) => (still(worn) ? 0 : 1), 1, 0, MOST_WORN, 0.005);
  return ends === null ? MOST_WORN : Math.max(0, ends - 0.005);
}

const climbTo = (targetC: number, holdMin: number): Programme => ({
  format: PROGRAMME_FORMAT,
  name: "full power",
  segments: [{ rateCPerHour: null, targetC, holdMin }],
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

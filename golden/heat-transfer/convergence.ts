import { fire, type SimulatedFiring } from "../../src/firing/thermal/fire.ts";
import { kilnNetwork } from "../../src/firing/thermal/kiln-network.ts";
import { evenLoad, programmeOf, referenceKiln } from "../../src/firing/thermal/testing/reference-kiln.ts";

/** Every ramp and hold ends on a multiple of 240 s, and the elements neither run out nor rest: nothing but smooth heating. */
const SMOOTH = programmeOf([100, 420, 40], [150, 1020, 0], [60, 1220, 16]);
const COARSEST_S = 240;

export interface Halving {
  readonly stepS: number;
  /** Worst difference from a step of half the length, K: while heating, and from an hour after shut-off. */
  readonly heatingK: number;
  readonly coolingK: number;
  readonly kWh: number;
  /** log2 of how much smaller each is than at twice the step; null at the first. */
  readonly order: { readonly heating: number; readonly cooling: number } | null;
  /** True where the power stayed between nothing and all while the programme ran. */
  readonly unclamped: boolean;
}

function smoothFiring(stepS: number): SimulatedFiring {
  const kiln = referenceKiln({ powerW: 30_000 });
  const network = kilnNetwork(kiln, evenLoad(3, kiln.depthM, 12));
  return fire(network, SMOOTH, {
    probeZone: network.zoneAt(kiln.depthM / 2),
    probeOffsetC: 0,
    powerW: kiln.powerW,
    startC: 20,
    coolToC: 300,
    fixedStepS: stepS,
  });
}

/** Worst difference of probe and levels at every time the coarsest steps share, from one minute to another. */
function apart(a: SimulatedFiring, b: SimulatedFiring, fromMin: number, toMin: number): number {
  let worst = 0;
  let j = 0;
  for (let i = 0; i < a.minutes.length; i++) {
    const minute = a.minutes[i] as number;
    if (minute < fromMin || minute > toMin) continue;
    const places = (minute * 60) / COARSEST_S;
    if (Math.abs(places - Math.round(places)) > 1e-6) continue;
    while (j + 1 < b.minutes.length && (b.minutes[j] as number) < minute - 1e-6) j++;
    if (Math.abs((b.minutes[j] as number) - minute) > 1e-6) continue;
    for (const [of, other] of [[a.probeC, b.probeC], ...a.levelC.map((level, l) => [level, b.levelC[l]])]) {
      worst = Math.max(worst, Math.abs((of?.[i] as number) - (other?.[j] as number)));
    }
  }
  return worst;
}

/** A whole firing at steps of 240 s, halved again and again. */
export function stepHalving(halvings = 4): Halving[] {
  const firings = Array.from({ length: halvings + 1 }, (_, n) => smoothFiring(COARSEST_S / 2 ** n));
  const rows: Halving[] = [];
  for (let n = 0; n < halvings; n++) {
    const [firing, finer] = [firings[n] as SimulatedFiring, firings[n + 1] as SimulatedFiring];
    const heatingK = apart(firing, finer, 8, firing.shutOffMin);
    const coolingK = apart(firing, finer, firing.shutOffMin + 60, Number.POSITIVE_INFINITY);
    const before = rows.at(-1);
    const running = firing.watts.filter((_, i) => i > 0 && (firing.minutes[i] as number) <= firing.shutOffMin);
    rows.push({
      stepS: COARSEST_S / 2 ** n,
      heatingK,
      coolingK,
      kWh: firing.kWh,
      order:
        before === undefined
          ? null
          : { heating: Math.log2(before.heatingK / heatingK), cooling: Math.log2(before.coolingK / coolingK) },
      unclamped: running.every((watts) => watts > 1 && watts < 29_999),
    });
  }
  return rows;
}

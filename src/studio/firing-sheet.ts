import { COOL_STEPS } from "../firing/prediction/cool-steps.ts";
import type { LevelPrediction } from "../firing/prediction/predict.ts";
import { programmeTimes } from "../firing/programme/ideal-curve.ts";
import { keyInTable } from "../firing/programme/key-in.ts";
import type { Programme } from "../firing/programme/programme.ts";
import type { LoadRequest } from "../loading/load-request.ts";
import type { TemperatureUnits } from "../measures/temperature.ts";
import type { FiringSheet } from "../sheets/firing/firing-pages.ts";
import { type FiringStart, moneyText } from "./firing-start.ts";
import type { Foretold } from "./foretell.ts";

/** Cones this close to falling are drawn; a dozen cones that fell long before the top would crowd the chart. */
const LAST_CONES = 5;
/** She looks this long before the expected shut-off, and again at it. Common practice, no source. */
const LOOK_BEFORE_MIN = 45;

/** Gathers what the firing pages show from a prediction. */
export function firingSheet(
  request: LoadRequest,
  programme: Programme,
  foretold: Foretold,
  options: {
    readonly units: TemperatureUnits;
    readonly pricePerKWh: number | null;
    readonly start?: FiringStart | null | undefined;
  },
): FiringSheet {
  const { prediction, assumed, advice } = foretold;
  const { firing } = prediction;
  const shutOff = firing.shutOffMin;
  const fallen = prediction.probe.cones
    .filter((each) => each.downAtMin !== null && !each.cone.endsWith(".5"))
    .slice(-LAST_CONES);
  const at = (minutes: number): number => temperatureAt(firing.minutes, firing.probeC, minutes);
  const ideal = programmeTimes(programme).curve;
  return {
    kiln: request.kiln.name,
    programmeName: programme.name,
    keyIn: keyInTable(programme, options.units),
    chart: {
      programme: { name: "programme", minutes: ideal.minutes, tempC: ideal.tempC },
      probe: { name: "probe", minutes: firing.minutes, tempC: firing.probeC },
      levels: firing.levelC.map((tempC, i) => ({ name: `level ${i + 1}`, minutes: firing.minutes, tempC })),
      power: {
        minutes: firing.minutes,
        powerW: firing.watts,
        fullW: firing.watts.reduce((most, each) => Math.max(most, each), 1),
      },
      cones: fallen.map((each) => ({
        cone: each.cone,
        downAtMin: each.downAtMin as number,
        tempC: at(each.downAtMin as number),
      })),
      untilMin: Math.min(firing.minutes.at(-1) ?? shutOff, shutOff * 1.9),
    },
    hours: prediction.hours,
    kWh: prediction.kWh,
    cost: costText(prediction.kWh, options),
    peakC: prediction.peakC,
    levels: prediction.levels.map((level) => ({
      level: level.level,
      peakC: level.peakC,
      cone: coneText(level),
      offsetC: level.offsetC,
    })),
    coolHours: COOL_STEPS.map(({ tempC, means }) => {
      const after = prediction.coolHours[String(tempC)] ?? null;
      return { tempC, hours: after === null ? null : prediction.hours + after, means };
    }),
    looks: looks(programme, fallen.at(-1)?.downAtMin ?? null, shutOff),
    troubles: prediction.troubles,
    advice,
    notes: [...assumed, ...prediction.warnings],
  };
}

function costText(
  kWh: number,
  { pricePerKWh, start }: { readonly pricePerKWh: number | null; readonly start?: FiringStart | null | undefined },
): string | null {
  if (start) return `${moneyText(start.cost.total, start.currency)} by its tariff`;
  return pricePerKWh === null ? null : `${(pricePerKWh * kWh).toFixed(2)} at ${pricePerKWh} a kWh`;
}

function coneText(level: LevelPrediction): string {
  if (level.coneDown === null) return "no cone down";
  const toward =
    level.next === null ? "" : `, ${Math.round(level.towardNext * 100)} % of the way to cone ${level.next}`;
  return `cone ${level.coneDown} down${toward}`;
}

function looks(
  programme: Programme,
  lastConeMin: number | null,
  shutOffMin: number,
): { minutes: number; what: string }[] {
  const found = [{ minutes: 60, what: "feel that it climbs, and that the vent draws; no smell where you sit." }];
  const before = Math.max(60, shutOffMin - LOOK_BEFORE_MIN);
  found.push({
    minutes: before,
    what: `the cones should still stand, or just begin to lean${programme.cone === undefined ? "" : `; cone ${programme.cone} is the one to watch`}.`,
  });
  if (lastConeMin !== null && lastConeMin < shutOffMin)
    found.push({ minutes: lastConeMin, what: "the last cone it should lay down is going." });
  found.push({ minutes: shutOffMin, what: "see that it has shut off. Stay until it has." });
  return found;
}

function temperatureAt(minutes: Float64Array, tempC: Float64Array, at: number): number {
  for (let i = 1; i < minutes.length; i++) {
    if ((minutes[i] as number) < at) continue;
    const t0 = minutes[i - 1] as number;
    const share = (at - t0) / ((minutes[i] as number) - t0 || 1);
    return (tempC[i - 1] as number) + share * ((tempC[i] as number) - (tempC[i - 1] as number));
  }
  return tempC.at(-1) ?? 0;
}

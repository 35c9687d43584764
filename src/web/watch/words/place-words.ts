import type { Programme } from "../../../firing/programme/programme.ts";
import { formatRate, formatTemperature, type TemperatureUnits } from "../../../measures/temperature.ts";
import type { WatchedPlace } from "../../../studio/api/watch-contract.ts";

/** Where in its programme a firing is: "Climbing 150 °C/h to 1222 °C, segment 3 of 5". */
export function placeWords(place: WatchedPlace, segments: Programme["segments"], units: TemperatureUnits): string {
  const segment = segments[place.segment];
  if (place.doing === "over" || segment === undefined) return "The programme is over: it should cool by itself now";
  const target = formatTemperature(segment.targetC, units);
  const where = segments.length === 1 ? "" : `, segment ${place.segment + 1} of ${segments.length}`;
  if (place.doing === "hold") {
    const left = place.holdLeftMin === null ? "" : `, ${leftWords(place.holdLeftMin)} left`;
    return `Holding at ${target}${left}${where}`;
  }
  if (place.doing === "wait") return `Waiting until it gets to ${target}${where}`;
  const pace = place.askedCPerHour === null ? "as fast as it can" : formatRate(place.askedCPerHour, units);
  return `${place.rising ? "Climbing" : "Cooling"} ${pace} to ${target}${where}`;
}

const leftWords = (minutes: number): string => {
  const whole = Math.max(1, Math.round(minutes));
  return whole < 60 ? `${whole} min` : `${Math.floor(whole / 60)} h ${String(whole % 60).padStart(2, "0")} min`;
};

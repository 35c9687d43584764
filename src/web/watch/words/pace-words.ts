import type { TemperatureUnits } from "../../../measures/temperature.ts";
import type { WatchedPlace } from "../../../studio/api/watch-contract.ts";
import { degreesWords } from "./temperature-words.ts";

/** As near as this to its programme a kiln is with it, °C: a probe's own error and a controller's usual slack. */
const WITH_IT_C = 4;
/** From here on it is worth a look, °C: as much as the watch itself takes for being behind. */
const FAR_C = 15;

export interface PaceWords {
  readonly kind: "keeps" | "mind";
  readonly words: string;
}

/** How far the kiln is behind its programme or ahead of it; null where nothing is asked of it. */
export function paceWords(place: WatchedPlace, units: TemperatureUnits): PaceWords | null {
  const { doing, behindC, askedCPerHour, rising } = place;
  if (doing === "over" || (doing === "ramp" && askedCPerHour === null)) return null;
  if (doing === "wait") return { kind: "mind", words: `${degreesWords(behindC, units)} short of it` };
  if (Math.abs(behindC) <= WITH_IT_C) return { kind: "keeps", words: "With its programme" };
  const kind = Math.abs(behindC) < FAR_C ? "keeps" : "mind";
  if (doing === "hold") {
    const under = rising ? behindC > 0 : behindC < 0;
    return { kind, words: `${degreesWords(behindC, units)} ${under ? "under" : "over"} its hold` };
  }
  const minutes = Math.round((Math.abs(behindC) / (askedCPerHour as number)) * 60);
  const inTime = minutes < 1 ? "" : `, about ${minutes} min`;
  return { kind, words: `${degreesWords(behindC, units)} ${behindC > 0 ? "behind" : "ahead"}${inTime}` };
}

import { sameValue } from "../history/same-value.ts";
import type { StudioSettings } from "../records/studio-settings.ts";
import { listed } from "./in-words.ts";

interface Setting {
  /** "Changed …" */
  readonly called: string;
  /** Where what it is set to can be said in a word or two. */
  readonly setTo?: (settings: StudioSettings) => string | null;
}

const SETTINGS: Readonly<Record<keyof StudioSettings, Setting>> = {
  studioName: {
    called: "the studio's name",
    setTo: ({ studioName: name }) => (name ? `Called the studio ${name}` : null),
  },
  lengthUnits: {
    called: "the units of length",
    setTo: ({ lengthUnits }) => `Set lengths to ${lengthUnits === "metric" ? "millimetres and centimetres" : "inches"}`,
  },
  temperatureUnits: {
    called: "the units of temperature",
    setTo: ({ temperatureUnits }) => `Set temperatures to °${temperatureUnits}`,
  },
  paper: { called: "the paper", setTo: ({ paper }) => `Set the paper to ${paper === "a4" ? "A4" : "letter"}` },
  currency: { called: "the currency", setTo: ({ currency }) => (currency ? `Set the currency to ${currency}` : null) },
  tariff: { called: "what electricity costs" },
  notices: { called: "where notices go" },
  elementSetPrice: { called: "what a set of elements costs" },
  elementLifeFirings: { called: "how long a set of elements lasts" },
  shelfPrice: { called: "what a shelf costs" },
  shelfLifeFirings: { called: "how long a shelf lasts" },
  guestFee: { called: "what guests pay" },
};

/** What became of the settings, in a sentence: "Set lengths to inches". */
export function settingsInWords(before: StudioSettings, after: StudioSettings): string {
  const changed = (Object.keys(SETTINGS) as (keyof StudioSettings)[]).filter(
    (name) => !sameValue(before[name] ?? null, after[name] ?? null),
  );
  const [only] = changed;
  if (only === undefined) return "Left the studio's settings as they were";
  const said = changed.length === 1 ? (SETTINGS[only].setTo?.(after) ?? null) : null;
  return said ?? `Changed ${listed(changed.map((name) => SETTINGS[name].called))}`;
}

import { firingMoney } from "../studio/firings/firing-money.ts";
import { type FiringAgainst, howFarOff, predictedAgainstActual } from "../studio/firings/predicted-against-actual.ts";
import type { FiringRecord } from "../studio/records/firing-record.ts";
import type { ReadingSeries } from "../studio/records/reading.ts";
import type { StudioStore } from "../studio/records/store.ts";
import { type Command, type ExitCode, printJson, printLines } from "./command.ts";
import { hoursText } from "./hours-text.ts";
import { DATA_OPTION_HELP, withStudio } from "./studio-folder.ts";

/** A firing as it is listed; what is not known is null. */
interface ListedFiring extends Pick<FiringRecord, "id" | "name" | "state" | "startedAt"> {
  readonly kiln: string;
  readonly plannedStartAt: string | null;
  /** Foretold against measured; null where it has not finished. */
  readonly against: FiringAgainst | null;
  readonly cost: number | null;
}

/** `wareboard firings`: the studio's firings, as they were foretold and as they went. */
export const firings: Command = {
  name: "firings",
  words: [],
  summary: "List the studio's firings: as they were foretold, as they went, what they cost.",
  options: { data: { type: "string" } },
  optionHelp: { data: DATA_OPTION_HELP },
  examples: ["wareboard firings", "wareboard firings --data ~/pots --json"],
  run: async (call): Promise<ExitCode> => {
    const { listed, currency } = await withStudio(call, listOf);
    const finished = listed.flatMap(({ against }) => (against === null ? [] : [against]));
    const [described, learned] = [false, true].map((is) =>
      howFarOff(finished.filter(({ calibrated }) => calibrated === is)),
    );
    if (call.json) printJson({ firings: listed, currency, asDescribed: described, asLearned: learned });
    else if (listed.length === 0) printLines(["No firing is kept yet."]);
    else
      printLines([
        ...listed.flatMap((each) => linesOf(each, currency)),
        ...offLines(described, "as described"),
        ...offLines(learned, "as learned"),
      ]);
    return 0;
  },
};

const listOf = (store: StudioStore): Promise<{ listed: ListedFiring[]; currency: string }> =>
  store.read(async (records) => {
    const all = await records.firings.list();
    const kilns = new Map((await records.kilns.list()).map(({ id, kiln }) => [id, kiln.name]));
    const loads = new Map((await records.loads.list()).map((load) => [load.id, load]));
    const settings = await records.settings.get();
    const readings = new Map<string, ReadingSeries[]>();
    for (const { id } of all) readings.set(id, await records.readings.of(id));
    const against = new Map(predictedAgainstActual(all, readings).map((each) => [each.firingId, each]));
    const listed = all.map((firing): ListedFiring => {
      const { id, name, state, startedAt, plannedStartAt = null, kilnId, loadId } = firing;
      const money = firingMoney(firing, loadId === null ? null : (loads.get(loadId) ?? null), settings);
      return {
        ...{ id, name, state, startedAt, plannedStartAt, kiln: kilns.get(kilnId) ?? "" },
        ...{ against: against.get(id) ?? null, cost: money.total },
      };
    });
    const at = ({ startedAt, plannedStartAt }: ListedFiring): string => startedAt ?? plannedStartAt ?? "~";
    return { listed: listed.sort((a, b) => (at(a) < at(b) ? -1 : 1)), currency: settings.currency };
  });

function linesOf(
  { name, kiln, state, startedAt, plannedStartAt, against, cost }: ListedFiring,
  currency: string,
): string[] {
  const when = startedAt ?? plannedStartAt;
  const day = when === null ? "no day yet        " : `${when.slice(0, 10)} ${when.slice(11, 16)}Z`;
  const price = cost === null ? "" : `, ${cost.toFixed(2)}${currency === "" ? "" : ` ${currency}`}`;
  const first = `${day}  ${name}, in ${kiln}: ${state}${price}`;
  if (against === null) return [first];
  const { hours, kWh, coolHours, shelfRmsC } = against;
  const pair = (label: string, of: typeof hours, text: (value: number) => string): string[] =>
    of.actual === null
      ? []
      : [`${label} ${text(of.actual)}${of.foretold === null ? "" : ` (foretold ${text(of.foretold)})`}`];
  const facts = [
    ...pair("fired", hours, hoursText),
    ...pair("drew", kWh, (value) => `${value.toFixed(1)} kWh`),
    ...pair("cool after", coolHours, hoursText),
    ...(shelfRmsC === null ? [] : [`shelves off by ${shelfRmsC.toFixed(0)} °C`]),
  ];
  return facts.length === 0 ? [first] : [first, `    ${facts.join("; ")}`];
}

function offLines(off: ReturnType<typeof howFarOff> | undefined, known: string): string[] {
  if (off === undefined || off.firings === 0) return [];
  const told = [
    ...(off.kWhPercent === null ? [] : [`energy by ${off.kWhPercent.toFixed(1)} %`]),
    ...(off.shelfC === null ? [] : [`shelves by ${off.shelfC.toFixed(1)} °C`]),
    ...(off.coolPercent === null ? [] : [`cooling by ${off.coolPercent.toFixed(1)} %`]),
  ];
  if (told.length === 0) return [];
  return [
    "",
    `Foretold from the kiln ${known}, ${off.firings} ${off.firings === 1 ? "firing" : "firings"} were off: ${told.join(", ")}.`,
  ];
}

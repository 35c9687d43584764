import { type MonthCost, monthCosts } from "../studio/firings/month-costs.ts";
import { type Command, type ExitCode, printJson, printLines } from "./command.ts";
import { DATA_OPTION_HELP, withStudio } from "./studio-folder.ts";

/** `wareboard costs`: what firing cost, month by month. */
export const costs: Command = {
  name: "costs",
  words: [],
  summary: "What the studio's firings cost, month by month: energy, element and shelf wear.",
  options: { data: { type: "string" } },
  optionHelp: { data: DATA_OPTION_HELP },
  examples: ["wareboard costs", "wareboard costs --data ~/pots --json"],
  run: async (call): Promise<ExitCode> => {
    const { months, currency } = await withStudio(call, (store) =>
      store.read(async (records) => {
        const settings = await records.settings.get();
        const all = monthCosts(await records.firings.list(), await records.loads.list(), settings);
        return { months: all, currency: settings.currency };
      }),
    );
    if (call.json) printJson({ months, currency });
    else if (months.length === 0) printLines(["No firing has started yet."]);
    else printLines(months.flatMap((month) => linesOf(month, currency)));
    return 0;
  },
};

function linesOf(month: MonthCost, currency: string): string[] {
  const money = (amount: number): string => `${amount.toFixed(2)}${currency === "" ? "" : ` ${currency}`}`;
  const firings = month.firings === 1 ? "1 firing" : `${month.firings} firings`;
  const parts = `energy ${money(month.energy)}, elements ${money(month.elements)}, shelves ${money(month.shelves)}`;
  const line = `${month.month}  ${firings}, ${month.kWh.toFixed(1)} kWh: ${money(month.total)} (${parts})`;
  if (month.unknown === 0) return [line];
  return [line, `         of ${month.unknown} the energy's price is not known: not in the sum`];
}

import { type Cause, causesOf } from "../studio/firings/causes.ts";
import { pieceFacts } from "../studio/firings/piece-facts.ts";
import type { FiringRecord } from "../studio/records/firing-record.ts";
import type { StudioRecords } from "../studio/records/store.ts";
import { type Command, type ExitCode, printJson, printLines } from "./command.ts";
import { keptFiring } from "./kept-firing.ts";
import { DATA_OPTION_HELP, withStudio } from "./studio-folder.ts";

/** A piece that came out with a fault, and what may have caused it. */
interface Faulty {
  readonly ware: string;
  readonly level: number;
  readonly placement: number;
  readonly fault: string;
  readonly causes: readonly Cause[];
}

/** `wareboard causes`: what may have caused the faults that were found in a firing. */
export const causes: Command = {
  name: "causes",
  words: ["FIRING"],
  summary: "What may have caused the faults found in a firing, piece by piece, each with its reasoning and source.",
  options: { data: { type: "string" } },
  optionHelp: { data: DATA_OPTION_HELP },
  examples: ["wareboard causes f1", 'wareboard causes "glaze, cone 6" --json'],
  run: async (call): Promise<ExitCode> => {
    const [wanted] = call.words;
    const pieces = await withStudio(call, (store) =>
      store.read(async (records) => faultyPieces(records, await keptFiring(records, wanted))),
    );
    if (call.json) printJson({ pieces });
    else if (pieces.length === 0) printLines(["No fault was found in it."]);
    else printLines(pieces.flatMap(linesOf));
    return 0;
  },
};

async function faultyPieces(records: StudioRecords, firing: FiringRecord): Promise<Faulty[]> {
  const load = firing.loadId === null ? null : await records.loads.get(firing.loadId);
  const readings = await records.readings.of(firing.id);
  const found: Faulty[] = [];
  for (const { level, placement, faults } of firing.outcomes ?? []) {
    const ware = load?.plan?.levels[level]?.placements[placement]?.ware ?? "a piece";
    const wareId = load?.sources.find((each) => each.ware === ware)?.wareId;
    const batch = wareId === undefined ? null : await records.ware.get(wareId);
    const glaze = batch?.glazeId ? await records.glazes.get(batch.glazeId) : null;
    const clay = batch?.clayBodyId ? await records.clayBodies.get(batch.clayBodyId) : null;
    const facts = pieceFacts({ firing, load, readings, glaze, clay }, { level, placement });
    for (const fault of faults) found.push({ ware, level, placement, fault, causes: causesOf(fault, facts) });
  }
  return found;
}

const linesOf = ({ ware, level, fault, causes: all }: Faulty): string[] => [
  `${ware}, level ${level + 1}: ${fault}`,
  ...all
    .filter(({ standing }) => standing !== "unlikely")
    .flatMap(({ cause, because, tryNext, source, standing }) => [
      `    ${standing === "shown" ? "signs of" : "perhaps"}: ${cause}. ${because}`,
      `        ${tryNext} (${source})`,
    ]),
];

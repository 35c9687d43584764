import { randomUUID } from "node:crypto";
import { BadInput, shown } from "../measures/bad-input.ts";
import { doCommand } from "../studio/commands/do-command.ts";
import { calibrationChanges, type ParameterChange, whatToMeasureNext } from "../studio/firings/calibration-change.ts";
import { newestCalibration } from "../studio/firings/newest-calibration.ts";
import type { CalibrationRecord } from "../studio/records/calibration-record.ts";
import type { FiringRecord } from "../studio/records/firing-record.ts";
import type { KilnRecord } from "../studio/records/kiln-record.ts";
import type { StudioRecords, StudioStore } from "../studio/records/store.ts";
import { type CommandCall, type ExitCode, printJson, printLines } from "./command.ts";
import { withStudio } from "./studio-folder.ts";

/** What one firing taught, or why it taught nothing. */
interface Taught {
  readonly firingId: string;
  readonly firing: string;
  readonly calibration: CalibrationRecord | null;
  readonly changes: readonly ParameterChange[];
  readonly next: ReturnType<typeof whatToMeasureNext>;
  readonly because: string | null;
}

/**
 * Learns from each of a kiln's finished firings that nothing was learned from yet, the oldest first, as she would after
 * each. Exit 1 where none of them teaches anything.
 */
export async function learnFromStudio(call: CommandCall): Promise<ExitCode> {
  const { kiln: name } = call.options;
  const taught = await withStudio(call, async (store) => {
    const kiln = await store.read((records) => kilnNamed(records, name));
    const all: Taught[] = [];
    for (const firing of await store.read((records) => fresh(records, kiln.id))) {
      all.push(await learnFrom(store, kiln.id, firing));
    }
    return all;
  });
  if (call.json) printJson({ firings: taught });
  else if (taught.length === 0)
    printLines(["Nothing new to learn: every finished firing of this kiln has taught already."]);
  else printLines(taught.flatMap(linesOf));
  return taught.some(({ calibration }) => calibration !== null) ? 0 : 1;
}

async function kilnNamed(records: StudioRecords, name: string | boolean | undefined): Promise<KilnRecord> {
  const kilns = await records.kilns.list();
  const found = kilns.find(({ kiln, id }) => kiln.name === name || id === name);
  if (found) return found;
  const expected = kilns.length === 0 ? "a studio with a kiln" : kilns.map(({ kiln }) => shown(kiln.name)).join(" or ");
  throw new BadInput({
    code: "unknown-kiln",
    path: "--kiln",
    found: name === undefined ? "nothing" : shown(name),
    expected,
  });
}

async function fresh(records: StudioRecords, kilnId: string): Promise<FiringRecord[]> {
  const known = new Set((await records.calibrations.list({ kilnId })).flatMap(({ firingIds }) => firingIds));
  const over = (await records.firings.list({ kilnId })).filter(
    ({ id, state }) => state === "finished" && !known.has(id),
  );
  return over.sort((a, b) => ((a.startedAt ?? "") < (b.startedAt ?? "") ? -1 : 1));
}

async function learnFrom(
  store: StudioStore,
  kilnId: string,
  { id: firingId, name: firing }: FiringRecord,
): Promise<Taught> {
  const calibrations = (): Promise<CalibrationRecord[]> =>
    store.read((records) => records.calibrations.list({ kilnId }));
  const before = newestCalibration(await calibrations(), kilnId);
  const id = randomUUID();
  try {
    const context = { key: randomUUID(), now: new Date().toISOString(), newId: randomUUID };
    await doCommand(store, "learn-from", { id, kilnId, firingIds: [firingId] }, context);
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    return { firingId, firing, calibration: null, changes: [], next: [], because: error.message };
  }
  const calibration = (await calibrations()).find((each) => each.id === id) as CalibrationRecord;
  const changes = calibrationChanges(before, calibration);
  return { firingId, firing, calibration, changes, next: whatToMeasureNext(calibration), because: null };
}

function linesOf({ firing, changes, next, because }: Taught): string[] {
  if (because !== null) return [`${firing} teaches nothing: ${because}`];
  return [
    `${firing}:`,
    ...changes.map(({ text, surprise }) => `  ${text}${surprise > 2 ? " Further than was to be expected." : ""}`),
    ...next.slice(0, 1).map(({ how, surerBy }) => `  Would teach most (${Math.round(100 * surerBy)} % surer): ${how}`),
  ];
}

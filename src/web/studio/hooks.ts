import { useQueries, useQuery } from "@tanstack/react-query";
import { useMemo } from "react";
import type { CommandAnswer, HistoryEntry, StudioCard } from "../../studio/api/contract.ts";
import type { RecordOf } from "../../studio/records/all-kinds.ts";
import type { CalibrationRecord } from "../../studio/records/calibration-record.ts";
import type { ClayBodyRecord, GlazeRecord } from "../../studio/records/clay-and-glaze-records.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { KilnRecord } from "../../studio/records/kiln-record.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import type { LoggerRecord } from "../../studio/records/logger-record.ts";
import type { PhotoRecord } from "../../studio/records/note-and-photo-records.ts";
import type { ProgrammeRecord } from "../../studio/records/programme-record.ts";
import type { KindName } from "../../studio/records/record-kind.ts";
import type { StudioSettings } from "../../studio/records/studio-settings.ts";
import type { UpkeepRecord } from "../../studio/records/upkeep-record.ts";
import type { WareRecord } from "../../studio/records/ware-record.ts";
import type { StudioCache } from "./cache.ts";
import { giveCommand } from "./give-command.ts";
import { read } from "./read.ts";
import { type UndoRedo, useUndoRedo } from "./undo.ts";

export { StudioAway, StudioRefusal } from "./client.ts";
export { useConnection, useWaitingCount } from "./connection.ts";
export { newId } from "./new-id.ts";
export type { UndoRedo } from "./undo.ts";

// What the screens know of the studio. Lists are undefined while they are read for the first time.

const useRead = <Answer>(path: string): Answer | undefined =>
  useQuery({ queryKey: [path], queryFn: () => read<Answer>(path) }).data;

const useKind = <Kind extends KindName>(kind: Kind): readonly RecordOf[Kind][] | undefined => useRead(kind);

const useOne = <Kind extends KindName>(kind: Kind, id: string): RecordOf[Kind] | null | undefined => {
  const list = useKind(kind);
  return useMemo(() => list && (list.find((record) => record.id === id) ?? null), [list, id]);
};

/** Every batch of ware; undefined while it is read. */
export const useWare = (): readonly WareRecord[] | undefined => useKind("ware");
export const useKilns = (): readonly KilnRecord[] | undefined => useKind("kilns");
/** One kiln; undefined while it is read, null where there is none of that id. */
export const useKiln = (id: string): KilnRecord | null | undefined => useOne("kilns", id);
export const useClayBodies = (): readonly ClayBodyRecord[] | undefined => useKind("clayBodies");
export const useGlazes = (): readonly GlazeRecord[] | undefined => useKind("glazes");
export const useLoads = (): readonly LoadRecord[] | undefined => useKind("loads");
/** One load; undefined while it is read, null where there is none of that id. */
export const useLoad = (id: string): LoadRecord | null | undefined => useOne("loads", id);

export const useFirings = (): readonly FiringRecord[] | undefined => useKind("firings");
/** One firing; undefined while it is read, null where there is none of that id. */
export const useFiring = (id: string): FiringRecord | null | undefined => useOne("firings", id);
/** Her own programmes. */
export const useProgrammes = (): readonly ProgrammeRecord[] | undefined => useKind("programmes");
/** What firings have taught of the kilns. */
export const useCalibrations = (): readonly CalibrationRecord[] | undefined => useKind("calibrations");
export const useUpkeep = (): readonly UpkeepRecord[] | undefined => useKind("upkeep");
export const useLoggers = (): readonly LoggerRecord[] | undefined => useKind("loggers");

/** The photos of one record, the oldest first; undefined while they are read. */
export function usePhotos(
  aboutKind: NonNullable<PhotoRecord["aboutKind"]>,
  aboutId: string,
): readonly PhotoRecord[] | undefined {
  const photos = useKind("photos");
  return useMemo(
    () => photos?.filter((photo) => photo.aboutKind === aboutKind && photo.aboutId === aboutId),
    [photos, aboutKind, aboutId],
  );
}

/** As the studio begins; stands in until its own are read. (The domain's constant would bring its schemas along.) */
const UNTIL_READ: StudioSettings = {
  studioName: "",
  lengthUnits: "metric",
  temperatureUnits: "C",
  paper: "a4",
  currency: "",
};

/** What holds for the whole studio. */
export const useSettings = (): StudioSettings => useRead<StudioSettings>("settings") ?? UNTIL_READ;

/** The studio at a glance; undefined while it is read. */
export const useStudioCard = (): StudioCard | undefined => useRead("studio");

/** What was done in a scope, the newest first. Undefined while it is read or the studio is away. */
export const useHistory = (scope: string): readonly HistoryEntry[] | undefined => useQuery(historyOf(scope)).data;

const historyOf = (scope: string) => ({
  queryKey: ["history", scope],
  queryFn: () => read<HistoryEntry[]>(`history?scope=${encodeURIComponent(scope)}`, false),
});

/** Every scope but those of single loads. */
const SCOPES = ["ware", "kilns", "materials", "loads", "firings", "notes", "photos", "settings"];
const LOADS_LOOKED_AT = 8;

/** What was done anywhere, the newest first; in single loads, only those changed last. Undefined as above. */
export function useWholeHistory(): readonly HistoryEntry[] | undefined {
  const loads = useLoads() ?? [];
  const lately = [...loads].sort((a, b) => (a.changedAt < b.changedAt ? 1 : -1)).slice(0, LOADS_LOOKED_AT);
  const lists = useQueries({ queries: [...SCOPES, ...lately.map(({ id }) => `load:${id}`)].map(historyOf) });
  if (lists.some(({ data }) => data === undefined)) return undefined;
  return lists.flatMap(({ data }) => data ?? []).sort((a, b) => (a.at < b.at ? 1 : -1));
}

export type GiveCommand = (
  name: string,
  input: object,
  /** Shows the change at once, before the studio has answered; put back where she takes it back or it is refused. */
  show?: (cache: StudioCache) => void,
) => Promise<CommandAnswer>;

/**
 * Gives the studio a command. It is kept on this device first and sent in its turn, however long the studio is away.
 *
 * @returns a function whose promise comes back when the studio has done it; it rejects with `StudioRefusal` where it says
 *   no. A refusal nobody catches is told to her in words.
 */
export const useCommand = (): GiveCommand => giveCommand;

/** Undo and redo within one scope: "ware", "kilns", "materials", "settings", "loads" or "load:ID". */
export function useUndo(scope: string): UndoRedo {
  const history = useHistory(scope);
  return useUndoRedo(scope, history);
}

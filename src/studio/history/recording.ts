import type { Changed } from "../api/contract.ts";
import type { Fields, RecordChange, SettingsChange } from "../records/history.ts";
import type { PhotoRecord } from "../records/note-and-photo-records.ts";
import type { ReadingSeries } from "../records/reading.ts";
import { KIND_NAMES, type KindName } from "../records/record-kind.ts";
import type { PhotoSet, RecordSet, StudioRecords } from "../records/store.ts";
import type { StudioSettings } from "../records/studio-settings.ts";
import { changeOf } from "./record-change.ts";

type Kept = Fields & { readonly id: string };
type AnySet = Omit<RecordSet<Kept>, "add">;

/** What a command did to the studio's records, seen from beside it. */
export interface Recording {
  /** The records as the command is to be given them. */
  readonly records: StudioRecords;
  /** Each record that is otherwise than it was, in the order in which they were first touched. */
  readonly changes: () => RecordChange[];
  /** Each record touched, as it is now. */
  readonly changed: () => Changed;
  readonly settings: () => SettingsChange | null;
  /** Pictures of photos that were taken out. */
  readonly pictures: ReadonlyMap<string, Uint8Array>;
  /** Temperatures of firings that were taken out. */
  readonly readings: readonly ReadingSeries[];
}

/** Looks over the shoulder of whatever changes the records of one transaction. */
export function recording(records: StudioRecords): Recording {
  const touched = new Map<string, { kind: KindName; id: string; before: Kept | null; after: Kept | null }>();
  const pictures = new Map<string, Uint8Array>();
  const readings: ReadingSeries[] = [];
  let settings: SettingsChange | null = null;

  const note = (kind: KindName, id: string, before: Kept | null, after: Kept | null): void => {
    const key = `${kind} ${id}`;
    const first = touched.get(key);
    touched.set(key, { kind, id, before: first ? first.before : before, after });
  };

  const watched = (kind: KindName): AnySet => {
    const set = records[kind] as unknown as AnySet;
    return {
      get: (id) => set.get(id),
      list: (where) => set.list(where),
      count: () => set.count(),
      change: async (record) => {
        const before = await set.get(record.id);
        const after = await set.change(record);
        note(kind, record.id, before, after);
        return after;
      },
      remove: async (id) => {
        const before = await set.get(id);
        await set.remove(id);
        note(kind, id, before, null);
      },
    };
  };
  const listed = <Kind extends Exclude<KindName, "photos">>(kind: Kind): StudioRecords[Kind] => {
    const set = records[kind] as unknown as RecordSet<Kept>;
    const add = async (...added: readonly Kept[]): Promise<void> => {
      await set.add(...added);
      for (const record of added) note(kind, record.id, null, record);
    };
    return { ...watched(kind), add } as unknown as StudioRecords[Kind];
  };
  const firings = {
    ...listed("firings"),
    remove: async (id: string) => {
      const before = await records.firings.get(id);
      const taken = await records.readings.of(id);
      await records.firings.remove(id);
      note("firings", id, before, null);
      readings.push(...taken);
    },
  };
  const photos = {
    ...watched("photos"),
    picture: (id: string) => records.photos.picture(id),
    add: async (photo: PhotoRecord, picture: Uint8Array) => {
      await records.photos.add(photo, picture);
      note("photos", photo.id, null, photo);
    },
    remove: async (id: string) => {
      const before = await records.photos.get(id);
      const picture = await records.photos.picture(id);
      await records.photos.remove(id);
      note("photos", id, before, null);
      if (picture !== null) pictures.set(id, picture);
    },
  } as unknown as PhotoSet;

  return {
    records: {
      kilns: listed("kilns"),
      clayBodies: listed("clayBodies"),
      glazes: listed("glazes"),
      ware: listed("ware"),
      loads: listed("loads"),
      firings,
      notes: listed("notes"),
      photos,
      programmes: listed("programmes"),
      calibrations: listed("calibrations"),
      upkeep: listed("upkeep"),
      loggers: listed("loggers"),
      // Temperatures come from outside, by the minute, and are no command's.
      readings: {
        of: (id, since) => records.readings.of(id, since),
        within: (id, span) => records.readings.within(id, span),
        rolledUp: (id, period, span) => records.readings.rolledUp(id, period, span),
        add: notUndoable,
        remove: notUndoable,
      },
      settings: {
        get: () => records.settings.get(),
        arePut: () => records.settings.arePut(),
        put: async (after: StudioSettings) => {
          const before: StudioSettings = settings?.before ?? (await records.settings.get());
          await records.settings.put(after);
          settings = { before, after };
        },
      },
      history: records.history,
      isEmpty: () => records.isEmpty(),
      clear: notUndoable,
    },
    changes: () =>
      [...touched.values()].flatMap(({ kind, id, before, after }) => changeOf(kind, id, before, after) ?? []),
    changed: () => {
      const changed: Partial<Record<KindName, Record<string, unknown>>> = {};
      for (const kind of KIND_NAMES) {
        const ofKind = [...touched.values()].filter((each) => each.kind === kind);
        if (ofKind.length > 0) changed[kind] = Object.fromEntries(ofKind.map(({ id, after }) => [id, after]));
      }
      return changed as Changed;
    },
    settings: () => settings,
    pictures,
    readings,
  };
}

const notUndoable = async (): Promise<never> => {
  throw new Error("No command may do this: it could not be undone.");
};

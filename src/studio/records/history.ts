import type { ReadingSeries } from "./reading.ts";
import type { KindName } from "./record-kind.ts";
import type { StudioSettings } from "./studio-settings.ts";

/** Fields of a record, by name. */
export type Fields = Readonly<Record<string, unknown>>;

/**
 * What became of one record. New: `before` is null and `after` the whole record; taken out: the other way round;
 * changed: both hold only the fields that differ.
 */
export interface RecordChange {
  readonly kind: KindName;
  readonly id: string;
  readonly before: Fields | null;
  readonly after: Fields | null;
}

export interface SettingsChange {
  readonly before: StudioSettings;
  readonly after: StudioSettings;
}

/**
 * How an entry stands: done; undone, and waiting to be done again; left behind, because something else was done after
 * it was undone; or it never changed anything. The last two are kept only so that a command sent twice is done once.
 */
export const HISTORY_STANDINGS = ["done", "undone", "left behind", "nothing"] as const;
export type HistoryStanding = (typeof HISTORY_STANDINGS)[number];

/** One thing done, without what it changed. */
export interface HistoryCard {
  /** The key its command was sent with. */
  readonly id: string;
  readonly at: string;
  readonly scope: string;
  readonly command: string;
  readonly summary: string;
  readonly standing: HistoryStanding;
}

/** One thing done, and what it changed: enough to take it back and to do it again. */
export interface KeptEntry extends HistoryCard {
  readonly changes: readonly RecordChange[];
  readonly settings: SettingsChange | null;
}

// What a studio keeps of its history. A drag in the load editor is an entry of a few kilobytes, a photo that was taken
// out some megabytes, hence fewer of those.
export const MOST_ENTRIES_A_SCOPE = 500;
export const MOST_ENTRIES = 5000;
export const MOST_ENTRIES_WITH_PICTURES = 50;

/**
 * What was done, the newest last. It is no part of an archive: it says how the studio came to be as it is, and the
 * studio is kept whole without it. `StudioRecords.clear` takes it out.
 */
export interface HistorySet {
  get(id: string): Promise<KeptEntry | null>;
  /** The entries of a scope that are done or undone, newest first. */
  list(scope: string): Promise<HistoryCard[]>;
  /** Writes an entry down as the newest, and forgets the oldest past what is kept. */
  add(entry: KeptEntry): Promise<void>;
  /** Puts an entry in place of the one of its id. */
  change(entry: KeptEntry): Promise<void>;
  /** Keeps with an entry a picture that its command, or the undoing of it, took out. */
  keepPicture(entryId: string, photoId: string, picture: Uint8Array): Promise<void>;
  picture(entryId: string, photoId: string): Promise<Uint8Array | null>;
  /** Keeps with an entry the temperatures of a firing that its command, or the undoing of it, took out. */
  keepReadings(entryId: string, series: ReadingSeries): Promise<void>;
  readings(entryId: string, firingId: string): Promise<ReadingSeries[]>;
}

/** What holds for the whole studio. */
export interface SettingsPlace {
  /** `FIRST_SETTINGS` until others are put. */
  get(): Promise<StudioSettings>;
  /** Whether any were put: then she has begun, even where nothing else is kept yet. */
  arePut(): Promise<boolean>;
  put(settings: StudioSettings): Promise<void>;
}

import type { RecordOf } from "./all-kinds.ts";
import type { HistorySet, SettingsPlace } from "./history.ts";
import type { PhotoRecord } from "./note-and-photo-records.ts";
import type { Reading, ReadingSeries } from "./reading.ts";
import type { KindName } from "./record-kind.ts";
import type { RollUpPeriod, RollUpSeries } from "./roll-up.ts";

type Plain = string | number | boolean | null;

/** Fields of a record and the values they must have. Only fields that hold one plain value can be asked for. */
export type Where<R> = { readonly [Field in keyof R as R[Field] extends Plain ? Field : never]?: R[Field] };

/**
 * The records of one kind. Every method checks what it is given and what it finds; a fault is a `BadInput` whose path
 * names the record, such as `ware "w1".dueOn`, and whose code is one of:
 * `id-taken` · `unknown-record` · `missing-reference` (it refers to a record that is not there) · `still-in-use`
 * (others refer to it) · `changed-since` (another change came first) · `corrupt-row`; or what `checkRecord` found.
 */
export interface RecordSet<R> {
  /** The record, or null where there is none of that id. */
  get(id: string): Promise<R | null>;
  /** All that match, the oldest first; of the same age by id. */
  list(where?: Where<R>): Promise<R[]>;
  /** How many there are. */
  count(): Promise<number>;
  /** Keeps new records, all or none. */
  add(...records: readonly R[]): Promise<void>;
  /**
   * Keeps a record in place of the one of its id. A load must carry the version it was read with, and comes back with
   * the next one; anything else comes back as it is.
   */
  change(record: R): Promise<R>;
  /** Takes a record out. Its notes and photos stay. */
  remove(id: string): Promise<void>;
}

/** Photos: a card each in the list, and the picture asked for by itself. */
export interface PhotoSet extends Omit<RecordSet<PhotoRecord>, "add"> {
  add(photo: PhotoRecord, picture: Uint8Array): Promise<void>;
  /** The picture's bytes, or null where there is no such photo. */
  picture(id: string): Promise<Uint8Array | null>;
}

/** From a moment, to before another, and at most so many of each probe: the earliest. All where left out. */
export interface ReadingSpan {
  readonly from?: string | undefined;
  readonly to?: string | undefined;
  readonly most?: number | undefined;
}

/** Temperatures by firing and probe. They go when their firing is taken out. */
export interface ReadingSet {
  /** Keeps readings. One at a moment already read replaces it, so that sending them twice does no harm. */
  add(firingId: string, probe: string, readings: readonly Reading[]): Promise<void>;
  /** Each probe's readings in order of time; probes by name. `since` leaves out those before that moment. */
  of(firingId: string, since?: string): Promise<ReadingSeries[]>;
  /** The same, within a span. */
  within(firingId: string, span: ReadingSpan): Promise<ReadingSeries[]>;
  /** Readings gathered by minute or hour; the one a span begins in is there whole. */
  rolledUp(firingId: string, period: RollUpPeriod, span?: ReadingSpan): Promise<RollUpSeries[]>;
  /** Takes out all readings of a firing. */
  remove(firingId: string): Promise<void>;
}

/** Everything the studio keeps, seen inside one transaction. */
export interface StudioRecords extends Omit<{ readonly [Kind in KindName]: RecordSet<RecordOf[Kind]> }, "photos"> {
  readonly photos: PhotoSet;
  readonly readings: ReadingSet;
  readonly settings: SettingsPlace;
  readonly history: HistorySet;
  /** Whether there is no record of any kind. Settings may have been put all the same. */
  isEmpty(): Promise<boolean>;
  /** Takes everything out, settings and history too. */
  clear(): Promise<void>;
}

/**
 * The studio's store. One writer at a time, in this process or any other; a reader sees the studio as it was at one
 * moment.
 */
export interface StudioStore {
  /** Where it is kept, for messages; no password in it. */
  readonly place: string;
  /** Looks, without changing anything. */
  read<Result>(look: (records: StudioRecords) => Promise<Result>): Promise<Result>;
  /**
   * Changes, all or nothing: when `change` throws, nothing has happened; when this returns, it is on the disk. Await
   * every call inside, do nothing slow there, and never start another `read` or `write` of the same store inside.
   */
  write<Result>(change: (records: StudioRecords) => Promise<Result>): Promise<Result>;
  /** Lets go of the file or server. */
  close(): Promise<void>;
}

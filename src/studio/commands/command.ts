import type { Static, TObject } from "typebox";
import type { StudioRecords } from "../records/store.ts";

/** What a command is told besides its input. */
export interface CommandContext {
  /** The moment, ISO 8601 in UTC to the millisecond. */
  readonly now: string;
  /** A new id, never used before. */
  readonly newId: () => string;
}

/**
 * One thing she can do to her studio. It changes records and nothing else; what it changed is written down beside it, so
 * that every command can be undone without saying how.
 */
export interface StudioCommand<Schema extends TObject = TObject> {
  /** `add-ware` */
  readonly name: string;
  readonly schema: Schema;
  /**
   * What it belongs to, for undo: "ware", "kilns", "materials", "settings", "loads", "load:ID", "firings", "firing:ID",
   * "notes" or "photos".
   */
  readonly scope: (input: Static<Schema>) => string;
  /**
   * For what takes long to reckon: gathers what it needs and gives the reckoning, which runs outside any transaction.
   * Whatever it finds is given to `run`, which must not take for granted that the studio has not changed meanwhile.
   */
  readonly beforehand?: (records: StudioRecords, input: Static<Schema>) => Promise<() => unknown>;
  /**
   * Does it, inside one transaction.
   *
   * @param found what `beforehand` reckoned
   * @returns what was done, in words: "Added 6 espresso cups"
   * @throws BadInput where it cannot be done; then nothing has happened
   */
  readonly run: (
    records: StudioRecords,
    input: Static<Schema>,
    context: CommandContext,
    found?: unknown,
  ) => Promise<string>;
}

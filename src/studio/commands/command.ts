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
  /** What it belongs to, for undo: "ware", "kilns", "materials", "settings", "loads", "load:ID", "notes" or "photos". */
  readonly scope: (input: Static<Schema>) => string;
  /**
   * Does it, inside one transaction.
   *
   * @returns what was done, in words: "Added 6 espresso cups"
   * @throws BadInput where it cannot be done; then nothing has happened
   */
  readonly run: (records: StudioRecords, input: Static<Schema>, context: CommandContext) => Promise<string>;
}

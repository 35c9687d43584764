import type { LoadPlan } from "../../loading/load-plan.ts";
import type { RecordOf } from "../records/all-kinds.ts";
import type { KindName } from "../records/record-kind.ts";
import type { StudioNotice } from "./notices-contract.ts";

// What the server and the browser say to each other, beyond the records themselves. Every path is under /api.
//
//   GET  /studio                        StudioCard
//   GET  /ware /kilns /clayBodies /glazes /loads /firings /notes /photos      every record of the kind
//   GET  /programmes /calibrations /upkeep /loggers                            these too
//   GET  /ware/:id  (and the others)    one record
//   POST /commands/:name                CommandCall → CommandAnswer; one command, undoable
//   GET  /history?scope=load:l1         HistoryEntry[], the newest first
//   POST /undo /redo                    { scope } → CommandAnswer
//   POST /plans                         PlanWish → { jobId }; GET /plans/:jobId/events streams PlanEvent; DELETE stops
//   GET  /loads/:id/sheet?paper=a4&units=metric&kind=pdf|svg
//   POST /photos?aboutKind=&aboutId=&caption=   the picture's bytes → CommandAnswer; GET /photos/:id/picture
//   GET  /ware.csv; POST /ware-csv-preview { csv } → WareImportPreview
//   GET  /archive; POST /archive        the whole studio; restoring saves first what is there
//   GET  /backups; POST /backups; POST /backups/:name/restore
//   POST /begin                         { with: "demo" | "empty" }
//   GET  /events                        streams StudioEvent
//   Readings and notices: readings-contract.ts and notices-contract.ts beside this file.
//   GET  /session; POST /session { passphrase }; DELETE /session

/** The studio at a glance. */
export interface StudioCard {
  readonly version: string;
  /** True until she has chosen how to begin: nothing is kept and nothing was chosen. */
  readonly isNew: boolean;
  readonly counts: Readonly<Record<KindName, number>>;
  /** Addresses under which a phone on the home network reaches this studio; empty where only this machine may. */
  readonly homeAddresses: readonly string[];
}

/** What a command is sent as. `key` makes it happen once however often it is sent: 1 to 64 letters, digits, - or _. */
export interface CommandCall {
  readonly key: string;
  readonly input: unknown;
}

/** Records a command put in, changed or took out (null), by kind and id. */
export type Changed = { readonly [Kind in KindName]?: Readonly<Record<string, RecordOf[Kind] | null>> };

/** What came of a command, an undo or a redo. */
export interface CommandAnswer {
  readonly entry: HistoryEntry;
  readonly changed: Changed;
  /** True where the settings changed too: read them again. */
  readonly settingsChanged: boolean;
}

/** One thing done, as the history tells it. */
export interface HistoryEntry {
  readonly id: string;
  readonly at: string;
  /** What it belongs to: "ware", "kilns", "materials", "settings", "loads", "load:ID", "firings", "firing:ID", "notes" or "photos". Undo goes back within one. */
  readonly scope: string;
  readonly command: string;
  /** In words: "Added 6 espresso cups". */
  readonly summary: string;
  readonly undone: boolean;
}

/** A wish to have a load planned. */
export interface PlanWish {
  readonly loadId: string;
  /** What stays as it is: nothing; the pinned pieces and the shelves; everything that stands there (the rest is packed). */
  readonly keep: "nothing" | "pinned" | "all";
  readonly seconds?: number;
  readonly seed?: number;
}

/** What a planning job says. After anything but "better" it says no more. */
export type PlanEvent =
  | { readonly kind: "better"; readonly pieces: number; readonly value: number; readonly plan: LoadPlan }
  /** Done and kept with the load; the command that kept it can be undone. */
  | { readonly kind: "kept"; readonly answer: CommandAnswer }
  /** Done, but the load was changed meanwhile, or nothing better came of it: the plan is only shown. */
  | { readonly kind: "not-kept"; readonly plan: LoadPlan; readonly reason: string }
  | { readonly kind: "impossible"; readonly reasons: readonly string[] }
  | { readonly kind: "stopped" }
  | { readonly kind: "failed"; readonly message: string };

/** Told to every open browser: what changed, by whichever of them. */
export interface StudioEvent {
  readonly entryId: string;
  readonly changed: { readonly [Kind in KindName]?: readonly string[] };
  readonly settingsChanged: boolean;
  /** Something to be told to her now, wherever she is in the application. */
  readonly notice?: StudioNotice;
}

/** Every error of the server: BadInput's own fields. */
export interface ErrorAnswer {
  readonly error: {
    readonly code: string;
    readonly path: string;
    readonly found: string;
    readonly expected: string;
    readonly message: string;
  };
}

import type { RollUpPeriod } from "../records/roll-up.ts";

// What the server and whoever sends or looks at temperatures say to each other. Wareboard only listens: nothing here, and
// nothing it ever answers, switches a kiln. Every path is under /api.
//
//   POST /readings                        SentReading, or { readings: SentReading[] }, with a logger's token
//                                         (Authorization: Bearer …) → ReadingsKept
//   POST /loggers { id?, kilnId, probe, name } → NewLogger; the command remove-logger takes one out
//   GET  /firings/:id/readings?by=&from=&to=&most=      ShownReadings
//   POST /firings/:id/readings            TypedReading → ReadingsKept
//   POST /firings/:id/readings-csv?preview=1            LogFile → LogLook; without preview it is kept

/** One temperature as a logger sends it: `tempC` or `tempF`, one of the two. */
export interface SentReading {
  /** A moment with its offset from UTC, such as 2026-11-25T09:47:32Z; now where left out. */
  readonly at?: string;
  readonly tempC?: number;
  readonly tempF?: number;
}

/** A temperature typed in beside the kiln. */
export interface TypedReading extends SentReading {
  /** As on the kiln; its first where left out. */
  readonly probe?: string;
}

/** Said once all of it is on the disk. */
export interface ReadingsKept {
  readonly kept: number;
  /** From moments at which this kiln was not firing. */
  readonly leftAside: number;
}

/** What makes a logger. The token is told here and never again. */
export interface NewLogger {
  readonly id: string;
  readonly token: string;
}

/** A firing's temperatures, or their gathered minutes or hours, each probe's in order of time. */
export interface ShownReadings {
  readonly by: "raw" | RollUpPeriod;
  readonly series: readonly ShownSeries[];
  /** Where there were more than asked for: ask again from this moment on. Else null. */
  readonly more: string | null;
}

/** Lists as long as one another. */
export interface ShownSeries {
  readonly probe: string;
  readonly at: readonly string[];
  /** The temperature; of a minute or hour, the mean. °C. */
  readonly tempC: readonly number[];
  /** Of a minute or hour. */
  readonly rolledUp?: {
    readonly count: readonly number[];
    readonly leastC: readonly number[];
    readonly mostC: readonly number[];
    readonly firstC: readonly number[];
    readonly lastC: readonly number[];
  };
}

/** A temperature log as it stands in its file, and what was answered to the questions it left open. */
export interface LogFile {
  readonly csv: string;
  readonly options?: LogAnswers;
}

export interface LogAnswers {
  readonly dateOrder?: "day-first" | "month-first";
  readonly temperature?: "C" | "F";
  readonly timeUnit?: "seconds" | "minutes" | "hours";
  readonly missingHour?: "clock-change" | "no-readings";
  readonly probes?: readonly string[];
  readonly firing?: number;
  /** When its first reading was, in UTC, where the file does not say so for sure. */
  readonly startsAt?: string;
}

/** The next question, or what would be kept. */
export type LogLook =
  | {
      readonly kind: "question";
      readonly about: keyof LogAnswers;
      readonly question: string;
      /** Send the file again with one choice's options (they hold the earlier answers too). */
      readonly choices: readonly { readonly options: LogAnswers; readonly means: string }[];
    }
  | {
      readonly kind: "log";
      readonly from: string;
      readonly to: string;
      /** Each column, the probe it is kept as, and how much of it. */
      readonly probes: readonly {
        readonly column: string;
        readonly probe: string;
        readonly count: number;
        readonly leastC: number;
        readonly mostC: number;
      }[];
      readonly dropped: readonly { readonly line: number; readonly found: string; readonly why: string }[];
      readonly notes: readonly string[];
      /** True once they are kept; in a preview, false. */
      readonly kept: boolean;
    };

/** What to read where a file leaves a choice. Each is asked for when it is needed, and only then. */
export interface LogOptions {
  /** Whether 3/4 is the third of April or the fourth of March. */
  readonly dateOrder?: "day-first" | "month-first";
  readonly temperature?: "C" | "F";
  /** The unit of a bare number of time. */
  readonly timeUnit?: "seconds" | "minutes" | "hours";
  /** Whether an hour missing on the clock was the clock put forward, or an hour without readings. */
  readonly missingHour?: "clock-change" | "no-readings";
  /** Names of the columns that are temperatures inside the kiln. */
  readonly probes?: readonly string[];
  /** Which of several firings in one file, from 1. */
  readonly firing?: number;
}

/** A reading that was left out, and why. The file itself is never touched. */
export interface Dropped {
  /** Line of the file, from 1. */
  readonly line: number;
  readonly found: string;
  readonly why: string;
}

export interface LogProbe {
  /** The column's own name. */
  readonly name: string;
  /** °C at each minute of the log; NaN where this probe's reading was dropped. */
  readonly tempC: Float64Array;
}

export interface LogQuestion {
  readonly kind: "question";
  readonly about: keyof LogOptions;
  readonly question: string;
  /** Each answer: the options to read again with, and what they would mean. */
  readonly choices: readonly { readonly option: LogOptions; readonly means: string }[];
}

export interface TemperatureLog {
  readonly kind: "log";
  /** Minutes since the first reading, rising. */
  readonly minutes: Float64Array;
  readonly probes: readonly LogProbe[];
  /** The first reading's date and time as the instrument wrote it, ISO 8601, or null where it wrote none that is sure. */
  readonly startedAt: string | null;
  readonly dropped: readonly Dropped[];
  /** What was taken for what, and what to know of the log. */
  readonly notes: readonly string[];
}

/** A log, or the one question to answer first. */
export type LogReading = TemperatureLog | LogQuestion;

import type { ParseArgsOptionsConfig } from "node:util";

/** What a command is given: its words, its options, and whether a machine is reading. */
export interface CommandCall {
  readonly words: readonly string[];
  readonly options: Readonly<Record<string, string | boolean | undefined>>;
  readonly json: boolean;
}

/** Exit codes: 0 done, 1 the answer is no, 2 bad input. */
export type ExitCode = 0 | 1;

/** One command of the terminal. The help, the parsing and the tests all read this. */
export interface Command {
  readonly name: string;
  /** The words it takes, as shown in help: `REQUEST.json PLAN.json`. */
  readonly words: readonly string[];
  /** True where it may also be asked without any word. */
  readonly mayBeWordless?: boolean;
  readonly summary: string;
  readonly options: ParseArgsOptionsConfig;
  /** A sentence for each option. */
  readonly optionHelp: Readonly<Record<string, string>>;
  readonly examples: readonly string[];
  /** Does the job. Bad input is thrown as BadInput. */
  readonly run: (call: CommandCall) => Promise<ExitCode> | ExitCode;
}

/** Prints a value for machines, on one line. */
export function printJson(value: unknown): void {
  process.stdout.write(`${JSON.stringify(value)}\n`);
}

/** Prints lines for people. */
export function printLines(lines: readonly string[]): void {
  process.stdout.write(`${lines.join("\n")}\n`);
}

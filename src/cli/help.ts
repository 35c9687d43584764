import type { Command } from "./command.ts";

const CAUTION =
  "Wareboard plans and advises; it never switches a kiln. Your kiln's own manual, local codes and a licensed electrician come first.";

/** What `wareboard --help` prints. */
export function overallHelp(commands: readonly Command[]): string {
  const width = Math.max(...commands.map((command) => command.name.length));
  return `${[
    "wareboard: plan, fire and learn from the loads of one small kiln",
    "",
    ...commands.map((command) => `  ${command.name.padEnd(width)}  ${command.summary}`),
    "",
    "Every command takes --json (for machines) and --help (with examples).",
    "Exit codes: 0 done, 1 the answer is no, 2 bad input, 3 a fault of Wareboard's own.",
    "",
    CAUTION,
  ].join("\n")}\n`;
}

/** What `wareboard COMMAND --help` prints. */
export function commandHelp(command: Command): string {
  const names = Object.keys(command.options);
  const width = Math.max(6, ...names.map((name) => name.length + 2));
  return `${[
    ...(command.mayBeWordless ? [`wareboard ${command.name} [options]`] : []),
    `wareboard ${[command.name, ...command.words].join(" ")}${names.length ? " [options]" : ""}`,
    "",
    command.summary,
    "",
    "Options",
    ...names.map((name) => `  ${`--${name}`.padEnd(width)}  ${command.optionHelp[name] ?? ""}`),
    `  ${"--json".padEnd(width)}  print JSON for machines`,
    "",
    "Examples",
    ...command.examples.map((example) => `  ${example}`),
  ].join("\n")}\n`;
}

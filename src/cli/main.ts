import { parseArgs } from "node:util";
import { BadInput } from "../measures/bad-input.ts";
import type { Command, CommandCall } from "./command.ts";
import { COMMANDS } from "./commands.ts";
import { commandHelp, overallHelp } from "./help.ts";

/**
 * Runs the command line.
 *
 * @param args what follows `wareboard`
 * @returns the exit code: 0 done, 1 the answer is no, 2 bad input, 3 a fault of Wareboard's own
 */
export async function main(args: readonly string[]): Promise<0 | 1 | 2 | 3> {
  const json = args.includes("--json");
  try {
    const [name, ...rest] = args;
    if (name === undefined || name === "help" || name === "--help" || name === "-h") {
      const about = COMMANDS.find((command) => command.name === rest[0]);
      process.stdout.write(about ? commandHelp(about) : overallHelp(COMMANDS));
      return 0;
    }
    const command = COMMANDS.find((each) => each.name === name);
    if (!command) {
      throw new BadInput({
        code: "unknown-command",
        path: "wareboard",
        found: `"${name}"`,
        expected: `one of ${COMMANDS.map((each) => each.name).join(", ")}`,
      });
    }
    if (rest.includes("--help") || rest.includes("-h")) {
      process.stdout.write(commandHelp(command));
      return 0;
    }
    return await command.run(parseCall(command, rest));
  } catch (error) {
    if (!(error instanceof BadInput)) return ownFault(error, json);
    process.stderr.write(json ? `${JSON.stringify({ error: error.toJSON() })}\n` : `${error.message}\n`);
    return 2;
  }
}

/** A fault that is nobody's input: told as ours, with what a maker needs to find it. */
function ownFault(error: unknown, json: boolean): 3 {
  const message = error instanceof Error ? error.message : String(error);
  const sentence = `Wareboard itself failed, and it is not your file's fault: ${message}`;
  if (json)
    process.stderr.write(
      `${JSON.stringify({ error: { code: "own-fault", path: "", found: message, expected: "no failure", message: sentence } })}\n`,
    );
  else process.stderr.write(`${sentence}\n${error instanceof Error ? (error.stack ?? "") : ""}\n`);
  return 3;
}

function parseCall(command: Command, args: readonly string[]): CommandCall {
  const options = { ...command.options, json: { type: "boolean" } } as const;
  let parsed: ReturnType<typeof parseArgs>;
  try {
    parsed = parseArgs({ args: joinedNumbers(args), options, allowPositionals: true, strict: true });
  } catch (error) {
    const text = error instanceof Error ? error.message : String(error);
    const option = /'(-[^' ]*)/.exec(text)?.[1] ?? command.name;
    const known = Object.keys(options).map((each) => `--${each}`);
    throw new BadInput({
      code: "wrong-option",
      path: `wareboard ${command.name}`,
      found: /argument missing|ambiguous/i.test(text) ? `${option} without its value` : `the option ${option}`,
      expected: known.length ? `options among ${known.join(", ")}` : "no options",
    });
  }
  const isWordless = command.mayBeWordless === true && parsed.positionals.length === 0;
  if (!isWordless && parsed.positionals.length !== command.words.length) {
    throw new BadInput({
      code: "wrong-words",
      path: `wareboard ${command.name}`,
      found: parsed.positionals.length === 0 ? "no file" : `${parsed.positionals.length} words`,
      expected: command.words.length === 0 ? "no words" : command.words.join(" "),
    });
  }
  return {
    words: parsed.positionals,
    options: parsed.values as CommandCall["options"],
    json: parsed.values.json === true,
  };
}

/** `--room -5` means `--room=-5`: no option of ours is a number. */
function joinedNumbers(args: readonly string[]): string[] {
  const joined: string[] = [];
  for (const arg of args) {
    const before = joined.at(-1);
    if (/^-\d/.test(arg) && before?.startsWith("--") && !before.includes("="))
      joined[joined.length - 1] = `${before}=${arg}`;
    else joined.push(arg);
  }
  return joined;
}

process.exitCode = await main(process.argv.slice(2));

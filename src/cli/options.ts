import { BadInput, shown } from "../measures/bad-input.ts";
import type { LengthUnits } from "../measures/length.ts";
import type { CommandCall } from "./command.ts";

/** A number option within bounds, or its default. @throws BadInput where it is no such number */
export function numberOption(
  call: CommandCall,
  name: string,
  bounds: { readonly least: number; readonly most: number; readonly whole?: boolean; readonly otherwise: number },
): number {
  const text = call.options[name];
  if (text === undefined) return bounds.otherwise;
  const value = typeof text === "string" && text.trim() !== "" ? Number(text) : Number.NaN;
  const fits = value >= bounds.least && value <= bounds.most && (!bounds.whole || Number.isInteger(value));
  if (fits) return value;
  throw new BadInput({
    code: "wrong-option",
    path: `--${name}`,
    found: shown(text),
    expected: `a ${bounds.whole ? "whole " : ""}number from ${bounds.least} to ${bounds.most}`,
  });
}

/** An option that is one of a few words, or its default. @throws BadInput where it is another */
export function choiceOption<Choice extends string>(
  call: CommandCall,
  name: string,
  choices: readonly Choice[],
  otherwise: Choice,
): Choice {
  const text = call.options[name];
  if (text === undefined) return otherwise;
  const choice = choices.find((each) => each === text);
  if (choice) return choice;
  throw new BadInput({ code: "wrong-option", path: `--${name}`, found: shown(text), expected: choices.join(" or ") });
}

/** The option `--units metric|inches`. */
export const unitsOption = (call: CommandCall): LengthUnits =>
  choiceOption(call, "units", ["metric", "inches"], "metric");

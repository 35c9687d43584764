import { BadInput } from "./bad-input.ts";

/**
 * Reads JSON text.
 *
 * @param text the file's text
 * @param path the file's name, for the error
 * @throws BadInput with the line and what is wrong there: a cut-off file, NaN, a comment
 */
export function readJson(text: string, path: string): unknown {
  const refuse = (found: string, expected: string, code = "not-json"): never => {
    throw new BadInput({ code, path, found, expected });
  };
  const plain = text.replace(/^\uFEFF/, "");
  if (plain.trim() === "") return refuse("an empty file", "a JSON file", "empty-file");
  try {
    return JSON.parse(plain);
  } catch (error) {
    if (isCutOff(plain, error)) {
      return refuse(`a file cut off on line ${lineOf(plain, plain.length)}`, "a whole JSON file", "cut-off");
    }
    const place = firstWrongPlace(plain);
    const line = lineOf(plain, place);
    const odd = /[-+]?(?:NaN|Infinity)/.exec(plain.slice(Math.max(0, place - 1), place + 10));
    // A sign goes unnoticed until the letter after it.
    if (odd && odd.index <= 1)
      return refuse(`${odd[0]} on line ${line}`, "a number that JSON can hold", "not-a-number");
    return refuse(
      `text that is not JSON on line ${line}`,
      "JSON: names and text in double quotes, no comments, no trailing commas",
    );
  }
}

/** Whether JSON.parse only complains that the text ends too soon. */
function isCutOff(text: string, error: unknown): boolean {
  const message = error instanceof Error ? error.message : String(error);
  const position = /position (\d+)/.exec(message);
  return /end of JSON|Unterminated/.test(message) || Number(position?.[1] ?? -1) >= text.trimEnd().length;
}

/**
 * Index of the first character that cannot stand in JSON. The error does not always say where it was: but text that is
 * cut before that place only ends too soon, and text cut after it does not.
 */
function firstWrongPlace(text: string): number {
  let right = 0;
  let wrong = text.length;
  while (wrong - right > 1) {
    const middle = (right + wrong) >> 1;
    if (isWrong(text.slice(0, middle))) wrong = middle;
    else right = middle;
  }
  return wrong - 1;
}

function isWrong(text: string): boolean {
  try {
    JSON.parse(text);
    return false;
  } catch (error) {
    return !isCutOff(text, error);
  }
}

const lineOf = (text: string, position: number): number => text.slice(0, position).split("\n").length;

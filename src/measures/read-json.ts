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
    const message = error instanceof Error ? error.message : String(error);
    const odd = /(?<=[:,[\s])(NaN|[-+]?Infinity)(?=\s*[,}\]\s])/.exec(plain);
    if (odd)
      return refuse(`${odd[1]} on line ${lineOf(plain, odd.index)}`, "a number that JSON can hold", "not-a-number");
    const position = /position (\d+)/.exec(message);
    if (/end of JSON|Unterminated/.test(message) || (position && Number(position[1]) >= plain.trimEnd().length)) {
      return refuse(`a file cut off on line ${lineOf(plain, plain.length)}`, "a whole JSON file", "cut-off");
    }
    const line = position ? ` on line ${lineOf(plain, Number(position[1]))}` : "";
    return refuse(
      `text that is not JSON${line}`,
      "JSON: names and text in double quotes, no comments, no trailing commas",
    );
  }
}

const lineOf = (text: string, position: number): number => text.slice(0, position).split("\n").length;

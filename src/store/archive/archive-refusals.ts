import { BadInput } from "../../measures/bad-input.ts";

/** @throws BadInput always */
export function refuse(code: string, found: string, expected: string, path = "archive"): never {
  throw new BadInput({ code, path, found, expected });
}

/** Text in UTF-8, and nothing that only looks like it. */
export function asText(bytes: Uint8Array, file: string): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return refuse("not-text", `bytes that are not UTF-8 in "${file}"`, "text");
  }
}

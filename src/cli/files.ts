import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import type { LoadPlan } from "../loading/load-plan.ts";
import type { LoadRequest } from "../loading/load-request.ts";
import { readLoadPlan } from "../loading/read-load-plan.ts";
import { readLoadRequest } from "../loading/read-load-request.ts";
import { BadInput } from "../measures/bad-input.ts";
import { readJson } from "../measures/read-json.ts";

/** Larger than any file of ours by far; keeps a wrong file from filling the memory. */
const LARGEST_FILE_BYTES = 64 * 1024 * 1024;

/** A text file's content. @throws BadInput where there is no such file, or it cannot be read as one */
export function readTextFile(path: string): string {
  try {
    const facts = statSync(path);
    if (facts.isDirectory()) throw new BadInput({ code: "not-a-file", path, found: "a folder", expected: "a file" });
    if (facts.size > LARGEST_FILE_BYTES) {
      throw new BadInput({
        code: "too-large",
        path,
        found: `${facts.size} bytes`,
        expected: "a file of at most 64 MB",
      });
    }
    return readFileSync(path, "utf8");
  } catch (error) {
    if (error instanceof BadInput) throw error;
    const code = (error as NodeJS.ErrnoException).code;
    const found = code === "ENOENT" ? "no such file" : `a file that cannot be read (${code})`;
    throw new BadInput({ code: "no-file", path, found, expected: "the path of a file that can be read" });
  }
}

/** A JSON file's value, read by `read`; errors name the file as well as the field. */
function readFileAs<Value>(path: string, read: (json: unknown) => Value): Value {
  const json = readJson(readTextFile(path), path);
  try {
    return read(json);
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    throw new BadInput({ ...error.toJSON(), file: path });
  }
}

export const readRequestFile = (path: string): LoadRequest => readFileAs(path, readLoadRequest);
export const readPlanFile = (path: string, request: LoadRequest): LoadPlan =>
  readFileAs(path, (json) => readLoadPlan(json, request));

/** Reads a JSON file of another format. */
export const readJsonFile = readFileAs;

/**
 * Writes a file whole or not at all: beside its place first, then moved there.
 *
 * @throws BadInput where the folder cannot be written
 */
export function writeWholeFile(path: string, content: string | Uint8Array): void {
  const place = resolve(path);
  const beside = `${place}.part-${process.pid}`;
  try {
    makeFolder(dirname(place));
    writeFileSync(beside, content);
    renameSync(beside, place);
  } catch (error) {
    if (existsSync(beside)) rmSync(beside);
    const code = (error as NodeJS.ErrnoException).code;
    throw new BadInput({
      code: "cannot-write",
      path,
      found: `a place that cannot be written (${code})`,
      expected: "a writable file",
    });
  }
}

/** Makes a folder and those above it, one by one: `recursive` never returns where the system answers that there is none (/proc). */
function makeFolder(folder: string): void {
  if (existsSync(folder)) return;
  makeFolder(dirname(folder));
  mkdirSync(folder);
}

import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { availableParallelism, cpus } from "node:os";
import { join } from "node:path";

const FOLDER = join(import.meta.dirname, "results");

/** The machine as a reader knows it: processor, cores, Node. */
export function machine(): string {
  const model = (cpus()[0]?.model ?? "unknown processor")
    .replace(/\(R\)|\(TM\)|CPU|@.*$/g, "")
    .replace(/\s+/g, " ")
    .trim();
  return `${model}, ${availableParallelism()} cores, Node ${process.versions.node}`;
}

/**
 * Stores a part's results under today's date and this machine; parts run before on the same day stay in the file.
 *
 * @returns the file
 */
export function store(part: string, result: unknown): string {
  const date = new Date().toISOString().slice(0, 10);
  const name = machine()
    .toLowerCase()
    .replace(/[^a-z0-9.]+/g, "-");
  const file = join(FOLDER, `${date}-${name}.json`);
  const before: Record<string, unknown> = existsSync(file) ? JSON.parse(readFileSync(file, "utf8")) : {};
  mkdirSync(FOLDER, { recursive: true });
  writeFileSync(file, `${JSON.stringify({ ...before, date, machine: machine(), [part]: result }, null, 1)}\n`);
  return file;
}

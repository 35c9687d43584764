import type { Static, TObject } from "typebox";
import { Compile, type Validator } from "typebox/compile";
import { BadInput } from "../../measures/bad-input.ts";
import { readBySchema } from "../../measures/read-schema.ts";
import { checkDay, checkId, checkKeepable, checkMoment } from "./fields.ts";

/** What there are records of. The order is the order of adding: what is referred to comes first. */
export const KIND_NAMES = [
  "kilns",
  "clayBodies",
  "glazes",
  "ware",
  "loads",
  "firings",
  "notes",
  "photos",
  "programmes",
  "calibrations",
  "upkeep",
  "loggers",
] as const;
export type KindName = (typeof KIND_NAMES)[number];

/** One kind of record: its shape, what it refers to, and what else must hold. */
export interface RecordKind<Schema extends TObject = TObject> {
  readonly name: KindName;
  /** One of them, for a sentence: "kiln". */
  readonly one: string;
  readonly schema: Schema;
  /** Fields that hold another record's id, and of which kind. */
  readonly refersTo: Readonly<Record<string, KindName>>;
  /** True where a change must name the version it was made from. */
  readonly versioned: boolean;
  /** What the schema cannot say. */
  readonly check: (record: Static<Schema>) => void;
}

/**
 * Checks a record that is about to be kept: its shape, its ids and times, and what else its kind asks.
 *
 * @param path where it stands, for the error
 * @throws BadInput naming the field
 */
export function checkRecord<Schema extends TObject>(
  kind: RecordKind<Schema>,
  value: unknown,
  path: string,
): Static<Schema> {
  const record = readRecord(kind, value, path);
  within(path, () => kind.check(record));
  return record;
}

/** Checks the shape, ids and times alone: enough for what was checked in full when it was kept. */
export function readRecord<Schema extends TObject>(
  kind: RecordKind<Schema>,
  value: unknown,
  path: string,
): Static<Schema> {
  // Compiled, the question takes a hundredth of the time; the long way round finds the words where the answer is no.
  const record = fits(kind.schema, value) ? (value as Static<Schema>) : readBySchema(kind.schema, value, path);
  for (const [name, field] of Object.entries(record as Record<string, unknown>)) {
    if (typeof field === "string") checkText(heldBy(kind, name), field, path === "" ? name : `${path}.${name}`);
  }
  return record;
}

const checkText = (holds: string | undefined, text: string, path: string): void => {
  if (holds === "id") checkId(text, path);
  else if (holds === "moment") checkMoment(text, path);
  else if (holds === "day") checkDay(text, path);
  else checkKeepable(text, path);
};

const compiled = new WeakMap<TObject, Validator>();

function fits(schema: TObject, value: unknown): boolean {
  const validator = compiled.get(schema) ?? Compile(schema);
  compiled.set(schema, validator);
  return validator.Check(value);
}

interface Field {
  readonly holds?: string;
  readonly anyOf?: readonly Field[];
}

function heldBy(kind: RecordKind, name: string): string | undefined {
  const field = kind.schema.properties[name] as Field | undefined;
  return field?.holds ?? field?.anyOf?.find((choice) => choice.holds !== undefined)?.holds;
}

/** Runs a check whose errors name paths inside `path`, and names them from outside it. */
export function within<Result>(path: string, check: () => Result): Result {
  try {
    return check();
  } catch (error) {
    if (!(error instanceof BadInput) || path === "") throw error;
    const { code, found, expected } = error;
    const inside = error.path === "" || error.path.startsWith("[") ? error.path : `.${error.path}`;
    throw new BadInput({ code, path: `${path}${inside}`, found, expected });
  }
}

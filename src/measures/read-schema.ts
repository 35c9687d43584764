import type { Static, TSchema } from "typebox";
import { Check } from "typebox/value";
import { BadInput, shown } from "./bad-input.ts";
import { parseLengthMm } from "./length.ts";

/** What of a JSON Schema the formats use. */
interface Rule {
  readonly type?: string;
  readonly const?: unknown;
  readonly anyOf?: readonly Rule[];
  readonly properties?: Readonly<Record<string, Rule>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean | Rule;
  readonly items?: Rule | readonly Rule[];
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly description?: string;
}

/**
 * Checks a value read from outside against its schema.
 *
 * @param schema built of objects, arrays, tuples, unions, numbers, strings, booleans, literals and null
 * @param value what JSON.parse gave
 * @param path where the value stands, for the error; empty for a whole file
 * @returns the same value, typed
 * @throws BadInput naming the first field that will not do
 */
export function readBySchema<Schema extends TSchema>(schema: Schema, value: unknown, path = ""): Static<Schema> {
  if (!Check(schema, value)) {
    explain(schema as Rule, value, path);
    throw new BadInput({ code: "wrong-shape", path, found: shown(value), expected: "a file of the published format" });
  }
  return value as Static<Schema>;
}

const refuse = (code: string, path: string, found: string, expected: string): never => {
  throw new BadInput({ code, path, found, expected });
};

function explain(rule: Rule, value: unknown, path: string): void {
  if (rule.anyOf) return explainUnion(rule.anyOf, value, path);
  if ("const" in rule) {
    if (value !== rule.const) refuse("wrong-value", path, shown(value), JSON.stringify(rule.const));
    return;
  }
  if (rule.type === "object") return explainObject(rule, value, path);
  if (rule.type === "array") return explainArray(rule, value, path);
  if (rule.type === "number" || rule.type === "integer") return explainNumber(rule, value, path);
  if (rule.type === "string") {
    if (typeof value !== "string") refuse("not-text", path, shown(value), "text");
    const length = (value as string).length;
    if (length < (rule.minLength ?? 0)) refuse("too-short", path, "no text", "at least one character");
    if (rule.maxLength !== undefined && length > rule.maxLength) {
      refuse("too-long", path, `${length} characters`, `at most ${rule.maxLength}`);
    }
    return;
  }
  if (rule.type === "boolean" && typeof value !== "boolean")
    refuse("not-yes-or-no", path, shown(value), "true or false");
  if (rule.type === "null" && value !== null) refuse("not-null", path, shown(value), "null");
}

/** A union is told apart by null, or by the literal each of its objects carries (a chamber's `shape`). */
function explainUnion(choices: readonly Rule[], value: unknown, path: string): void {
  const literals = choices.filter((choice) => "const" in choice);
  if (literals.length === choices.length) {
    if (!literals.some((choice) => choice.const === value)) {
      refuse("wrong-value", path, shown(value), oneOf(literals.map((choice) => choice.const)));
    }
    return;
  }
  const solid = choices.filter((choice) => choice.type !== "null");
  if (value === null && solid.length < choices.length) return;
  if (solid.length === 1) return explain(solid[0] as Rule, value, path);
  const mark = markOf(solid);
  if (mark === null) return;
  if (!isObject(value)) refuse("not-an-object", path, shown(value), `an object with a ${mark}`);
  const found = (value as Record<string, unknown>)[mark];
  const chosen = solid.find((choice) => choice.properties?.[mark]?.const === found);
  if (chosen) return explain(chosen, value, path);
  const allowed = oneOf(solid.map((choice) => choice.properties?.[mark]?.const));
  refuse(found === undefined ? "missing-field" : "wrong-value", join(path, mark), shown(found), allowed);
}

function markOf(choices: readonly Rule[]): string | null {
  const names = Object.keys(choices[0]?.properties ?? {});
  return names.find((name) => choices.every((choice) => "const" in (choice.properties?.[name] ?? {}))) ?? null;
}

function explainObject(rule: Rule, value: unknown, path: string): void {
  if (!isObject(value)) refuse("not-an-object", path, shown(value), "an object { … }");
  const fields = value as Record<string, unknown>;
  const known = rule.properties ?? {};
  // A file of another format is told by its name first: else its first field would be called unknown.
  if (known.format && "const" in known.format && Object.hasOwn(fields, "format")) {
    explain(known.format, fields.format, join(path, "format"));
  }
  if (rule.additionalProperties === false) {
    for (const name of Object.keys(fields)) {
      if (Object.hasOwn(known, name)) continue;
      const near = nearest(name, Object.keys(known));
      const wanted = near ? `${near}` : `one of ${Object.keys(known).join(", ")}`;
      refuse("unknown-field", join(path, name), `a field this format does not have`, wanted);
    }
  }
  for (const name of rule.required ?? []) {
    if (!Object.hasOwn(fields, name)) refuse("missing-field", join(path, name), "nothing", kindOf(known[name] ?? {}));
  }
  for (const [name, field] of Object.entries(known)) {
    if (Object.hasOwn(fields, name) && fields[name] !== undefined) explain(field, fields[name], join(path, name));
  }
}

function explainArray(rule: Rule, value: unknown, path: string): void {
  if (!Array.isArray(value)) refuse("not-a-list", path, shown(value), "a list [ … ]");
  const list = value as unknown[];
  const most = isTuple(rule.items) ? rule.items.length : rule.maxItems;
  const found = `a list of ${list.length}`;
  if (list.length < (rule.minItems ?? 0)) refuse("too-few", path, found, `at least ${rule.minItems}`);
  if (most !== undefined && list.length > most) refuse("too-many", path, found, `at most ${most}`);
  list.forEach((item, i) => {
    const itemRule = isTuple(rule.items) ? rule.items[i] : rule.items;
    if (itemRule) explain(itemRule, item, `${path}[${i}]`);
  });
}

const isTuple = (items: Rule["items"]): items is readonly Rule[] => Array.isArray(items);

function explainNumber(rule: Rule, value: unknown, path: string): void {
  const wanted = numberKind(rule, path);
  if (typeof value !== "number" || !Number.isFinite(value)) {
    refuse("not-a-number", path, shown(value), wanted + lengthHint(value, path));
  }
  const found = value as number;
  if (rule.type === "integer" && !Number.isInteger(found)) refuse("not-whole", path, shown(found), wanted);
  const low =
    rule.exclusiveMinimum !== undefined ? found <= rule.exclusiveMinimum : found < (rule.minimum ?? -Infinity);
  if (low || found > (rule.maximum ?? Infinity)) refuse("out-of-range", path, shown(found), wanted);
}

function numberKind(rule: Rule, path: string): string {
  const unit = unitOf(path);
  const kind = `a ${rule.type === "integer" ? "whole " : ""}number${unit && ` of ${unit}`}`;
  const low =
    rule.exclusiveMinimum !== undefined
      ? ` above ${rule.exclusiveMinimum}`
      : rule.minimum !== undefined
        ? ` of at least ${rule.minimum}`.replace(" of", unit ? "," : " of")
        : "";
  const high = rule.maximum !== undefined ? `${low ? " and" : ","} at most ${rule.maximum}` : "";
  return kind + low + high;
}

const UNITS: readonly (readonly [string, string])[] = [
  ["CPerHour", "°C an hour"],
  ["KWh", "kilowatt-hours"],
  ["Mm", "millimetres"],
  ["Deg", "degrees"],
  ["Min", "minutes"],
  ["Kg", "kilograms"],
  ["W", "watts"],
  ["C", "degrees Celsius"],
];

function unitOf(path: string): string {
  const name = path.replaceAll(/\[\d+\]/g, "");
  return UNITS.find(([suffix]) => name.endsWith(suffix))?.[1] ?? "";
}

/** Where somebody wrote "3 in" for a number of millimetres, says what that is. */
function lengthHint(value: unknown, path: string): string {
  if (typeof value !== "string" || unitOf(path) !== "millimetres") return "";
  try {
    return ` (${value.trim()} is ${Number(parseLengthMm(value).toFixed(1))})`;
  } catch {
    return "";
  }
}

function kindOf(rule: Rule): string {
  const about = rule.description ? ` (${rule.description.replace(/\.$/, "")})` : "";
  if (rule.anyOf) {
    const literals = rule.anyOf.filter((choice) => "const" in choice);
    return (
      (literals.length === rule.anyOf.length ? oneOf(literals.map((choice) => choice.const)) : "this field") + about
    );
  }
  if ("const" in rule) return JSON.stringify(rule.const);
  const kinds: Record<string, string> = {
    number: "a number",
    integer: "a whole number",
    string: "text",
    boolean: "true or false",
    array: "a list",
    object: "an object",
  };
  return (kinds[rule.type ?? ""] ?? "this field") + about;
}

const isObject = (value: unknown): boolean => typeof value === "object" && value !== null && !Array.isArray(value);
const join = (path: string, name: string): string => (path === "" ? name : `${path}.${name}`);
const oneOf = (values: readonly unknown[]): string => values.map((value) => JSON.stringify(value)).join(" or ");

/** The known name closest to a mistyped one: same up to case, unit suffix, or two letters. */
function nearest(name: string, known: readonly string[]): string | null {
  const bare = (text: string): string => text.replace(/(Mm|Cm|In|Inch|Inches|Deg|Kg|C|F)$/, "").toLowerCase();
  const scored = known.map((each) => ({
    each,
    apart: Math.min(lettersApart(name, each), bare(name) === bare(each) ? 0 : 9),
  }));
  scored.sort((a, b) => a.apart - b.apart);
  return scored[0] && scored[0].apart <= 2 ? scored[0].each : null;
}

/** Levenshtein's distance. */
function lettersApart(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const swap = (row[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] as number) + 1, (next[j - 1] as number) + 1));
    }
    row = next;
  }
  return row[b.length] as number;
}

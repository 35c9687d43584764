import { type TSchema, Type } from "typebox";
import { CONES } from "../../firing/cones/cone.ts";
import { BadInput, shown } from "../../measures/bad-input.ts";
import { OneOf } from "../../measures/schema.ts";

// Kinds of field that records share. `holds` says more than JSON Schema's "string" does; `checkFields` asks for it.

const text = (holds: "id" | "moment" | "day", description: string) =>
  Type.String({ minLength: 1, maxLength: 64, holds, description });

/** A record's name for machines: made once, given in from outside, never reused. */
export const Id = (description: string) => text("id", description);
/** A moment in UTC, spelled one way so that text order is time order: 2026-11-25T09:47:32.120Z. */
export const Moment = (description: string) => text("moment", description);
/** A day on the calendar: 2026-11-25. */
export const Day = (description: string) => text("day", description);
/** The field, or null where there is nothing to say. */
export const orNull = <Schema extends TSchema>(schema: Schema) => Type.Union([schema, Type.Null()]);
/** Her own words; may be empty. */
export const Words = (description: string, maxLength = 2000) => Type.String({ maxLength, description });
/** Two cones, the cooler first. */
export const ConesSchema = Type.Object(
  { coolest: OneOf(CONES, "Where it begins."), hottest: OneOf(CONES, "Where it ends.") },
  { additionalProperties: false },
);
/** When a record was made and last changed. */
export const stamps = {
  createdAt: Moment("When it was written down."),
  changedAt: Moment("When it was last changed."),
};

const ID = /^[A-Za-z0-9_-]{1,64}$/;
const MOMENT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/;
const DAY = /^\d{4}-\d\d-\d\d$/;
const UNKEEPABLE = /\0|\p{Surrogate}/u;

/** @throws BadInput unless the text is 1 to 64 letters, digits, "-" or "_" */
export function checkId(id: string, path: string): void {
  if (!ID.test(id)) refuse("not-an-id", path, id, `1 to 64 letters, digits, "-" or "_"`);
}

/** @throws BadInput unless the text is a moment in UTC to the millisecond, on a day that exists */
export function checkMoment(moment: string, path: string): void {
  if (MOMENT.test(moment) && isSameMoment(moment, moment)) return;
  refuse("not-a-moment", path, moment, "a moment in UTC such as 2026-11-25T09:47:32.120Z");
}

/** @throws BadInput unless the text is a day that exists */
export function checkDay(day: string, path: string): void {
  if (DAY.test(day) && isSameMoment(day, `${day}T00:00:00.000Z`)) return;
  refuse("not-a-day", path, day, "a day such as 2026-11-25");
}

/** @throws BadInput for text no database keeps as it is: a NUL, half of a character */
export function checkKeepable(words: string, path: string): void {
  const found = UNKEEPABLE.exec(words);
  if (found)
    refuse("not-text", path, words, `text without ${found[0] === "\0" ? "a NUL character" : "half a character"}`);
}

/** 30 February is read as 2 March: what comes back must be what went in. */
function isSameMoment(text: string, written: string): boolean {
  const time = Date.parse(text);
  return Number.isFinite(time) && new Date(time).toISOString() === written;
}

function refuse(code: string, path: string, found: string, expected: string): never {
  throw new BadInput({ code, path, found: shown(found), expected });
}

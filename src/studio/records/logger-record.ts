import { type Static, Type } from "typebox";
import { BadInput } from "../../measures/bad-input.ts";
import { Name } from "../../measures/schema.ts";
import { Id, stamps } from "./fields.ts";
import type { RecordKind } from "./record-kind.ts";

/**
 * Something that sends a kiln's temperatures. It only tells: nothing here ever switches a kiln. Its token is told once,
 * when it is made; only its SHA-256 is kept.
 */
export const LoggerRecordSchema = Type.Object(
  {
    id: Id("The logger."),
    kilnId: Id("The kiln."),
    probe: Name("The probe it reads, as on the kiln."),
    name: Name("What she calls it."),
    tokenHash: Type.String({ minLength: 64, maxLength: 64, description: "SHA-256 of its token, in hexadecimal." }),
    ...stamps,
  },
  { additionalProperties: false },
);
export type LoggerRecord = Static<typeof LoggerRecordSchema>;

export const LOGGERS: RecordKind<typeof LoggerRecordSchema> = {
  name: "loggers",
  one: "logger",
  schema: LoggerRecordSchema,
  refersTo: { kilnId: "kilns" },
  versioned: false,
  check: ({ tokenHash }) => {
    if (/^[0-9a-f]{64}$/.test(tokenHash)) return;
    const expected = "64 hexadecimal digits, small letters";
    throw new BadInput({ code: "not-a-hash", path: "tokenHash", found: "other characters", expected });
  },
};

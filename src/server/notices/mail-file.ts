import { existsSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type Static, Type } from "typebox";
import { BadInput } from "../../measures/bad-input.ts";
import { readBySchema } from "../../measures/read-schema.ts";

/** The mail server that notices are sent by. Its password stands in this one file and goes nowhere else. */
export const MailSchema = Type.Object(
  {
    host: Type.String({ minLength: 1, maxLength: 253, description: "The mail server's name." }),
    port: Type.Integer({ minimum: 1, maximum: 65535, description: "465 where all of it is encrypted, else 587." }),
    user: Type.String({ maxLength: 254, description: "Who sends; empty where the server asks for nobody." }),
    password: Type.String({ maxLength: 1000 }),
    from: Type.String({ minLength: 3, maxLength: 254, description: "The address they come from." }),
  },
  { additionalProperties: false },
);
export type Mail = Static<typeof MailSchema>;

const fileOf = (dataFolder: string): string => join(dataFolder, "mail.json");
const READABLE_BY_OTHERS = 0o077;

/**
 * The mail server as it was set, or null where none was.
 *
 * @throws BadInput where the file is spoilt, or others of this machine may read it
 */
export function readMail(dataFolder: string): Mail | null {
  const file = fileOf(dataFolder);
  if (!existsSync(file)) return null;
  if (process.platform !== "win32" && (statSync(file).mode & READABLE_BY_OTHERS) !== 0) {
    throw new BadInput({
      code: "open-password",
      path: file,
      found: "a file that others of this machine may read",
      expected: `one that is hers alone: chmod 600 "${file}"`,
    });
  }
  return checkMail(fromJson(readFileSync(file, "utf8"), file), file);
}

/** Keeps the mail server, for her alone to read. @throws BadInput naming the field */
export function writeMail(dataFolder: string, mail: Mail): void {
  const file = fileOf(dataFolder);
  const beside = `${file}.${process.pid}`;
  writeFileSync(beside, `${JSON.stringify(checkMail(mail, ""), null, 2)}\n`, { mode: 0o600 });
  renameSync(beside, file);
}

/** Forgets it. */
export function removeMail(dataFolder: string): void {
  rmSync(fileOf(dataFolder), { force: true });
}

function checkMail(value: unknown, path: string): Mail {
  const mail = readBySchema(MailSchema, value, path);
  const refuse = (field: string, expected: string): never => {
    throw new BadInput({
      code: "wrong-mail",
      path: path === "" ? field : `${path}.${field}`,
      found: "others",
      expected,
    });
  };
  if (!/^[a-z0-9.:_-]+$/i.test(mail.host)) refuse("host", "a server's name such as mail.example.org");
  if (!/^[^\s@<>]+@[^\s@<>]+$/.test(mail.from)) refuse("from", "an address such as kiln@example.org");
  return mail;
}

function fromJson(text: string, path: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new BadInput({ code: "not-json", path, found: "no JSON", expected: "the file as Wareboard wrote it" });
  }
}

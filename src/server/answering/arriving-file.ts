import { randomUUID } from "node:crypto";
import { createWriteStream } from "node:fs";
import { readFile, rm } from "node:fs/promises";
import { join } from "node:path";
import { type Readable, Transform } from "node:stream";
import { pipeline } from "node:stream/promises";
import { Refusal } from "./refusals.ts";

/**
 * Lets an upload come in through a file, so that a slow or broken one takes no memory, and uses its bytes once it is
 * whole. The file is gone afterwards, whatever happened.
 *
 * @param mostBytes what it may weigh; more is refused as soon as it is seen
 */
export async function withArrived<Result>(
  upload: Readable,
  folder: string,
  mostBytes: number,
  use: (bytes: Uint8Array) => Promise<Result>,
): Promise<Result> {
  const file = join(folder, `${randomUUID()}.part`);
  let arrived = 0;
  const held = new Transform({
    transform: (part: Buffer, _encoding, done) => {
      arrived += part.length;
      done(arrived > mostBytes ? tooLarge(mostBytes) : null, part);
    },
  });
  try {
    await pipeline(upload, held, createWriteStream(file, { mode: 0o600 }));
    return await use(new Uint8Array(await readFile(file)));
  } finally {
    await rm(file, { force: true });
  }
}

/** Refuses by what a request says of its length, before any of it is read. */
export function refuseLongUpload(length: string | undefined, mostBytes: number): void {
  if (length !== undefined && Number(length) > mostBytes) throw tooLarge(mostBytes);
}

const tooLarge = (mostBytes: number): Refusal =>
  new Refusal(413, {
    code: "too-large",
    path: "",
    found: "a larger file",
    expected: `at most ${Math.round(mostBytes / 1024 / 1024)} MB`,
  });

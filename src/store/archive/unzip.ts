import { crc32 } from "node:zlib";
import { type Entry, fromBufferPromise, type ZipFile } from "yauzl";
import { BadInput } from "../../measures/bad-input.ts";

const MOST_ENTRIES = 100_000;

/**
 * Unpacks a zip file in memory. Nothing is written anywhere; the names are only looked up.
 *
 * @param mostBytes what all of it unpacked may weigh; what the file declares is asked first, what really comes out is
 *   held to what was declared
 * @throws BadInput for a file that is no zip, is cut off or spoilt, holds a name that leads out of it or stands twice,
 *   or unpacks to more than it may
 */
export async function unzip(bytes: Uint8Array, mostBytes: number): Promise<Map<string, Uint8Array>> {
  const zip = await inOurWords(() => fromBufferPromise(asBuffer(bytes), { strictFileNames: true }));
  if (zip.entryCount > MOST_ENTRIES) {
    throw notAnArchive(`${zip.entryCount} entries`, `at most ${MOST_ENTRIES}`);
  }
  const entries = await inOurWords(() => listed(zip));
  const declared = entries.reduce((sum, entry) => sum + entry.uncompressedSize, 0);
  if (declared > mostBytes) {
    throw notAnArchive(`${declared} bytes when unpacked`, `at most ${mostBytes}`, "too-large");
  }
  const files = new Map<string, Uint8Array>();
  for (const entry of entries) {
    if (files.has(entry.fileName)) throw notAnArchive(`the entry "${entry.fileName}" twice`, "each entry once");
    const content = await inOurWords(() => unpacked(zip, entry));
    if (crc32(content) !== entry.crc32) {
      throw notAnArchive(`a spoilt entry "${entry.fileName}": its checksum is wrong`, "the file as it was written");
    }
    files.set(entry.fileName, content);
  }
  return files;
}

async function listed(zip: ZipFile): Promise<Entry[]> {
  const entries: Entry[] = [];
  for await (const entry of zip.eachEntry()) if (!entry.fileName.endsWith("/")) entries.push(entry);
  return entries;
}

async function unpacked(zip: ZipFile, entry: Entry): Promise<Uint8Array> {
  const parts: Buffer[] = [];
  for await (const part of await zip.openReadStreamPromise(entry)) parts.push(part as Buffer);
  return new Uint8Array(Buffer.concat(parts));
}

const asBuffer = (bytes: Uint8Array): Buffer => Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/** The zip library's complaints are for programmers; each becomes one refusal. */
async function inOurWords<Result>(work: () => Promise<Result>): Promise<Result> {
  try {
    return await work();
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw notAnArchive(`a file that does not unpack (${why})`, "a studio's archive, whole and as it was written");
  }
}

const notAnArchive = (found: string, expected: string, code = "not-an-archive"): BadInput =>
  new BadInput({ code, path: "archive", found, expected });

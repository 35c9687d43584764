import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { strFromU8, strToU8, unzipSync, type Zippable, zipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { BadInput } from "../../measures/bad-input.ts";
import type { StudioStore } from "../../studio/records/store.ts";
import { restoreBackup } from "../backups.ts";
import { sqlitePlace } from "../testing/places.ts";
import { everything, fillStudio, LATER } from "../testing/sample-records.ts";
import { readArchive } from "./read-archive.ts";
import { writeArchive } from "./write-archive.ts";

const place = sqlitePlace();
const folder = mkdtempSync(join(tmpdir(), "studio-backups-"));
let store: StudioStore;
let good: Uint8Array<ArrayBufferLike>;
beforeAll(async () => {
  store = await place.openEmpty();
  await store.write(fillStudio);
  good = await writeArchive(store, LATER);
});
afterAll(async () => {
  await store.close();
  await place.end();
  rmSync(folder, { recursive: true });
});

type Card = Record<string, unknown> &
  Record<"ware" | "loads" | "pictures" | "readings" | "photos", Record<string, unknown>[]>;

/** The good archive, packed again after a change to its entries. */
const packed = (change: (files: Zippable) => void): Uint8Array => {
  const files: Zippable = { ...unzipSync(good) };
  change(files);
  return zipSync(files);
};
/** The good archive with its card changed. */
const carded = (change: (card: Card) => void): Uint8Array =>
  packed((files) => {
    const card = JSON.parse(strFromU8(files["studio.json"] as Uint8Array));
    change(card);
    files["studio.json"] = strToU8(JSON.stringify(card));
  });
const entry = (name: string, content: Uint8Array | string = "x"): Uint8Array =>
  packed((files) => {
    files[name] = typeof content === "string" ? strToU8(content) : content;
  });

/** Restores what should not be, and gives the refusal once it is sure that nothing was touched or written. */
async function refusalOf(bytes: Uint8Array): Promise<BadInput> {
  const before = await store.read(everything);
  const error = await restoreBackup(store, bytes, folder, LATER).then(
    () => expect.unreachable("it was restored"),
    (reason: unknown) => reason,
  );
  expect(error).toBeInstanceOf(BadInput);
  expect(await store.read(everything)).toEqual(before);
  expect(readdirSync(folder)).toEqual([]);
  return error as BadInput;
}

describe("an archive that is not sound changes nothing and gets one clear error:", () => {
  test.each(["../evil.txt", "photos/../../evil.txt", "/etc/passwd", "C:/evil.txt", "photos\\..\\..\\evil.txt"])(
    "a name that leads out of it: %s",
    async (name) => {
      expect(await refusalOf(entry(name))).toMatchObject({ code: "not-an-archive", path: "archive" });
    },
  );

  test("an entry that its card does not name", async () => {
    expect(await refusalOf(entry("photos/stowaway.png"))).toMatchObject({
      code: "unknown-entry",
      found: '"photos/stowaway.png"',
    });
  });

  test("an entry that its card names and it does not hold", async () => {
    const lost = packed((files) => void delete files["photos/photo-1.png"]);
    expect(await refusalOf(lost)).toMatchObject({ code: "missing-entry", found: 'no entry "photos/photo-1.png"' });
    const noCard = packed((files) => void delete files["studio.json"]);
    expect(await refusalOf(noCard)).toMatchObject({ code: "missing-entry", found: 'no entry "studio.json"' });
  });

  test("a card that sends for files elsewhere, or for one twice", async () => {
    const picture = (file: string) => carded((card) => void Object.assign(card.pictures[0] ?? {}, { file }));
    expect(await refusalOf(picture("../../etc/passwd"))).toMatchObject({
      code: "wrong-entry",
      path: 'photo "photo-1"',
    });
    expect(await refusalOf(picture("photos/photo-2.png"))).toMatchObject({ code: "wrong-entry" });
    const readings = carded((card) => void Object.assign(card.readings[1] ?? {}, { file: "readings/0001.csv" }));
    expect(await refusalOf(readings)).toMatchObject({ code: "wrong-entry", path: "readings[1].file" });
  });

  test("more than it may hold, by what it declares", async () => {
    const refused = readArchive(entry("zeros", new Uint8Array(3_000_000)), 2_000_000);
    await expect(refused).rejects.toMatchObject({ code: "too-large", expected: "at most 2000000" });
  });

  test("more than it declares, by what really comes out", async () => {
    const bomb = entry("zeros", new Uint8Array(50_000_000));
    declareSize(bomb, "zeros", 1000);
    const refused = readArchive(bomb, 2_000_000);
    await expect(refused).rejects.toMatchObject({
      code: "not-an-archive",
      found: expect.stringMatching(/too many bytes/),
    });
  });

  test("less than it declares", async () => {
    const short = entry("zeros", new Uint8Array(1000));
    declareSize(short, "zeros", 1_000_000);
    expect(await refusalOf(short)).toMatchObject({ code: "not-an-archive" });
  });

  test("one name twice", async () => {
    const two = entry("readings/0003.csv");
    for (let at = 0; at < two.length - 17; at++) {
      if (strFromU8(two.subarray(at, at + 17)) === "readings/0003.csv") two[at + 12] = "2".charCodeAt(0);
    }
    expect(await refusalOf(two)).toMatchObject({
      code: "not-an-archive",
      found: 'the entry "readings/0002.csv" twice',
    });
  });

  test("another version", async () => {
    const newer = carded((card) => void Object.assign(card, { format: "studio-archive/2", somethingNew: [] }));
    expect(await refusalOf(newer)).toMatchObject({ code: "other-version", path: "format", found: "studio-archive/2" });
    const other = carded((card) => void Object.assign(card, { format: "load-plan/1" }));
    expect(await refusalOf(other)).toMatchObject({ code: "wrong-value", path: "format" });
  });

  test.each<[string, (card: Card) => void, object]>([
    ["an unknown field", (card) => Object.assign(card, { kiln: [] }), { code: "unknown-field", path: "kiln" }],
    [
      "an unknown field of a record",
      (card) => Object.assign(card.ware[0] ?? {}, { colour: "red" }),
      { code: "unknown-field", path: "ware[0].colour" },
    ],
    ["a missing list", (card) => delete (card as Partial<Card>).notes, { code: "missing-field", path: "notes" }],
    [
      "an impossible day",
      (card) => Object.assign(card.ware[0] ?? {}, { dueOn: "2026-02-30" }),
      { code: "not-a-day", path: 'ware "ware-1".dueOn' },
    ],
    ["an id that is a path", (card) => Object.assign(card.photos[0] ?? {}, { id: "../x" }), { code: "not-an-id" }],
    [
      "an id twice",
      (card) => Object.assign(card.ware[1] ?? {}, { id: "ware-1" }),
      { code: "id-taken", path: 'ware "ware-1"' },
    ],
    [
      "a reference to nothing",
      (card) => Object.assign(card.ware[0] ?? {}, { glazeId: "nobody" }),
      { code: "missing-reference", path: 'ware "ware-1".glazeId' },
    ],
    [
      "readings of no firing",
      (card) => Object.assign(card.readings[0] ?? {}, { firingId: "nobody" }),
      { code: "missing-reference" },
    ],
    [
      "a probe's readings twice",
      (card) => Object.assign(card.readings[1] ?? {}, { probe: card.readings[0]?.probe }),
      { code: "id-taken" },
    ],
    [
      "a picture of no photo",
      (card) => card.pictures.push({ photoId: "nobody", file: "photos/x.png" }),
      { code: "missing-reference", path: "pictures" },
    ],
    [
      "a tick where nothing stands",
      (card) => Object.assign(card.loads[0] ?? {}, { pins: [{ level: 3, placement: 0 }] }),
      { code: "unknown-place", path: 'load "load-1".pins[0]' },
    ],
    [
      "a moment that is none",
      (card) => Object.assign(card, { madeAt: "yesterday" }),
      { code: "not-a-moment", path: "madeAt" },
    ],
  ])("%s", async (_, change, facts) => {
    expect(await refusalOf(carded(change))).toMatchObject(facts);
  });

  test.each([
    ["a heading of its own", "at,temp\n", "wrong-heading"],
    ["a temperature that is none", "time,tempC\n2026-11-20T08:31:00.000Z,hot\n", "not-a-number"],
    ["a lost temperature", "time,tempC\n2026-11-20T08:31:00.000Z,\n", "not-a-number"],
    ["a row of three cells", "time,tempC\n2026-11-20T08:31:00.000Z,1,2\n", "not-csv"],
    ["time running backwards", "time,tempC\n2026-11-20T08:31:00.000Z,1\n2026-11-20T08:30:00.000Z,2\n", "wrong-order"],
    ["an impossible temperature", "time,tempC\n2026-11-20T08:31:00.000Z,99999\n", "out-of-range"],
  ])("readings with %s", async (_, csv, code) => {
    const refused = await refusalOf(entry("readings/0001.csv", csv));
    expect(refused.code).toBe(code);
    expect(refused.path).toContain("readings/0001.csv");
  });

  test("a picture that is a page, a card that is not text, a file that is no zip, an empty one", async () => {
    expect(await refusalOf(entry("photos/photo-1.png", "<script>".padEnd(15)))).toMatchObject({
      code: "wrong-picture",
    });
    expect(await refusalOf(entry("studio.json", Uint8Array.of(0xff, 0xfe)))).toMatchObject({ code: "not-text" });
    expect(await refusalOf(entry("studio.json", "{"))).toMatchObject({ code: "cut-off" });
    expect(await refusalOf(strToU8("a letter to a friend"))).toMatchObject({ code: "not-an-archive" });
    expect(await refusalOf(new Uint8Array())).toMatchObject({ code: "not-an-archive" });
  });

  test("cut off anywhere", async () => {
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 0, max: good.length - 1 }), async (length) => {
        await expect(readArchive(good.subarray(0, length))).rejects.toBeInstanceOf(BadInput);
      }),
      { numRuns: 200, seed: 11 },
    );
  });

  test("a bit the wrong way round, anywhere: refused, or in a place that carries nothing", async () => {
    const sound = await readArchive(good);
    let refused = 0;
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 0, max: good.length * 8 - 1 }), async (bit) => {
        const spoilt = good.slice();
        spoilt[bit >> 3] = (spoilt[bit >> 3] as number) ^ (1 << (bit & 7));
        try {
          expect(await readArchive(spoilt)).toEqual(sound);
        } catch (error) {
          expect(error).toBeInstanceOf(BadInput);
          refused++;
        }
      }),
      { numRuns: 600, seed: 11 },
    );
    expect(refused).toBeGreaterThan(400);
  });
});

/** Changes an entry's unpacked size in the zip's central directory (PKWARE's APPNOTE 4.3.12: at 24, the name at 46). */
function declareSize(zip: Uint8Array, name: string, size: number): void {
  const view = new DataView(zip.buffer, zip.byteOffset, zip.byteLength);
  for (let at = 0; at < zip.length - 46; at++) {
    const isHeader = view.getUint32(at, true) === 0x02014b50;
    if (isHeader && strFromU8(zip.subarray(at + 46, at + 46 + name.length)) === name) {
      view.setUint32(at + 24, size, true);
      return;
    }
  }
  throw new Error(`No entry ${name}.`);
}

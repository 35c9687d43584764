import { existsSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Readable } from "node:stream";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readArchive } from "../../store/archive/read-archive.ts";
import { note } from "../../store/testing/sample-records.ts";
import type { StudioEvent } from "../../studio/api/contract.ts";
import { arrivingFolder, backupFolder } from "../running/data-folder.ts";
import { type TestStudio, testStudio } from "../testing/test-studio.ts";

const ZIP = { "content-type": "application/zip" };
let studio: TestStudio;
beforeAll(async () => {
  studio = await testStudio();
});
afterAll(() => studio.end());

const keep = (id: string, text = "a word") => studio.store.write((records) => records.notes.add(note(id, { text })));
const kept = async () => (await studio.store.read((records) => records.notes.list())).map(({ id }) => id).sort();

describe("the whole studio in one file", () => {
  test("what is fetched is a sound archive, and put back it brings back what was there", async () => {
    await keep("first");
    const fetched = await studio.ask("GET", "/archive");
    expect(fetched.headers["content-disposition"]).toMatch(/^attachment; filename="wareboard-studio-2026-11-25\.zip"/);
    const content = await readArchive(new Uint8Array(fetched.rawPayload));
    expect(content.notes.map(({ id }) => id)).toEqual(["first"]);

    await keep("second");
    const put = await studio.ask("POST", "/archive", { headers: ZIP, payload: fetched.rawPayload });
    expect(put.statusCode).toBe(200);
    expect(await kept()).toEqual(["first"]);
    const { saved } = put.json() as { saved: string };
    expect(saved).toMatch(/-before-restore\.zip$/);

    const back = await studio.ask("POST", `/backups/${saved}/restore`);
    expect(back.statusCode).toBe(200);
    expect(await kept()).toEqual(["first", "second"]);
  });

  test("a file that is no archive changes nothing, and nothing of it stays", async () => {
    const before = await kept();
    const put = await studio.ask("POST", "/archive", { headers: ZIP, payload: Buffer.from("PK no zip") });
    expect(put.statusCode).toBe(400);
    expect(await kept()).toEqual(before);
    expect(readdirSync(arrivingFolder(studio.folder))).toEqual([]);
  });

  test("an archive that says it is larger than one may be is refused before it is read", async () => {
    const headers = { ...ZIP, "content-length": String(1024 ** 3 + 1) };
    const put = await studio.ask("POST", "/archive", { headers, payload: Readable.from([]) });
    expect(put.statusCode).toBe(413);
    expect(put.json().error.code).toBe("too-large");
  });

  test("every open browser is told of what was there and what is there now", async () => {
    const empty = await testStudio();
    const archive = (await empty.ask("GET", "/archive")).rawPayload;
    await empty.end();
    const address = await studio.app.listen({ port: 0, host: "127.0.0.1" });
    const events = await fetch(`${address}/api/events`);
    const reader = (events.body as ReadableStream<Uint8Array>).getReader();
    const was = await kept();
    await studio.ask("POST", "/archive", { headers: ZIP, payload: archive });
    let heard = "";
    while (!heard.includes("data:")) heard += new TextDecoder().decode((await reader.read()).value);
    await reader.cancel();
    const event = JSON.parse(/data: (.*)\n/.exec(heard)?.[1] as string) as StudioEvent;
    expect([...(event.changed.notes ?? [])].sort()).toEqual(was);
    expect(event.settingsChanged).toBe(true);
  });
});

describe("backups", () => {
  test("one is written when asked, and stands first in the list", async () => {
    await keep("third");
    const made = (await studio.ask("POST", "/backups")).json() as { name: string };
    const list = (await studio.ask("GET", "/backups")).json() as { name: string }[];
    expect(list[0]).toEqual(made);
    expect(existsSync(join(backupFolder(studio.folder), made.name))).toBe(true);
  });

  test("no name leads out of their folder", async () => {
    const archive = (await studio.ask("GET", "/archive")).rawPayload;
    writeFileSync(join(studio.folder, "studio-2026-01-01T000000.000Z.zip"), archive);
    const names = [
      "..%2Fstudio-2026-01-01T000000.000Z.zip",
      "%2e%2e%2fstudio-2026-01-01T000000.000Z.zip",
      "..%5Cstudio-2026-01-01T000000.000Z.zip",
      "studio-2026-01-01T000000.000Z.zip",
      "server-key",
      "%00",
    ];
    for (const name of names) {
      const answer = await studio.ask("POST", `/backups/${name}/restore`);
      expect([name, answer.statusCode]).toEqual([name, 404]);
    }
  });
});

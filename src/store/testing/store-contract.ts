import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import type { StudioStore } from "../../studio/records/store.ts";
import { applyWareImport } from "../../studio/records/ware-csv/apply-ware-import.ts";
import { previewWareImport } from "../../studio/records/ware-csv/preview-ware-import.ts";
import { writeWareCsv } from "../../studio/records/ware-csv/write-ware-csv.ts";
import * as sample from "./sample-records.ts";

/** A database to hold the contract against. */
export interface ContractPlace {
  /** Opens a second store on the place of the first one. */
  readonly reopen: (store: StudioStore) => Promise<StudioStore>;
  /** Opens a store where nothing has been kept yet. */
  readonly openEmpty: () => Promise<StudioStore>;
  /** Runs one statement past the store, as another program or a fault would. */
  readonly tamper: (store: StudioStore, statement: string) => Promise<void>;
}

const refusal = (code: string, path?: string) =>
  expect.objectContaining(path === undefined ? { code } : { code, path });

/** What every database has to do, whichever it is. */
export function storeContract(name: string, place: () => ContractPlace): void {
  describe(`the studio's store on ${name}`, () => {
    let store: StudioStore;
    beforeAll(async () => {
      store = await place().openEmpty();
    });
    beforeEach(() => store.write((records) => records.clear()));
    afterAll(() => store?.close());
    const look = () => store.read(sample.everything);

    test("gives back every record as it was given, after closing and opening too", async () => {
      await store.write(sample.fillStudio);
      const kept = await look();
      expect(kept.kilns).toEqual([sample.kiln(), { ...sample.kiln("kiln-2"), rules: {} }]);
      expect(kept.glazes[0]).toEqual(sample.glaze());
      expect(kept.glazes[1]?.runs).toBe(false);
      expect(kept.ware).toEqual([sample.ware(), sample.plainWare("ware-2")]);
      expect(kept.loads[0]).toEqual(sample.load());
      expect(kept.loads[1]).toMatchObject({ plan: null, version: 7, takenBack: [], alternativeOf: "load-1" });
      expect(kept.loads[0]).not.toHaveProperty("alternativeOf");
      expect(kept.firings[0]).toEqual(sample.firing());
      expect(kept.firings[2]).toEqual(sample.wholeFiring());
      for (const name of ["plannedStartAt", "foretold", "outcomes"]) expect(kept.firings[0]).not.toHaveProperty(name);
      expect(kept.programmes).toEqual([sample.programme()]);
      expect(kept.calibrations[0]).toEqual(sample.calibration());
      expect(kept.calibrations[1]?.learned).toEqual(sample.LEARNED);
      expect(kept.upkeep[0]).toEqual(sample.upkeep());
      expect(kept.upkeep[1]).toMatchObject({ what: "shelf washed", count: 4 });
      expect(kept.loggers).toEqual([sample.logger()]);
      expect(kept.readings).toEqual([
        { firingId: "firing-1", probe: "lid", readings: sample.READINGS.slice(0, 1) },
        { firingId: "firing-1", probe: "thermocouple", readings: sample.READINGS },
      ]);
      expect(kept.notes[0]).toEqual(sample.note());
      expect(kept.photos[0]).toEqual(sample.photo());
      expect(kept.pictures).toEqual([[...sample.PICTURE], [...sample.PICTURE]]);
      const again = await place().reopen(store);
      expect(await again.read(sample.everything)).toEqual(kept);
      await again.close();
    });

    test("lists the oldest first, then by id in the order of codes, whatever the language", async () => {
      const made = (id: string, createdAt: string) => sample.plainWare(id, { createdAt });
      await store.write((records) =>
        records.ware.add(
          made("b", sample.MOMENT),
          made("_", sample.MOMENT),
          made("C", sample.MOMENT),
          made("a", sample.MOMENT),
          made("z", "2025-01-01T00:00:00.000Z"),
        ),
      );
      const ids = (await store.read((records) => records.ware.list())).map(({ id }) => id);
      expect(ids).toEqual(["z", "C", "_", "a", "b"]);
    });

    test("finds by plain fields, empty ones and flags too", async () => {
      await store.write(sample.fillStudio);
      const ids = (list: { id: string }[]) => list.map(({ id }) => id);
      await store.read(async (records) => {
        expect(ids(await records.ware.list({ stage: "glazed", dueOn: null }))).toEqual(["ware-2"]);
        expect(ids(await records.ware.list({ stage: "greenware" }))).toEqual([]);
        expect(ids(await records.glazes.list({ runs: true }))).toEqual(["glaze-1"]);
        expect(ids(await records.notes.list({ aboutKind: "firings", aboutId: "firing-1" }))).toEqual(["note-1"]);
        expect(await records.ware.get("nobody")).toBeNull();
        expect(await records.photos.picture("nobody")).toBeNull();
        await expect(records.ware.list({ ware: "x" } as object)).rejects.toThrow("cannot be asked for by ware");
      });
    });

    test("a write is all or nothing", async () => {
      await store.write(sample.fillStudio);
      const before = await look();
      const broken = store.write(async (records) => {
        await records.ware.remove("ware-2");
        await records.notes.add(sample.note("note-3"));
        throw new Error("the kettle boiled over");
      });
      await expect(broken).rejects.toThrow("the kettle boiled over");
      expect(await look()).toEqual(before);
    });

    test("of a list with one bad record none is kept, and a refusal that is caught spoils nothing", async () => {
      await store.write(async (records) => {
        const wrong = { ...sample.plainWare("w2"), dueOn: "2026-02-30" };
        await expect(records.ware.add(sample.plainWare("w1"), wrong)).rejects.toEqual(
          refusal("not-a-day", 'ware "w2".dueOn'),
        );
        await records.ware.add(sample.plainWare("w3"));
      });
      expect((await look()).ware.map(({ id }) => id)).toEqual(["w3"]);
    });

    test("an id is used once", async () => {
      const twice = [sample.plainWare("w1"), sample.plainWare("w1")];
      await expect(store.write((records) => records.ware.add(...twice))).rejects.toEqual(
        refusal("id-taken", 'ware "w1"'),
      );
      await store.write((records) => records.ware.add(sample.plainWare("w1")));
      await expect(store.write((records) => records.ware.add(sample.plainWare("w1")))).rejects.toEqual(
        refusal("id-taken"),
      );
    });

    test("what a record refers to must be there, when it is kept and as long as it is", async () => {
      const orphan = store.write((records) => records.ware.add(sample.ware()));
      await expect(orphan).rejects.toEqual(refusal("missing-reference", 'ware "ware-1".clayBodyId'));
      await store.write(sample.fillStudio);
      const change = sample.ware("ware-1", { glazeId: "nobody" });
      await expect(store.write((records) => records.ware.change(change))).rejects.toEqual(
        refusal("missing-reference", 'ware "ware-1".glazeId'),
      );
      for (const [kind, id, path] of [
        ["kilns", "kiln-1", 'kiln "kiln-1"'],
        ["clayBodies", "clay-1", 'clay body "clay-1"'],
        ["glazes", "glaze-1", 'glaze "glaze-1"'],
        ["loads", "load-1", 'load "load-1"'],
      ] as const) {
        await expect(store.write((records) => records[kind].remove(id))).rejects.toEqual(refusal("still-in-use", path));
      }
    });

    test("the database itself holds references too", async () => {
      await store.write(sample.fillStudio);
      await expect(place().tamper(store, `delete from "kilns" where "id" = 'kiln-1'`)).rejects.toThrow(/foreign key/i);
      await expect(
        place().tamper(store, `update "firings" set "loadId" = 'nobody' where "id" = 'firing-1'`),
      ).rejects.toThrow(/foreign key/i);
    });

    test("a firing takes its readings with it, a photo its picture; notes stay", async () => {
      await store.write(sample.fillStudio);
      await store.write(async (records) => {
        await records.firings.remove("firing-1");
        await records.photos.remove("photo-1");
        expect(await records.readings.of("firing-1")).toEqual([]);
        expect(await records.photos.picture("photo-1")).toBeNull();
        expect(await records.notes.get("note-1")).toEqual(sample.note());
      });
      await expect(store.write((records) => records.firings.remove("firing-1"))).rejects.toEqual(
        refusal("unknown-record", 'firing "firing-1"'),
      );
    });

    test("a load is changed from the version it was read at, and from no other", async () => {
      await store.write(sample.fillStudio);
      const first = await store.read((records) => records.loads.get("load-1"));
      const changed = { ...sample.load(), name: "after the market" };
      const kept = await store.write((records) => records.loads.change(changed));
      expect(kept).toEqual({ ...changed, version: 2 });
      const stale = store.write((records) => records.loads.change({ ...sample.load(), ...first }));
      await expect(stale).rejects.toEqual(refusal("changed-since", 'load "load-1".version'));
      expect(await store.read((records) => records.loads.get("load-1"))).toEqual(kept);
      const unknown = store.write((records) => records.loads.change(sample.load("nobody")));
      await expect(unknown).rejects.toEqual(refusal("unknown-record"));
    });

    test("readings of a moment are kept once, the last one; `since` leaves out what is older", async () => {
      await store.write(sample.fillStudio);
      const [first, second, third] = sample.READINGS;
      await store.write(async (records) => {
        await records.readings.add("firing-1", "lid", [first, { ...second, tempC: 30 }, { ...second, tempC: 31 }]);
        await records.readings.add("firing-1", "lid", [third, first]);
      });
      const series = await store.read((records) => records.readings.of("firing-1", second.at));
      expect(series).toEqual([
        { firingId: "firing-1", probe: "lid", readings: [{ ...second, tempC: 31 }, third] },
        { firingId: "firing-1", probe: "thermocouple", readings: [second, third] },
      ]);
      const unknown = store.write((records) => records.readings.add("nobody", "lid", [first]));
      await expect(unknown).rejects.toEqual(refusal("unknown-record"));
      const lost = store.write((records) => records.readings.add("firing-1", "lid", [{ ...first, tempC: Number.NaN }]));
      await expect(lost).rejects.toEqual(refusal("out-of-range", "readings[0].tempC"));
    });

    test("keeps a day's readings of three probes, and a long list of ware, in more than one statement", async () => {
      await store.write(sample.fillStudio);
      const moment = (minute: number) => new Date(Date.parse(sample.MOMENT) + minute * 60_000).toISOString();
      const long = Array.from({ length: 4500 }, (_, minute) => ({ at: moment(minute), tempC: 20 + minute / 7 }));
      const many = Array.from({ length: 2500 }, (_, i) => sample.ware(`many-${String(i).padStart(4, "0")}`));
      await store.write(async (records) => {
        await records.readings.add("firing-2", "middle", long);
        await records.ware.add(...many);
      });
      const series = await store.read((records) => records.readings.of("firing-2"));
      expect(series).toEqual([{ firingId: "firing-2", probe: "middle", readings: long }]);
      const kept = await store.read((records) => records.ware.list({ clayBodyId: "clay-1" }));
      expect(kept).toHaveLength(2501);
    });

    test("text no database keeps as it is, is refused; every other is kept", async () => {
      for (const text of ["a\0b", "half \ud83c"]) {
        const bad = store.write((records) => records.notes.add(sample.note("n", { text })));
        await expect(bad).rejects.toEqual(refusal("not-text", 'note "n".text'));
      }
      const odd = '\'; drop table "ware"; -- % _ \\ \u200f 🏺\r\n\t';
      await store.write((records) => records.notes.add(sample.note("n", { text: odd })));
      expect((await look()).notes[0]?.text).toBe(odd);
    });

    test("a picture must be what its card says", async () => {
      const add = (changes: object, bytes: Uint8Array = sample.PICTURE) =>
        store.write((records) => records.photos.add(sample.photo("p", changes), bytes));
      await expect(add({ mediaType: "image/jpeg" })).rejects.toEqual(refusal("wrong-picture", 'photo "p".mediaType'));
      await expect(add({ byteLength: 3 })).rejects.toEqual(refusal("wrong-length", 'photo "p".byteLength'));
      const page = new TextEncoder().encode("<svg onload=alert(1)>");
      await expect(add({ byteLength: page.length }, page)).rejects.toEqual(refusal("wrong-picture"));
      await add({});
      const grown = store.write((records) => records.photos.change(sample.photo("p", { byteLength: 3 })));
      await expect(grown).rejects.toEqual(refusal("wrong-length"));
    });

    test.each([
      ["ware", `update "ware" set "ware" = '{"name":"bowl"' where "id" = 'ware-2'`, 'ware "ware-2".ware'],
      ["ware", `update "ware" set "ware" = '{"name":"bowl"}' where "id" = 'ware-2'`, 'ware "ware-2".ware.count'],
      ["ware", `update "ware" set "stage" = 'molten' where "id" = 'ware-2'`, 'ware "ware-2".stage'],
      ["ware", `update "ware" set "dueOn" = 'soon' where "id" = 'ware-2'`, 'ware "ware-2".dueOn'],
      ["glazes", `update "glazes" set "runs" = 2 where "id" = 'glaze-1'`, 'glaze "glaze-1".runs'],
    ] as const)("a row spoilt from outside gets one clear error (%s, %s)", async (kind, statement, path) => {
      await store.write(sample.fillStudio);
      await place().tamper(store, statement);
      const listed = () => store.read<unknown>((records) => records[kind].list());
      await expect(listed()).rejects.toEqual(refusal("corrupt-row", path));
      await expect(listed()).rejects.toThrow("restore a backup");
    });

    test("a reader sees the studio as it was at one moment, though another writes meanwhile", async () => {
      await store.write(sample.fillStudio);
      const other = await place().reopen(store);
      await store.read(async (records) => {
        const before = await records.notes.list();
        await other.write((others) => others.notes.add(sample.note("meanwhile")));
        expect(await records.notes.list()).toEqual(before);
      });
      expect(await store.read((records) => records.notes.get("meanwhile"))).not.toBeNull();
      await other.close();
    });

    test("writers take turns: of many that count one up at once, none is lost", async () => {
      await store.write(sample.fillStudio);
      const up = () =>
        store.write(async (records) => {
          const load = await records.loads.get("load-1");
          if (load) await records.loads.change(load);
        });
      await Promise.all(Array.from({ length: 12 }, up));
      expect((await store.read((records) => records.loads.get("load-1")))?.version).toBe(13);
    });

    test("an import of ware does what its preview said; one that was overtaken does nothing", async () => {
      await store.write(sample.fillStudio);
      let ids = 0;
      const preview = (text: string) =>
        store.read(async (records) =>
          previewWareImport(text, {
            ware: await records.ware.list(),
            clayBodies: await records.clayBodies.list(),
            glazes: await records.glazes.list(),
            stage: "greenware",
            newId: () => `new-${++ids}`,
            now: sample.LATER,
          }),
        );
      const text =
        "id,name,count,diameterMm,heightMm\nware-1,espresso cup,4,70,65.5\n,jar,3,90,100\n,jar,none,90,100\n";
      const [first, second] = [await preview(text), await preview(text)];
      expect(first.rows.map(({ what }) => what)).toEqual(["changed", "new", "refused"]);
      await store.write((records) => applyWareImport(records, first));
      const after = (await look()).ware;
      expect(after.map(({ id, ware }) => [id, ware.name, ware.count])).toEqual([
        ["ware-1", "espresso cup", 4],
        ["ware-2", "bowl", 2],
        ["new-1", "jar", 3],
      ]);
      await expect(store.write((records) => applyWareImport(records, second))).rejects.toEqual(
        refusal("changed-since"),
      );
      expect((await look()).ware).toEqual(after);
      expect((await preview(await listed())).rows.map(({ what }) => what)).toEqual(["same", "same", "same"]);
    });
    const listed = () =>
      store.read(async (records) =>
        writeWareCsv(await records.ware.list(), {
          clayBodies: await records.clayBodies.list(),
          glazes: await records.glazes.list(),
        }),
      );

    test("looking changes nothing", async () => {
      await store.write(sample.fillStudio);
      const before = await look();
      await expect(store.read((records) => records.notes.remove("note-1"))).rejects.toThrow(/read.?only/i);
      expect(await look()).toEqual(before);
    });

    test("knows whether anything is kept, a note alone too", async () => {
      const empty = () => store.read((records) => records.isEmpty());
      expect(await empty()).toBe(true);
      await store.write((records) => records.notes.add(sample.note()));
      expect(await empty()).toBe(false);
      await store.write((records) => records.clear());
      expect(await empty()).toBe(true);
    });

    test("a write inside a write says so instead of waiting for ever", async () => {
      const inner = store.write(() => store.write(async () => 1));
      await expect(inner).rejects.toThrow("would wait for itself");
      expect(await store.write(async () => 2)).toBe(2);
    });

    test("a store of a newer Wareboard is left alone", async () => {
      const newer = await place().openEmpty();
      await place().tamper(newer, `insert into "migrations" ("name") values ('9999-from-the-future')`);
      await expect(place().reopen(newer)).rejects.toEqual(refusal("newer-store"));
      await newer.close();
    });
  });
}

import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { addPhoto } from "../../studio/commands/add-photo.ts";
import { ALL_COMMANDS } from "../../studio/commands/all-commands.ts";
import { doCommand } from "../../studio/commands/do-command.ts";
import { foretellLoad } from "../../studio/firings/foretold-record.ts";
import { readingsOfCurve } from "../../studio/firings/readings-of-curve.ts";
import { doRecorded } from "../../studio/history/do-recorded.ts";
import { history, redo, undo } from "../../studio/history/undo.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import { type KeptEntry, MOST_ENTRIES_A_SCOPE, MOST_ENTRIES_WITH_PICTURES } from "../../studio/records/history.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import type { StudioRecords, StudioStore } from "../../studio/records/store.ts";
import { FIRST_SETTINGS } from "../../studio/records/studio-settings.ts";
import * as sample from "./sample-records.ts";
import type { ContractPlace } from "./store-contract.ts";

const refusal = (code: string) => expect.objectContaining({ code });
const { ware, stage } = sample.plainWare("");
const plain = { ware, stage, firingKind: null, dueOn: null, ownerNote: "", clayBodyId: null, glazeId: null };
const { kiln, furniture } = sample.kiln();

const AT = "2026-11-22T09:00:00.000Z";

interface Done {
  readonly scope: string;
  readonly input: object;
  /** What must be so before. */
  readonly first?: (records: StudioRecords) => Promise<unknown>;
}

const begun = async (records: StudioRecords) =>
  records.firings.change({
    ...((await records.firings.get("firing-2")) as FiringRecord),
    state: "firing",
    startedAt: AT,
  });

/** Makes the cooling firing one that was measured: the load's own, foretold, read by the minute. */
const measured = async (records: StudioRecords) => {
  const load = (await records.loads.get("load-1")) as LoadRecord;
  const programme = {
    format: "programme/1" as const,
    name: "fast",
    segments: [{ rateCPerHour: 200, targetC: 900, holdMin: 0 }],
  };
  const { prediction } = foretellLoad({ load, programme, calibration: null });
  const { minutes, probeC } = prediction.firing;
  await records.firings.change({ ...sample.firing(), programme });
  const readings = readingsOfCurve({ minutes, tempC: probeC }, sample.MOMENT, { everyMin: 5 });
  await records.readings.add("firing-1", "thermocouple", readings);
};

/** Something to do with each command in the studio of `fillStudio`. */
const DONE: Readonly<Record<string, Done>> = {
  "add-ware": { scope: "ware", input: { ware: [plain, { ...plain, id: "new-ware" }] } },
  "change-ware": {
    scope: "ware",
    input: { ids: ["ware-1", "ware-2"], change: { ware: { count: 3 }, stage: "bisque" } },
  },
  "remove-ware": { scope: "ware", input: { ids: ["ware-1", "ware-2"] } },
  "import-ware": {
    scope: "ware",
    input: { csv: "id,name,count,diameterMm,heightMm,stage\nware-2,bowl,9,150,60,bisque\n,jar,3,90,100,glazed\n" },
  },
  "add-kiln": { scope: "kilns", input: { kiln, furniture, rules: {} } },
  "change-kiln": { scope: "kilns", input: { id: "kiln-1", rules: { gapMm: 9 } } },
  "remove-kiln": { scope: "kilns", input: { id: "kiln-2" } },
  "add-clay-body": { scope: "materials", input: { name: "red", cones: null, note: "" } },
  "change-clay-body": { scope: "materials", input: { id: "clay-1", name: "red" } },
  "remove-clay-body": { scope: "materials", input: { id: "clay-2" } },
  "add-glaze": { scope: "materials", input: { name: "moss", cones: null, runs: true, note: "" } },
  "change-glaze": { scope: "materials", input: { id: "glaze-1", runs: false, cones: null } },
  "remove-glaze": { scope: "materials", input: { id: "glaze-2" } },
  "make-load": { scope: "loads", input: { id: "new-load", kilnId: "kiln-2", name: "second", wareIds: ["ware-2"] } },
  "change-load": { scope: "load:load-1", input: { id: "load-1", version: 1, plan: null, note: "emptied it" } },
  "choose-load-ware": { scope: "load:load-1", input: { id: "load-1", version: 1, wareIds: ["ware-2"] } },
  "tick-load": {
    scope: "load:load-1",
    input: { id: "load-1", ticks: [{ level: 0, placement: 0, at: "2026-11-22T00:00:00.000Z", in: false }] },
  },
  "copy-load": { scope: "loads", input: { id: "load-1", name: "another way" } },
  "remove-load": { scope: "loads", input: { id: "load-2" } },
  "note-notices": {
    scope: "notices:firing-1",
    input: {
      id: "firing-1",
      notices: [{ id: "notice-1", kind: "silence", since: sample.MOMENT, until: null, message: "Nothing came." }],
    },
  },
  "add-note": { scope: "notes", input: { aboutKind: "ware", aboutId: "ware-1", text: "thin rim" } },
  "change-note": { scope: "notes", input: { id: "note-1", text: "thin rim" } },
  "remove-note": { scope: "notes", input: { id: "note-1" } },
  "change-photo": { scope: "photos", input: { id: "photo-1", caption: "after" } },
  "remove-photo": { scope: "photos", input: { id: "photo-1" } },
  "unpack-load": {
    scope: "load:load-1",
    input: { id: "load-1", version: 1, batches: [{ wareId: "ware-1", becomes: "second" }] },
  },
  "prepare-firing": {
    scope: "firings",
    input: { id: "new-firing", loadId: "load-1", programme: sample.firing().programme, plannedStartAt: AT },
  },
  "change-firing": { scope: "firing:firing-3", input: { id: "firing-3", plannedStartAt: null, foretellAgain: true } },
  "tick-check": { scope: "firing:firing-2", input: { id: "firing-2", item: "vent", at: AT } },
  "start-firing": { scope: "firing:firing-2", input: { id: "firing-2", at: AT } },
  "shut-off": { scope: "firing:firing-2", input: { id: "firing-2", at: AT }, first: begun },
  "end-firing": { scope: "firing:firing-1", input: { id: "firing-1", at: AT } },
  "see-cones": {
    scope: "firing:firing-3",
    input: { id: "firing-3", cones: [{ level: 0, cone: "6", bendDeg: 40, place: "" }] },
  },
  "read-meter": { scope: "firing:firing-1", input: { id: "firing-1", at: AT, kWh: 10350 } },
  "judge-pieces": {
    scope: "firing:firing-1",
    input: {
      id: "firing-1",
      outcomes: [{ level: 0, placement: 0, grade: "lost", faults: ["dunting"], note: "in two" }],
      becomes: [],
    },
  },
  "remove-firing": { scope: "firings", input: { id: "firing-1" } },
  "add-programme": { scope: "firings", input: { programme: sample.programme().programme, note: "" } },
  "change-programme": { scope: "firings", input: { id: "programme-1", note: "for thin ware" } },
  "remove-programme": { scope: "firings", input: { id: "programme-1" } },
  "learn-from": { scope: "kilns", input: { kilnId: "kiln-1", firingIds: ["firing-1"] }, first: measured },
  "remove-calibration": { scope: "kilns", input: { id: "calibration-1" } },
  "note-upkeep": { scope: "kilns", input: { kilnId: "kiln-1", at: AT, what: "shelf washed", count: 2 } },
  "change-upkeep": { scope: "kilns", input: { id: "upkeep-1", ohms: [21, 22.5] } },
  "remove-upkeep": { scope: "kilns", input: { id: "upkeep-1" } },
  "add-logger": {
    scope: "kilns",
    input: { kilnId: "kiln-1", probe: "lid", name: "a second box", tokenHash: "ab".repeat(32) },
  },
  "remove-logger": { scope: "kilns", input: { id: "logger-1" } },
  "change-settings": { scope: "settings", input: { studioName: "Mud and ash", lengthUnits: "inches" } },
};

/** What every database has to do for commands, undo and redo. */
export function undoContract(name: string, place: () => ContractPlace): void {
  describe(`doing and undoing on ${name}`, () => {
    let store: StudioStore;
    let ids = 0;
    beforeAll(async () => {
      store = await place().openEmpty();
    });
    beforeEach(() =>
      store.write(async (records) => {
        await records.clear();
        await sample.fillStudio(records);
      }),
    );
    afterAll(() => store?.close());
    const context = (key = `key-${++ids}`) => ({ key, now: "2026-11-25T12:00:00.000Z", newId: () => `made-${++ids}` });
    const give = (command: string, input: object, key?: string) => doCommand(store, command, input, context(key));
    /** Everything there is, but for the counting of a load's changes. */
    const look = () =>
      store.read(async (records) => {
        const all = await sample.everything(records);
        const loads = all.loads.map(({ version: _, ...load }) => load);
        return { ...all, loads, settings: await records.settings.get() };
      });
    const versions = async () =>
      new Map((await store.read((records) => records.loads.list())).map(({ id, version }) => [id, version]));

    test("every command is held to this", () => {
      expect(Object.keys(DONE).sort()).toEqual([...ALL_COMMANDS.keys()].sort());
    });

    test.each(Object.entries(DONE))(
      "%s is done, undone, done again, undone again",
      async (command, { scope, input, first }) => {
        if (first) await store.write(first);
        const [before, was] = [await look(), await versions()];
        const answer = await give(command, input, "the-key");
        const after = await look();
        expect(after).not.toEqual(before);
        expect(answer.entry).toMatchObject({ id: "the-key", command, scope, undone: false });
        expect(answer.entry.summary).toMatch(/^\p{Lu}.{3,}$/u);
        for (let round = 0; round < 2; round++) {
          expect((await undo(store, scope)).entry).toEqual({ ...answer.entry, undone: true });
          expect(await look()).toEqual(before);
          expect((await history(store, scope))[0]).toEqual({ ...answer.entry, undone: true });
          const again = await redo(store, scope);
          expect(again.entry).toEqual(answer.entry);
          expect(Object.keys(again.changed)).toEqual(Object.keys(answer.changed));
          expect(await look()).toEqual(after);
        }
        await expect(redo(store, scope)).rejects.toEqual(refusal("nothing-to-redo"));
        await undo(store, scope);
        await expect(undo(store, scope)).rejects.toEqual(refusal("nothing-to-undo"));
        expect(await look()).toEqual(before);
        const now = await versions();
        for (const [id, version] of now) expect(version).toBeGreaterThanOrEqual(was.get(id) ?? 0);
      },
    );

    test.each(Object.entries(DONE))("%s sent twice with one key is done once", async (command, { input, first }) => {
      if (first) await store.write(first);
      const answer = await give(command, input, "the-key");
      const after = await look();
      expect(await give(command, input, "the-key")).toEqual(answer);
      expect(await look()).toEqual(after);
      const other = command === "add-note" ? "remove-note" : "add-note";
      await expect(give(other, DONE[other]?.input ?? {}, "the-key")).rejects.toEqual(refusal("id-taken"));
    });

    test("what was undone and left behind is remembered, so that its command sent late is not done after all", async () => {
      await give("add-note", { aboutKind: null, aboutId: null, text: "first" }, "first");
      await undo(store, "notes");
      await give("add-note", { aboutKind: null, aboutId: null, text: "second" }, "second");
      await expect(redo(store, "notes")).rejects.toEqual(refusal("nothing-to-redo"));
      const before = await look();
      const late = await give("add-note", { aboutKind: null, aboutId: null, text: "first" }, "first");
      expect(late.entry.undone).toBe(true);
      expect(await look()).toEqual(before);
      expect((await history(store, "notes")).map(({ id }) => id)).toEqual(["second"]);
    });

    test("undo goes back within one scope; what another did since is not overwritten", async () => {
      await give("change-ware", { ids: ["ware-2"], change: { ownerNote: "mine" } });
      await give("add-glaze", { name: "moss", cones: null, runs: false, note: "" });
      await store.write(async (records) => {
        const batch = await records.ware.get("ware-2");
        if (batch) await records.ware.change({ ...batch, ownerNote: "theirs" });
      });
      const before = await look();
      await expect(undo(store, "ware")).rejects.toMatchObject({ code: "changed-since", path: 'ware "ware-2"' });
      expect(await look()).toEqual(before);
      await undo(store, "materials");
      expect((await look()).glazes).toHaveLength(2);
    });

    test("what others still use is not taken out, by undo neither", async () => {
      await give("add-kiln", { id: "kiln-3", kiln, furniture, rules: {} });
      await give("make-load", { kilnId: "kiln-3", name: "second", wareIds: [] });
      await expect(give("remove-kiln", { id: "kiln-3" })).rejects.toEqual(refusal("still-in-use"));
      await expect(undo(store, "kilns")).rejects.toEqual(refusal("still-in-use"));
      await undo(store, "loads");
      await undo(store, "kilns");
      expect((await look()).kilns).toHaveLength(2);
    });

    test("a load's version rises with every change, undo and redo, and over being taken out", async () => {
      const seen: number[] = [];
      const version = async () => seen.push((await versions()).get("load-1") as number);
      const change = async (called: string) =>
        give("change-load", { id: "load-1", version: (await versions()).get("load-1"), name: called });
      for (const id of ["firing-1", "firing-3"]) await store.write((records) => records.firings.remove(id));
      await version();
      await change("one");
      await version();
      await undo(store, "load:load-1");
      await version();
      await redo(store, "load:load-1");
      await version();
      await give("remove-load", { id: "load-1" });
      await undo(store, "loads");
      await version();
      await redo(store, "loads");
      await undo(store, "loads");
      await version();
      expect(seen).toEqual([...new Set(seen)].sort((a, b) => a - b));
      await expect(give("change-load", { id: "load-1", version: seen.at(-2), name: "from before" })).rejects.toEqual(
        refusal("changed-since"),
      );
    });

    test("a command that is refused, or changes nothing, leaves no entry to undo", async () => {
      await give("change-note", { id: "note-1", text: "kept" });
      await undo(store, "notes");
      await expect(give("remove-note", { id: "nobody" })).rejects.toEqual(refusal("unknown-record"));
      await expect(give("remove-note", { id: "note-1", more: 1 })).rejects.toEqual(refusal("unknown-field"));
      await expect(give("fire-the-kiln", {})).rejects.toEqual(refusal("unknown-command"));
      await expect(give("remove-note", { id: "note-1" }, "not a key")).rejects.toEqual(refusal("not-an-id"));
      await give("change-note", { id: "note-1", text: sample.note().text });
      expect((await history(store, "notes")).map(({ undone }) => undone)).toEqual([true]);
      await redo(store, "notes");
      expect((await look()).notes[0]?.text).toBe("kept");
    });

    test("of many parts that lean on one another, all go and all come back", async () => {
      const before = await look();
      const batch = sample.plainWare("leaning", { glazeId: "new-glaze" });
      const run = async (records: StudioRecords): Promise<string> => {
        await records.glazes.add({ ...sample.glaze("new-glaze"), name: "moss" });
        await records.ware.add(batch);
        await records.ware.change({ ...batch, ownerNote: "once" });
        await records.ware.change({ ...batch, ownerNote: "twice" });
        const second = await records.ware.get("ware-2");
        if (second) await records.ware.change({ ...second, ownerNote: "once" });
        await records.ware.change({ ...sample.plainWare("ware-2"), ownerNote: "twice" });
        await records.notes.add(sample.note("passing"));
        await records.notes.remove("passing");
        return "Did much";
      };
      const answer = await doRecorded(store, { command: "much", scope: "ware", run }, context());
      expect(answer.changed.ware?.leaning).toMatchObject({ ownerNote: "twice" });
      const after = await look();
      await undo(store, "ware");
      expect(await look()).toEqual(before);
      await redo(store, "ware");
      expect(await look()).toEqual(after);
    });

    test("a photo comes and goes with its picture", async () => {
      const photo = { id: "new", aboutKind: null, aboutId: null, caption: "the lid", takenAt: null };
      const before = await look();
      const answer = await addPhoto(store, photo, sample.PICTURE, context("the-photo"));
      expect(answer.changed.photos?.new).toMatchObject({ mediaType: "image/png", byteLength: sample.PICTURE.length });
      expect(answer.entry.summary).toBe("Added the photo “the lid”");
      expect(await addPhoto(store, photo, sample.PICTURE, context("the-photo"))).toEqual(answer);
      const after = await look();
      await undo(store, "photos");
      expect(await look()).toEqual(before);
      await redo(store, "photos");
      expect(await look()).toEqual(after);
      const text = new TextEncoder().encode("<svg/>");
      await expect(addPhoto(store, photo, text, context())).rejects.toEqual(refusal("wrong-picture"));
    });

    test("settings are the first ones until others are put, and taking everything out takes them too", async () => {
      const settings = () =>
        store.read(async (records) => [await records.settings.get(), await records.settings.arePut()]);
      expect(await settings()).toEqual([FIRST_SETTINGS, false]);
      const answer = await give("change-settings", { paper: "letter" });
      expect(answer).toMatchObject({ changed: {}, settingsChanged: true });
      expect(await settings()).toEqual([{ ...FIRST_SETTINGS, paper: "letter" }, true]);
      await store.write((records) => records.clear());
      expect(await settings()).toEqual([FIRST_SETTINGS, false]);
      expect(await history(store, "settings")).toEqual([]);
      const bad = store.write((records) => records.settings.put({ ...FIRST_SETTINGS, studioName: "a\0b" }));
      await expect(bad).rejects.toEqual(refusal("not-text"));
      await place().tamper(store, `insert into "settings" ("id", "settings") values ('studio', '{"paper":"a3"}')`);
      await expect(settings()).rejects.toEqual(refusal("corrupt-row"));
    });

    test("the history keeps the newest of a scope, and fewer of those that hold pictures", async () => {
      const entry = (id: string, scope: string): KeptEntry => ({
        ...{ id, scope, at: sample.MOMENT, command: "add-note", summary: id, standing: "done", settings: null },
        changes: [{ kind: "notes", id: "n", before: null, after: { text: "a" } }],
      });
      await store.write(async (records) => {
        await records.history.add(entry("elsewhere", "ware"));
        for (let n = 0; n < MOST_ENTRIES_A_SCOPE + 3; n++) await records.history.add(entry(`n${n}`, "notes"));
        for (let n = 0; n < MOST_ENTRIES_WITH_PICTURES + 2; n++) {
          await records.history.add(entry(`p${n}`, "photos"));
          await records.history.keepPicture(`p${n}`, "photo", sample.PICTURE);
        }
      });
      await store.read(async (records) => {
        const notes = await records.history.list("notes");
        expect(notes.map(({ id }) => id)).toEqual(
          Array.from({ length: MOST_ENTRIES_A_SCOPE }, (_, i) => `n${MOST_ENTRIES_A_SCOPE + 2 - i}`),
        );
        expect(await records.history.list("ware")).toHaveLength(1);
        expect(await records.history.list("photos")).toHaveLength(MOST_ENTRIES_WITH_PICTURES);
        expect(await records.history.picture("p1", "photo")).toBeNull();
        expect(await records.history.picture("p2", "photo")).toEqual(sample.PICTURE);
        expect(await records.history.get("n9")).toEqual(entry("n9", "notes"));
        expect(await records.history.get("n2")).toBeNull();
      });
    });

    test("knows how many there are of each kind", async () => {
      await store.read(async (records) => {
        expect([await records.ware.count(), await records.photos.count()]).toEqual([2, 2]);
      });
    });
  });
}

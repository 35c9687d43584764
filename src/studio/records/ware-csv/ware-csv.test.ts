import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { GlazeRecord } from "../clay-and-glaze-records.ts";
import type { WareRecord } from "../ware-record.ts";
import { guarded, unguarded } from "./cell-safety.ts";
import { previewWareImport, type WareImportSetting } from "./preview-ware-import.ts";
import { writeWareCsv } from "./write-ware-csv.ts";

const NOW = "2026-11-25T09:00:00.000Z";
const stamps = { createdAt: "2026-11-01T08:00:00.000Z", changedAt: "2026-11-01T08:00:00.000Z" };
const glaze = (id: string, name: string): GlazeRecord => ({ id, name, cones: null, runs: false, note: "", ...stamps });
const mug: WareRecord = {
  id: "mug-1",
  ware: {
    name: "mug",
    count: 6,
    diameterMm: 84.5,
    heightMm: 92,
    handle: { reachMm: 30, widthMm: 18, angleDeg: -90 },
    cookie: { diameterMm: 80, thicknessMm: 6 },
    cone: "06",
    mustFire: true,
    value: 2.5,
  },
  stage: "glazed",
  firingKind: "glaze",
  dueOn: "2026-12-18",
  ownerNote: 'for "the fair", three; blue\r\nand a second line',
  clayBodyId: "buff",
  glazeId: "rain",
  ...stamps,
};
const bowl: WareRecord = {
  ...mug,
  id: "bowl-1",
  ware: {
    name: "bowl",
    count: 2,
    diameterMm: 150,
    heightMm: 60,
    profile: [
      [0, 40],
      [60, 75],
    ],
    glaze: "her own mix",
  },
  stage: "greenware",
  firingKind: null,
  dueOn: null,
  ownerNote: "",
  clayBodyId: null,
  glazeId: null,
};
const setting = (changes: Partial<WareImportSetting> = {}): WareImportSetting => {
  let ids = 0;
  return {
    ware: [mug, bowl],
    clayBodies: [{ id: "buff", name: "Buff stoneware", cones: null, note: "", ...stamps }],
    glazes: [glaze("rain", "rain"), glaze("slate-1", "slate"), glaze("slate-2", "slate")],
    stage: null,
    newId: () => `new-${++ids}`,
    now: NOW,
    ...changes,
  };
};
const preview = (text: string, changes: Partial<WareImportSetting> = {}) => previewWareImport(text, setting(changes));
const only = (text: string, changes: Partial<WareImportSetting> = {}) => {
  const { rows } = preview(text, changes);
  expect(rows).toHaveLength(1);
  return rows[0] as (typeof rows)[number];
};

describe("a ware list written and read back", () => {
  test("changes nothing", () => {
    const { rows, leftAside } = preview(writeWareCsv([mug, bowl], setting()));
    expect(rows.map(({ what, after }) => [what, after])).toEqual([
      ["same", mug],
      ["same", bowl],
    ]);
    expect(leftAside).toEqual([]);
  });

  test("changes nothing, whatever the names and notes", () => {
    const words = fc.string({ unit: "grapheme", maxLength: 30 }).filter((text) => !/\0|\p{Surrogate}/u.test(text));
    const odd = fc.oneof(
      words,
      fc.stringMatching(/^['"=+\-@,;\t\r\n ]{1,6}$/),
      fc.constantFrom("=1+1", "'=x", "''", "1e5"),
    );
    const property = fc.property(
      odd.filter((name) => name.trim() !== ""),
      odd,
      odd,
      (name, note, own) => {
        const record = { ...bowl, ownerNote: note, ware: { ...bowl.ware, name, glaze: own } };
        const ware = [record];
        const row = only(writeWareCsv(ware, setting()), { ware });
        expect([row.what, row.after]).toEqual(["same", record]);
      },
    );
    fc.assert(property, { seed: 3, numRuns: 400 });
  });

  test("into an empty studio brings every batch back, its drawn profile aside", () => {
    const { rows } = preview(writeWareCsv([mug, bowl], setting()), { ware: [] });
    expect(rows.map(({ what }) => what)).toEqual(["new", "new"]);
    expect(rows[0]?.after).toEqual({ ...mug, createdAt: NOW, changedAt: NOW });
    const { profile: _, ...plain } = bowl.ware;
    expect(rows[1]?.after).toEqual({ ...bowl, ware: plain, createdAt: NOW, changedAt: NOW });
  });

  test("is CSV to a reader that knows nothing of ware, and shows it no formula", () => {
    const names = ["=HYPERLINK(0)", "+1", "-2+3", "@SUM(A1)", "\t=1", "＝1", "'=1"];
    const ware = names.map((name, i) => ({ ...bowl, id: `b${i}`, ware: { ...bowl.ware, name } }));
    const rows = parse(writeWareCsv(ware, setting()), { columns: true, bom: true, record_delimiter: "\r\n" });
    for (const row of rows as Record<string, string>[]) {
      for (const cell of Object.values(row)) if (Number.isNaN(Number(cell))) expect(cell).not.toMatch(/^[=+\-@\t\r＝]/);
    }
    expect((rows as Record<string, string>[]).map((row) => unguarded(row.name ?? ""))).toEqual(names);
  });

  test("a guarded cell gives its text back, whatever it is", () => {
    const odd = fc.oneof(fc.string(), fc.stringMatching(/^['=+\-@]{0,4}x?$/));
    fc.assert(
      fc.property(odd, (text) => unguarded(guarded(text)) === text),
      { seed: 3, numRuns: 1000 },
    );
  });
});

describe("the preview of an import", () => {
  test("says column by column what will change, and leaves columns that are not in the file", () => {
    const row = only("id,count,heightMm,glaze,dueOn\nmug-1,4,95,,2026-12-20\n");
    expect(row).toMatchObject({ line: 2, what: "changed", name: "mug", reason: null, before: mug });
    expect(row.changes).toEqual([
      { heading: "count", from: "6", to: "4" },
      { heading: "heightMm", from: "92", to: "95" },
      { heading: "glaze", from: "rain", to: "" },
      { heading: "dueOn", from: "2026-12-18", to: "2026-12-20" },
    ]);
    expect(row.after).toEqual({
      ...mug,
      ware: { ...mug.ware, count: 4, heightMm: 95 },
      glazeId: null,
      dueOn: "2026-12-20",
      changedAt: NOW,
    });
  });

  test("takes a new batch from as little as a name, a count, two sizes and a stage", () => {
    const row = only('Name;Count;Diameter mm;Height (mm);Stage\n"beaker; tall";12;7,5 cm;4 in;bisque\n');
    expect(row).toMatchObject({ what: "new", name: "beaker; tall", notes: [] });
    expect(row.after).toEqual({
      id: "new-1",
      ware: { name: "beaker; tall", count: 12, diameterMm: 75, heightMm: 101.6 },
      stage: "bisque",
      firingKind: null,
      dueOn: null,
      ownerNote: "",
      clayBodyId: null,
      glazeId: null,
      createdAt: NOW,
      changedAt: NOW,
    });
    const staged = only("name\tcount\tdiameterMm\theightMm\nbeaker\t1\t70\t80\n", { stage: "greenware" });
    expect(staged.after?.stage).toBe("greenware");
  });

  test("finds clay and glaze by name; a glaze nobody recorded is kept as words, and said", () => {
    const row = only("name,count,diameterMm,heightMm,stage,glaze,clayBody\njar,1,90,90,glazed,RAIN ,buff Stoneware\n");
    expect(row.after).toMatchObject({ glazeId: "rain", clayBodyId: "buff" });
    const words = only("name,count,diameterMm,heightMm,stage,glaze\njar,1,90,90,glazed,moss\n");
    expect(words.after).toMatchObject({ glazeId: null, ware: { glaze: "moss" } });
    expect(words.notes).toEqual(['"moss" is not among the recorded glazes and is kept as words.']);
  });

  test("doubts a bare cone that may have lost its zero in a spreadsheet, and not one with its word", () => {
    const bare = only("id,cone\nmug-1,6\n");
    expect(bare.changes).toEqual([{ heading: "cone", from: "cone 06", to: "cone 6" }]);
    expect(bare.notes[0]).toContain("cone 6, not 06?");
    expect(only("id,cone\nmug-1,cone 6\n").notes).toEqual([]);
    expect(only("id,cone\nmug-1,10\n").notes[0]).toContain("not 010?");
    expect(only("id,cone\nmug-1,06\n").what).toBe("same");
  });

  test("says so where a new batch has the name of one that is there", () => {
    const row = only("name,count,diameterMm,heightMm,stage\nmug,1,80,80,bisque\n");
    expect(row.what).toBe("new");
    expect(row.notes[0]).toContain("already");
  });

  test.each([
    ["name,count,diameterMm,heightMm,stage\nvase,none,80,80,bisque", /count: found "none"/],
    [
      "name,count,diameterMm,heightMm,stage\nvase,0,80,80,bisque",
      /ware.count: found 0; expected a whole number of at least 1/,
    ],
    ["name,count,diameterMm,heightMm,stage\nvase,1.5,80,80,bisque", /ware.count/],
    ["name,count,diameterMm,heightMm,stage\nvase,1,80 furlongs,80,bisque", /diameterMm: found "80 furlongs"/],
    ["name,count,diameterMm,heightMm,stage\nvase,1,,80,bisque", /ware.diameterMm: found nothing/],
    ["name,count,diameterMm,heightMm,stage\nvase,1,80,80,", /stage: found nothing/],
    ["name,count,diameterMm,heightMm\nvase,1,80,80", /stage: found nothing/],
    ["name,count,diameterMm,heightMm,stage\nvase,1,80,80,molten", /stage: found "molten"; expected greenware or/],
    ["name,count,diameterMm,heightMm,stage,cone\nvase,1,80,80,bisque,99", /cone: found "99"/],
    [
      "name,count,diameterMm,heightMm,stage,dueOn\nvase,1,80,80,bisque,18/12/2026",
      /dueOn: found "18\/12\/2026"; expected a day/,
    ],
    ["name,count,diameterMm,heightMm,stage,clayBody\nvase,1,80,80,bisque,mud", /clayBody: found "mud"/],
    ["name,count,diameterMm,heightMm,stage,glaze\nvase,1,80,80,bisque,slate", /only one of them/],
    [
      "name,count,diameterMm,heightMm,stage,handleReachMm\nvase,1,80,80,bisque,20",
      /ware.handle.widthMm: found nothing/,
    ],
    ['name,count,diameterMm,heightMm,stage,value\nvase,1,80,80,bisque,"1,500"', /value: found "1,500"/],
    ["id,heightMm\nbowl-1,70", /ware.profile\[1\].*the rim at the piece's height, 70/],
    ["id,name,count,diameterMm,heightMm,stage\n../x,vase,1,80,80,bisque", /found "..\/x"; expected 1 to 64 letters/],
  ])("refuses a row with line and reason: %s", (text, reason) => {
    const row = only(text);
    expect(row).toMatchObject({ what: "refused", line: 2, after: null });
    expect(row.reason).toMatch(reason);
  });

  test("refuses a batch the second time; the other rows stand", () => {
    const { rows } = preview("id,count\nmug-1,1\nbowl-1,9\nmug-1,2\n");
    expect(rows.map(({ what }) => what)).toEqual(["changed", "changed", "refused"]);
    expect(rows[2]?.reason).toBe("Line 2 has the id mug-1 already.");
  });

  test("leaves aside columns that say nothing of ware, and says which; counts lines as an editor does", () => {
    const { rows, leftAside } = preview('id,price,count,note\n\nmug-1,12,4,"two\nlines"\n\nbowl-1,5,x,\n');
    expect(leftAside).toEqual(["price"]);
    expect(rows.map(({ line, what }) => [line, what])).toEqual([
      [3, "changed"],
      [6, "refused"],
    ]);
  });

  test.each(["", "\n\n", "dear potter,\nhow are you", "count,count\n1,2", "name,name\na,b", "a\0b", '"open'])(
    "of a file that is no ware list is one clear error: %j",
    (text) => {
      expect(() => preview(text)).toThrow(expect.objectContaining({ code: "not-a-ware-list" }));
    },
  );
});

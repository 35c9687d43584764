import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, expect, test } from "vitest";
import { fillStudio } from "../../store/testing/sample-records.ts";
import { type TestStudio, testStudio } from "../testing/test-studio.ts";

let studio: TestStudio;
beforeAll(async () => {
  studio = await testStudio();
  await studio.store.write(fillStudio);
});
afterAll(() => studio.end());

const preview = (body: object) => studio.ask("POST", "/ware-csv-preview", { payload: JSON.stringify(body) });

test("the list goes out to a spreadsheet, and put back it would change nothing", async () => {
  const answer = await studio.ask("GET", "/ware.csv");
  expect(answer.headers["content-type"]).toBe("text/csv; charset=utf-8");
  expect(answer.headers["content-disposition"]).toMatch(/^attachment; filename="ware-2026-11-25\.csv"/);
  expect(parse(answer.body, { bom: true, columns: true })).toMatchObject([{ name: "espresso cup" }, { name: "bowl" }]);
  const back = await preview({ csv: answer.body });
  expect(back.json().rows.map(({ what }: { what: string }) => what)).toEqual(["same", "same"]);
});

test("a preview says what would happen, and nothing does", async () => {
  const before = (await studio.ask("GET", "/ware")).json();
  const csv = "name,count,diameterMm,heightMm\nplatter,1,300,30\njug,2,wide,200\n";
  const answer = await preview({ csv, stage: "bisque" });
  const rows = answer.json().rows as { what: string; after: { stage: string } | null }[];
  expect(rows.map(({ what, after }) => [what, after?.stage])).toEqual([
    ["new", "bisque"],
    ["refused", undefined],
  ]);
  expect((await studio.ask("GET", "/ware")).json()).toEqual(before);
});

test("a file that is no such list is refused in words", async () => {
  const answer = await preview({ csv: "a,b\n1,2\n" });
  expect([answer.statusCode, answer.json().error.code]).toEqual([400, "not-a-ware-list"]);
});

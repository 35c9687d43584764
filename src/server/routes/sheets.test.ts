import { afterAll, beforeAll, expect, test } from "vitest";
import { writeProgramme } from "../../firing/programme/write-programme.ts";
import { fillStudio } from "../../store/testing/sample-records.ts";
import { type TestStudio, testStudio } from "../testing/test-studio.ts";

let studio: TestStudio;
beforeAll(async () => {
  studio = await testStudio();
  await studio.store.write(fillStudio);
});
afterAll(() => studio.end());

test("the sheet comes as PDF to be shown, under the load's own name", async () => {
  const answer = await studio.ask("GET", "/loads/load-1/sheet");
  expect(answer.statusCode).toBe(200);
  expect(answer.headers["content-type"]).toBe("application/pdf");
  expect(answer.headers["content-disposition"]).toMatch(
    /^inline; filename="before the market\.pdf"; filename\*=UTF-8''/,
  );
  expect(answer.rawPayload.subarray(0, 5).toString()).toBe("%PDF-");
});

test("or as SVG that may run nothing, on the paper and in the units asked for", async () => {
  const svg = async (query: string) => (await studio.ask("GET", `/loads/load-1/sheet?kind=svg${query}`)).body;
  const answer = await studio.ask("GET", "/loads/load-1/sheet?kind=svg&paper=letter&units=inches");
  expect(answer.headers["content-type"]).toBe("image/svg+xml; charset=utf-8");
  expect(answer.headers["content-security-policy"]).toContain("default-src 'none'");
  // US Letter is 215.9 mm wide (ANSI/ASME Y14.1), A4 210 (ISO 216).
  expect(answer.body).toMatch(/<svg [^>]*width="215.9mm"/);
  expect(await svg("&paper=a4")).toMatch(/<svg [^>]*width="210mm"/);
});

test("where neither is asked for, as the studio's settings say", async () => {
  const change = { key: "k", input: { paper: "letter" } };
  const changed = await studio.ask("POST", "/commands/change-settings", { payload: JSON.stringify(change) });
  expect(changed.statusCode).toBe(200);
  expect((await studio.ask("GET", "/settings")).json()).toMatchObject({ paper: "letter" });
  expect((await studio.ask("GET", "/loads/load-1/sheet?kind=svg")).body).toMatch(/<svg [^>]*width="215.9mm"/);
});

test("a name no file may have becomes one it may", async () => {
  const input = { id: "load-1", version: 1, name: '../"é\u202e\r\n/x' };
  await studio.ask("POST", "/commands/change-load", { payload: JSON.stringify({ key: "n", input }) });
  const { headers } = await studio.ask("GET", "/loads/load-1/sheet?kind=svg");
  expect(headers["content-disposition"]).toBe("inline; filename=\"e x.svg\"; filename*=UTF-8''%C3%A9%20x.svg");
});

test("a load without a plan, no load, and a paper nobody sells are refused", async () => {
  const refused = async (path: string) => {
    const answer = await studio.ask("GET", path);
    return [answer.statusCode, answer.json().error.code];
  };
  expect(await refused("/loads/load-2/sheet")).toEqual([400, "not-planned"]);
  expect(await refused("/loads/gone/sheet")).toEqual([404, "unknown-record"]);
  expect(await refused("/loads/load-1/sheet?paper=papyrus")).toEqual([400, "wrong-value"]);
});

test("with a firing its pages are put in; one of another load, or none, is refused", async () => {
  const programme = writeProgramme({ cone: "6", kind: "glaze", pace: "medium" }).programme;
  const prepare = async (input: { id: string; loadId: string | null; kilnId?: string }) => {
    const payload = JSON.stringify({ key: input.id, input: { ...input, programme } });
    expect((await studio.ask("POST", "/commands/prepare-firing", { payload })).statusCode).toBe(200);
  };
  await prepare({ id: "firing-of-1", loadId: "load-1" });
  await prepare({ id: "firing-of-none", loadId: null, kilnId: "kiln-1" });
  const without = await studio.ask("GET", "/loads/load-1/sheet?kind=svg");
  const { statusCode, body } = await studio.ask("GET", "/loads/load-1/sheet?kind=svg&firing=firing-of-1");
  expect(statusCode).toBe(200);
  expect(without.body).not.toContain("Key in");
  expect(body).toContain("Key in");
  expect(body).toContain(`${programme.segments.at(-1)?.targetC} °C`);
  const refused = async (path: string) => (await studio.ask("GET", path)).json().error.code;
  expect(await refused("/loads/load-1/sheet?firing=gone")).toBe("unknown-record");
  expect(await refused("/loads/load-1/sheet?firing=firing-of-none")).toBe("wrong-firing");
});

import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { plainWare } from "../../store/testing/sample-records.ts";
import type { CommandAnswer, HistoryEntry, StudioCard } from "../../studio/api/contract.ts";
import { type TestStudio, testStudio } from "../testing/test-studio.ts";

let studio: TestStudio;
beforeAll(async () => {
  studio = await testStudio();
});
afterAll(() => studio.end());

const post = (path: string, body: unknown) => studio.ask("POST", path, { payload: JSON.stringify(body) });
const batch = (id: string, name = "bowl") => {
  const { createdAt: _, changedAt: __, ...record } = plainWare(id);
  return { ...record, ware: { ...record.ware, name } };
};
const add = (key: string, ...ids: string[]) =>
  post("/commands/add-ware", { key, input: { ware: ids.map((id) => batch(id)) } });

describe("commands over HTTP", () => {
  test("a command is done, told, and its record is there", async () => {
    const answer = await add("k1", "w1");
    expect(answer.statusCode).toBe(200);
    const { entry, changed } = answer.json() as CommandAnswer;
    expect([entry.id, entry.scope, entry.command]).toEqual(["k1", "ware", "add-ware"]);
    expect((await studio.ask("GET", "/ware/w1")).json()).toEqual(changed.ware?.w1);
    expect(((await studio.ask("GET", "/studio")).json() as StudioCard).counts.ware).toBe(1);
  });

  test("sent twice with one key it happens once; the key of another command is refused", async () => {
    const ids = async () => ((await studio.ask("GET", "/ware")).json() as { id: string }[]).map(({ id }) => id);
    const before = await ids();
    expect((await add("k1", "w1")).statusCode).toBe(200);
    expect(await ids()).toEqual(before);
    const other = await post("/commands/remove-ware", { key: "k1", input: { ids: ["w1"] } });
    expect([other.statusCode, other.json().error.code]).toEqual([409, "id-taken"]);
  });

  test("undo and redo go back and forth within a scope, and the history tells of it", async () => {
    await add("k2", "w2");
    expect((await post("/undo", { scope: "ware" })).statusCode).toBe(200);
    expect((await studio.ask("GET", "/ware/w2")).statusCode).toBe(404);
    const history = (await studio.ask("GET", "/history?scope=ware")).json() as HistoryEntry[];
    expect(history.slice(0, 2).map(({ id, undone }) => [id, undone])).toEqual([
      ["k2", true],
      ["k1", false],
    ]);
    expect((await post("/redo", { scope: "ware" })).statusCode).toBe(200);
    expect((await studio.ask("GET", "/ware/w2")).statusCode).toBe(200);
    const nothing = await post("/undo", { scope: "kilns" });
    expect([nothing.statusCode, nothing.json().error.code]).toEqual([409, "nothing-to-undo"]);
  });

  test("every open browser is told which records changed", async () => {
    const address = await studio.app.listen({ port: 0, host: "127.0.0.1" });
    const events = await fetch(`${address}/api/events`);
    expect(events.headers.get("content-type")).toMatch(/^text\/event-stream/);
    expect(events.headers.get("x-content-type-options")).toBe("nosniff");
    const reader = (events.body as ReadableStream<Uint8Array>).getReader();
    await add("k3", "w3");
    let heard = "";
    while (!heard.includes("data:")) heard += new TextDecoder().decode((await reader.read()).value);
    await reader.cancel();
    expect(JSON.parse(/data: (.*)\n/.exec(heard)?.[1] as string)).toEqual({
      entryId: "k3",
      changed: { ware: ["w3"] },
      settingsChanged: false,
    });
  });
});

describe("what is refused", () => {
  const refused = async (path: string, body: unknown) => {
    const answer = await post(path, body);
    const { code, path: at, message } = answer.json().error;
    expect(message).not.toMatch(/\bat .*:\d+:\d+|node_modules/);
    return [answer.statusCode, code, at];
  };

  test("a field nobody knows, with the place it stands at inside the input", async () => {
    const odd = { ...batch("w9"), colour: "blue" };
    expect(await refused("/commands/add-ware", { key: "k9", input: { ware: [odd] } })).toEqual([
      400,
      "unknown-field",
      "ware[0].colour",
    ]);
    expect((await studio.ask("GET", "/ware/w9")).statusCode).toBe(404);
  });

  test("a number sent as text is not taken for one", async () => {
    const odd = { ...batch("w9"), ware: { ...batch("w9").ware, heightMm: "60" } };
    expect(await refused("/commands/add-ware", { key: "k9", input: { ware: [odd] } })).toEqual([
      400,
      "not-a-number",
      "ware[0].ware.heightMm",
    ]);
  });

  test("a call that is none", async () => {
    expect(await refused("/commands/add-ware", { input: {} })).toEqual([400, "missing-field", "key"]);
    expect(await refused("/commands/add-ware", { key: "", input: {} })).toEqual([400, "too-short", "key"]);
    expect(await refused("/commands/add-ware", { key: "a b", input: { ware: [batch("w9")] } })).toEqual([
      400,
      "not-an-id",
      "key",
    ]);
    expect(await refused("/commands/add-ware", { key: "k", input: {}, more: 1 })).toEqual([
      400,
      "unknown-field",
      "more",
    ]);
    expect(await refused("/commands/add-ware", [])).toEqual([400, "not-an-object", ""]);
    expect(await refused("/commands/fire-at-once", { key: "k", input: {} })).toEqual([
      404,
      "unknown-command",
      "command",
    ]);
  });

  test("a record that is there already, is not there, or is still in use", async () => {
    expect(await refused("/commands/add-ware", { key: "k10", input: { ware: [batch("w1")] } })).toEqual([
      409,
      "id-taken",
      'ware "w1"',
    ]);
    expect(await refused("/commands/remove-ware", { key: "k11", input: { ids: ["gone"] } })).toEqual([
      404,
      "unknown-record",
      'ware "gone"',
    ]);
    await post("/commands/add-clay-body", { key: "c1", input: { id: "buff", name: "buff", cones: null, note: "" } });
    await post("/commands/change-ware", { key: "c2", input: { ids: ["w1"], change: { clayBodyId: "buff" } } });
    expect(await refused("/commands/remove-clay-body", { key: "c3", input: { id: "buff" } })).toEqual([
      409,
      "still-in-use",
      'clay body "buff"',
    ]);
  });

  test("text that is no JSON, cut off or not UTF-8", async () => {
    const send = async (payload: string | Buffer) => {
      const answer = await studio.ask("POST", "/undo", { payload });
      return [answer.statusCode, answer.json().error.code];
    };
    expect(await send("{scope: 1}")).toEqual([400, "not-json"]);
    expect(await send('{"scope":')).toEqual([400, "cut-off"]);
    expect(await send(Buffer.from([0x22, 0xff, 0x22]))).toEqual([400, "not-text"]);
    expect(await send("")).toEqual([400, "not-an-object"]);
  });

  test("more than 8 MB of JSON", async () => {
    const text = (bytes: number) => `{"scope":"${"x".repeat(bytes - 12)}"}`;
    const send = async (payload: string) => (await studio.ask("POST", "/undo", { payload })).statusCode;
    const most = 8 * 1024 * 1024;
    expect(await send(text(most))).toBe(400);
    expect(await send(text(most + 1))).toBe(413);
  });

  test("a question with a word it does not know", async () => {
    const answer = await studio.ask("GET", "/history?scope=ware&limit=5");
    expect([answer.statusCode, answer.json().error.code]).toEqual([400, "unknown-field"]);
  });

  test("a spoilt row is a fault of the store, told without its insides", async () => {
    const spoilt = await testStudio();
    await spoilt.ask("POST", "/commands/add-ware", {
      payload: JSON.stringify({ key: "k", input: { ware: [batch("w1")] } }),
    });
    const { DatabaseSync } = await import("node:sqlite");
    const database = new DatabaseSync(spoilt.store.place);
    database.exec("update ware set ware = '{}'");
    database.close();
    const answer = await spoilt.ask("GET", "/ware");
    expect([answer.statusCode, answer.json().error.code]).toEqual([500, "corrupt-row"]);
    expect(answer.body).not.toMatch(/\.ts:|node_modules/);
    await spoilt.end();
  });
});

test("a fault of the server's own is told in one plain sentence, and its insides to the one who runs it", async () => {
  const broken = await testStudio({
    more: {
      newId: () => {
        throw new Error("the inside story");
      },
    },
  });
  const answer = await broken.ask("POST", "/photos", {
    headers: { "content-type": "image/png" },
    payload: Buffer.from([1]),
  });
  expect([answer.statusCode, answer.json().error.code]).toEqual([500, "own-fault"]);
  expect(answer.body).not.toContain("inside story");
  expect(broken.complaints.map(({ message }) => message)).toEqual(["the inside story"]);
  await broken.end();
});

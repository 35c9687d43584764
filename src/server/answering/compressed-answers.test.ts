import { gunzipSync } from "node:zlib";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type TestStudio, testStudio } from "../testing/test-studio.ts";

const HOME = "192.168.1.20";
let studio: TestStudio;
beforeAll(async () => {
  studio = await testStudio();
  await studio.ask("POST", "/begin", { payload: { with: "demo" } });
});
afterAll(() => studio.end());

const get = (url: string, encodings: string | null, remoteAddress = HOME) =>
  studio.app.inject({ url, remoteAddress, headers: encodings === null ? {} : { "accept-encoding": encodings } });

test("a long answer goes compressed to whoever takes it so, and is the same", async () => {
  const plain = await get("/api/ware", null);
  const packed = await get("/api/ware", "gzip, deflate");
  expect(plain.json().length).toBeGreaterThan(10);
  expect(packed.headers["content-encoding"]).toBe("gzip");
  expect(packed.rawPayload.length).toBeLessThan(plain.rawPayload.length / 3);
  expect(JSON.parse(gunzipSync(packed.rawPayload).toString())).toEqual(plain.json());
  for (const { headers } of [plain, packed]) expect(headers.vary).toMatch(/accept-encoding/);
});

test("an answer goes as it is to whoever does not take it compressed, or is on this machine, or asks little", async () => {
  for (const [url, encodings, from] of [
    ["/api/ware", "gzip;q=0, identity", HOME],
    ["/api/ware", "br", HOME],
    ["/api/ware", "gzip", "127.0.0.1"],
    ["/api/studio", "gzip", HOME],
    ["/api/no-such-thing", "gzip", HOME],
  ] as const) {
    const answer = await get(url, encodings, from);
    expect([url, encodings, answer.headers["content-encoding"]]).toEqual([url, encodings, undefined]);
    expect(() => answer.json()).not.toThrow();
  }
});

test("events are never held back to be compressed", async () => {
  const address = await studio.app.listen({ port: 0, host: "127.0.0.1" });
  const events = await fetch(`${address}/api/events`, { headers: { "accept-encoding": "gzip" } });
  expect(events.headers.get("content-encoding")).toBeNull();
  await events.body?.cancel();
});

import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { PASSPHRASE, type TestStudio, testStudio } from "../testing/test-studio.ts";

describe("who is answered", () => {
  let studio: TestStudio;
  beforeAll(async () => {
    studio = await testStudio();
  });
  afterAll(() => studio.end());

  test("only requests sent to the studio's own names", async () => {
    for (const host of ["localhost", "localhost:7420", "127.0.0.1:7420", "[::1]:7420", "LOCALHOST"]) {
      const answer = await studio.app.inject({ url: "/api/studio", headers: { host } });
      expect([host, answer.statusCode]).toEqual([host, 200]);
    }
    for (const host of ["pots.example", "localhost.pots.example", "127.0.0.1.pots.example:7420", "localhost:x", " "]) {
      const answer = await studio.app.inject({ url: "/api/studio", headers: { host } });
      expect([host, answer.statusCode]).toEqual([host, 421]);
      expect(answer.json().error.code).toBe("wrong-host");
    }
  });

  test("the application's pages are no exception", async () => {
    expect((await studio.app.inject({ url: "/", headers: { host: "pots.example" } })).statusCode).toBe(421);
  });

  const change = (headers: Record<string, string>) =>
    studio.app.inject({ method: "POST", url: "/api/backups", headers: { host: "localhost:7420", ...headers } });
  const json = { "content-type": "application/json" };

  test("a page of another site changes nothing", async () => {
    const others = [
      { origin: "https://pots.example" },
      { origin: "null" },
      { origin: "http://localhost:9999" },
      { "sec-fetch-site": "cross-site" },
      { "sec-fetch-site": "same-site" },
      { "sec-fetch-site": "none" },
      { origin: "http://localhost:7420", "sec-fetch-site": "cross-site" },
    ];
    for (const headers of others) {
      const answer = await change({ ...json, ...headers });
      expect([headers, answer.statusCode, answer.json().error.code]).toEqual([headers, 403, "other-site"]);
    }
    expect((await studio.ask("GET", "/backups")).json()).toEqual([]);
  });

  test("what a form of another page could send is refused by its content type", async () => {
    for (const type of ["application/x-www-form-urlencoded", "multipart/form-data; boundary=x", "text/plain"]) {
      const answer = await change({ "content-type": type });
      expect([type, answer.statusCode]).toEqual([type, 415]);
    }
    expect((await change({})).statusCode).toBe(415);
    // A page's own question that has no body needs none.
    expect((await change({ origin: "http://localhost:7420" })).statusCode).toBe(200);
  });

  test("the studio's own page, and a program that is no browser, may", async () => {
    expect(
      (await change({ ...json, origin: "http://localhost:7420", "sec-fetch-site": "same-origin" })).statusCode,
    ).toBe(200);
    expect((await change(json)).statusCode).toBe(200);
  });

  test("no answer may be framed elsewhere, run scripts from elsewhere or be taken for another type", async () => {
    const { headers } = await studio.app.inject({ url: "/api/studio" });
    const policy = String(headers["content-security-policy"]);
    expect(policy).toMatch(/default-src 'none'/);
    expect(policy).toMatch(/script-src 'self'(;|$)/);
    expect(policy).toMatch(/frame-ancestors 'self'/);
    expect(headers["x-content-type-options"]).toBe("nosniff");
    expect(headers["referrer-policy"]).toBe("no-referrer");
  });
});

describe("the passphrase", () => {
  let studio: TestStudio;
  beforeAll(async () => {
    studio = await testStudio({ locked: true });
  });
  afterAll(() => studio.end());

  const give = (passphrase: string, remoteAddress = "192.168.1.5") =>
    studio.ask("POST", "/session", { payload: JSON.stringify({ passphrase }), remoteAddress });
  const cookieOf = (header: unknown): string => /^([^;]+)/.exec(String(header))?.[1] as string;

  test("nothing of the studio is told before it is given", async () => {
    for (const path of ["/studio", "/ware", "/ware/x", "/archive", "/backups", "/openapi.json", "/events"]) {
      const answer = await studio.app.inject({ url: `/api${path}` });
      expect([path, answer.statusCode, answer.json().error.code]).toEqual([path, 401, "passphrase-asked"]);
    }
    expect((await studio.ask("GET", "/session")).json()).toEqual({ needsPassphrase: true, isOpen: false });
  });

  test("given, it opens the studio to that browser until it goes", async () => {
    const answer = await give(PASSPHRASE);
    expect(answer.statusCode).toBe(200);
    const header = String(answer.headers["set-cookie"]);
    expect(header).toMatch(/HttpOnly/);
    expect(header).toMatch(/SameSite=Strict/);
    const cookie = cookieOf(header);
    expect((await studio.ask("GET", "/studio", { headers: { cookie } })).statusCode).toBe(200);
    expect((await studio.ask("GET", "/studio", { headers: { cookie: `${cookie.slice(0, -1)}x` } })).statusCode).toBe(
      401,
    );
    const gone = await studio.ask("DELETE", "/session", { headers: { cookie } });
    expect(gone.statusCode).toBe(204);
    expect((await studio.ask("GET", "/studio", { headers: { cookie } })).statusCode).toBe(401);
  });

  test("a session ends by itself", async () => {
    const cookie = cookieOf((await give(PASSPHRASE)).headers["set-cookie"]);
    studio.wait(29 * 24 * 60 * 60_000);
    expect((await studio.ask("GET", "/studio", { headers: { cookie } })).statusCode).toBe(200);
    studio.wait(2 * 24 * 60 * 60_000);
    expect((await studio.ask("GET", "/studio", { headers: { cookie } })).statusCode).toBe(401);
  });

  test("after five wrong ones in a minute an address waits, and then longer", async () => {
    const outcomes: number[] = [];
    for (let i = 0; i < 6; i++) outcomes.push((await give("a wrong passphrase")).statusCode);
    expect(outcomes).toEqual([403, 403, 403, 403, 403, 429]);
    const refused = await give(PASSPHRASE);
    expect([refused.statusCode, refused.json().error.code]).toEqual([429, "too-many"]);
    expect(Number(refused.headers["retry-after"])).toBeGreaterThan(50);
    // Somebody else of the household is not kept out.
    expect((await give(PASSPHRASE, "192.168.1.6")).statusCode).toBe(200);
    studio.wait(61_000);
    for (let i = 0; i < 5; i++) expect((await give("a wrong passphrase")).statusCode).toBe(403);
    studio.wait(61_000);
    expect((await give(PASSPHRASE)).statusCode).toBe(429);
    studio.wait(61_000);
    expect((await give(PASSPHRASE)).statusCode).toBe(200);
  });
});

test("an address of the network that asks without end is told to wait", async () => {
  const studio = await testStudio();
  const from = (remoteAddress: string) => studio.app.inject({ url: "/api/session", remoteAddress });
  let answer = await from("192.168.1.9");
  for (let i = 0; i < 1200 && answer.statusCode === 200; i++) answer = await from("192.168.1.9");
  expect([answer.statusCode, answer.json().error.code]).toEqual([429, "too-many"]);
  expect((await from("127.0.0.1")).statusCode).toBe(200);
  await studio.end();
});

import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { brotliCompressSync, brotliDecompressSync, gunzipSync, gzipSync } from "node:zlib";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type TestStudio, testStudio } from "./testing/test-studio.ts";

const outside = mkdtempSync(join(tmpdir(), "studio-web-"));
const webFolder = join(outside, "web");
let studio: TestStudio;
let port: number;
beforeAll(async () => {
  mkdirSync(join(webFolder, "assets"), { recursive: true });
  writeFileSync(join(webFolder, "index.html"), "<!doctype html><title>first page</title>");
  writeFileSync(join(webFolder, "service-worker.js"), "// worker");
  writeFileSync(join(webFolder, "assets", "main-a1b2c3.js"), "// main");
  for (const path of ["index.html", join("assets", "main-a1b2c3.js")]) {
    const bytes = readFileSync(join(webFolder, path));
    writeFileSync(join(webFolder, `${path}.gz`), gzipSync(bytes));
    writeFileSync(join(webFolder, `${path}.br`), brotliCompressSync(bytes));
  }
  writeFileSync(join(outside, "secret.txt"), "the secret");
  writeFileSync(join(webFolder, ".hidden"), "the secret");
  studio = await testStudio({ more: { webFolder } });
  port = Number(new URL(await studio.app.listen({ port: 0, host: "127.0.0.1" })).port);
});
afterAll(async () => {
  await studio.end();
  rmSync(outside, { recursive: true, force: true });
});

const get = (url: string) => studio.app.inject({ url });

/** As it is written: fetch would tidy the path up before sending it. */
const getRaw = (path: string): Promise<{ status: number; body: string }> =>
  new Promise((resolve, reject) => {
    request({ port, host: "127.0.0.1", path, headers: { host: "localhost" } }, (answer) => {
      let body = "";
      answer.setEncoding("utf8").on("data", (part) => {
        body += part;
      });
      answer.on("end", () => resolve({ status: answer.statusCode ?? 0, body }));
    })
      .on("error", reject)
      .end();
  });

test("what is named by its content is kept by the browser, everything else asked for again", async () => {
  expect((await get("/assets/main-a1b2c3.js")).headers["cache-control"]).toBe("public, max-age=31536000, immutable");
  for (const path of ["/", "/index.html", "/service-worker.js", "/loads/l1"]) {
    const answer = await get(path);
    expect([path, answer.statusCode, answer.headers["cache-control"]]).toEqual([path, 200, "no-cache"]);
  }
});

test("an address of a screen gets the first page; a missing file and a missing question do not", async () => {
  for (const path of ["/loads", "/loads/l1/at-the-kiln", "/kilns/k?x=1"]) {
    expect((await get(path)).body).toContain("first page");
  }
  for (const path of ["/assets/gone.js", "/photo.png", "/api", "/api/nothing", "/api/ware/x/y"]) {
    const answer = await get(path);
    expect([path, answer.statusCode]).toEqual([path, 404]);
    expect(answer.json().error.message).not.toBe("");
  }
});

test("a file goes compressed to whoever takes it so, as it is to whoever does not", async () => {
  const ask = (url: string, encodings?: string) =>
    studio.app.inject({ url, headers: encodings === undefined ? {} : { "accept-encoding": encodings } });
  for (const [url, text, type] of [
    ["/", "first page", "text/html"],
    ["/loads/l1", "first page", "text/html"],
    ["/assets/main-a1b2c3.js", "// main", "/javascript"],
  ] as const) {
    const brotli = await ask(url, "gzip, deflate, br");
    const gzip = await ask(url, "gzip, deflate");
    const plain = await ask(url);
    expect([url, brotli.headers["content-encoding"]]).toEqual([url, "br"]);
    expect([url, gzip.headers["content-encoding"]]).toEqual([url, "gzip"]);
    expect([url, plain.headers["content-encoding"]]).toEqual([url, undefined]);
    expect(brotliDecompressSync(brotli.rawPayload).toString()).toContain(text);
    expect(gunzipSync(gzip.rawPayload).toString()).toContain(text);
    expect(plain.body).toContain(text);
    for (const { headers } of [brotli, gzip, plain]) {
      expect([url, headers["content-type"], headers.vary]).toEqual([
        url,
        expect.stringContaining(type),
        expect.stringMatching(/accept-encoding/i),
      ]);
      expect(headers["cache-control"]).toMatch(url.startsWith("/assets") ? /immutable/ : /no-cache/);
    }
  }
  // Of what was not compressed there is the file itself.
  expect((await ask("/service-worker.js", "gzip, br")).body).toBe("// worker");
});

test("no path leads out of the folder", async () => {
  const paths = [
    "/../secret.txt",
    "/assets/../../secret.txt",
    "/%2e%2e/secret.txt",
    "/..%2fsecret.txt",
    "/assets/..%2f..%2fsecret.txt",
    "/%252e%252e/secret.txt",
    "/..\\secret.txt",
    "/..%5csecret.txt",
    "/%00../secret.txt",
    "//secret.txt",
    "/.hidden",
    `/${join(outside, "secret.txt")}`,
  ];
  for (const path of paths) {
    const { status, body } = await getRaw(path);
    expect([path, status >= 400, body.includes("the secret")]).toEqual([path, true, false]);
  }
});

test("where nothing has been built, that is what the answer says", async () => {
  const bare = await testStudio();
  const answer = await bare.app.inject({ url: "/" });
  expect([answer.statusCode, answer.json().error.found]).toEqual([
    404,
    "no application to hand out: it has not been built",
  ]);
  await bare.end();
});

import { afterAll, beforeAll, expect, test } from "vitest";
import { PICTURE } from "../../store/testing/sample-records.ts";
import type { CommandAnswer } from "../../studio/api/contract.ts";
import { MOST_PHOTO_BYTES } from "../../studio/records/note-and-photo-records.ts";
import { type TestStudio, testStudio } from "../testing/test-studio.ts";

let studio: TestStudio;
beforeAll(async () => {
  studio = await testStudio();
});
afterAll(() => studio.end());

const send = (query: string, picture: Uint8Array, type = "image/png") =>
  studio.ask("POST", `/photos${query}`, { headers: { "content-type": type }, payload: Buffer.from(picture) });

test("a photo is kept with what it is about, shown as it came, and can be taken back and put back", async () => {
  const answer = await send("?id=p1&key=k1&aboutKind=ware&aboutId=w1&caption=before%20glazing", PICTURE);
  expect(answer.statusCode).toBe(200);
  const { changed } = answer.json() as CommandAnswer;
  expect(changed.photos?.p1).toMatchObject({ aboutId: "w1", caption: "before glazing", mediaType: "image/png" });
  const shown = async () => studio.ask("GET", "/photos/p1/picture");
  expect(new Uint8Array((await shown()).rawPayload)).toEqual(PICTURE);
  expect((await shown()).headers["content-type"]).toBe("image/png");
  const scope = { payload: JSON.stringify({ scope: "photos" }) };
  expect((await studio.ask("POST", "/undo", scope)).statusCode).toBe(200);
  expect((await shown()).statusCode).toBe(404);
  expect((await studio.ask("POST", "/redo", scope)).statusCode).toBe(200);
  expect(new Uint8Array((await shown()).rawPayload)).toEqual(PICTURE);
});

test("what it is, its bytes say: a script called a picture is refused, and so is half a subject", async () => {
  const script = await send("", new TextEncoder().encode("<svg onload='alert(1)'/>"), "image/svg+xml");
  expect([script.statusCode, script.json().error.code]).toEqual([400, "wrong-picture"]);
  const half = await send("?aboutKind=ware", PICTURE);
  expect([half.statusCode, half.json().error.code]).toEqual([400, "half-said"]);
  const odd = await send("?aboutKind=pots&aboutId=x", PICTURE);
  expect([odd.statusCode, odd.json().error.code]).toEqual([400, "wrong-value"]);
  expect((await studio.ask("POST", "/photos", { payload: "{}" })).statusCode).toBe(415);
});

test("20 MB are kept, a byte more is refused", async () => {
  const large = (bytes: number) => {
    const picture = new Uint8Array(bytes);
    picture.set(PICTURE);
    return picture;
  };
  expect((await send("?id=large", large(MOST_PHOTO_BYTES))).statusCode).toBe(200);
  const more = await send("?id=more", large(MOST_PHOTO_BYTES + 1));
  expect([more.statusCode, more.json().error.code]).toEqual([413, "too-large"]);
});

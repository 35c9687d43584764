import { strToU8, zipSync } from "fflate";
import { expect, test } from "vitest";
import { archiveContents } from "./archive-contents.ts";

const zip = (files: Record<string, string>) =>
  zipSync(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])));

test("tells what an archive holds in her words, and leaves out what there is none of", () => {
  const card = {
    format: "studio-archive/1",
    madeAt: "2026-11-25T12:00:00.000Z",
    settings: { studioName: "By the window" },
    kilns: [{}],
    ware: [{}, {}],
    loads: [],
  };
  expect(archiveContents(zip({ "studio.json": JSON.stringify(card), "photos/p.jpg": "picture" }))).toEqual({
    madeAt: "2026-11-25T12:00:00.000Z",
    studioName: "By the window",
    counts: [
      { count: 1, words: "1 kiln" },
      { count: 2, words: "2 batches of ware" },
    ],
  });
});

test.each([
  ["no zip", strToU8("pots"), /a file that is no zip/],
  ["another zip", zip({ "letter.txt": "Dear" }), /a zip without "studio.json"/],
  ["another card", zip({ "studio.json": '{"format":"load-plan/1"}' }), /of another kind/],
  ["half a card", zip({ "studio.json": '{"format":' }), /no JSON/],
])("says of %s that it is no archive", (_, bytes, words) => {
  expect(() => archiveContents(bytes)).toThrow(words);
});

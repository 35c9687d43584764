import { expect, test } from "vitest";
import { readArchive } from "../../store/archive/read-archive.ts";
import { FIRST_SETTINGS } from "../../studio/records/studio-settings.ts";
import { archiveContents } from "./archive-contents.ts";
import { emptyArchive } from "./empty-archive.ts";

const madeAt = "2026-11-25T12:00:00.000Z";

test("the store takes it for a studio with nothing in it", async () => {
  const archive = await readArchive(emptyArchive({ ...FIRST_SETTINGS, studioName: "By the window" }, madeAt));
  expect([archive.kilns, archive.ware, archive.loads, archive.settings?.studioName]).toEqual([
    [],
    [],
    [],
    "By the window",
  ]);
});

test("and so does the screen that tells what an archive holds", () => {
  expect(archiveContents(emptyArchive(FIRST_SETTINGS, madeAt)).counts).toEqual([]);
});

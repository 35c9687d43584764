import { beforeEach, expect, test } from "vitest";
import type { GlazeRecord } from "../../studio/records/clay-and-glaze-records.ts";
import { known, queries, showChanged, studioCache } from "./cache.ts";

const glaze = (id: string, name: string): GlazeRecord => ({
  id,
  name,
  cones: null,
  runs: false,
  note: "",
  createdAt: "2026-11-25T12:00:00.000Z",
  changedAt: "2026-11-25T12:00:00.000Z",
});
const settings = { studioName: "", lengthUnits: "metric", temperatureUnits: "C", paper: "a4", currency: "" };

beforeEach(() => {
  queries.clear();
  queries.setQueryData(["glazes"], [glaze("g1", "Celadon"), glaze("g2", "Shino")]);
  queries.setQueryData(["settings"], settings);
});

test("what is shown at once can be put back exactly as it was", () => {
  const before: Record<string, Record<string, unknown>> = {};
  const cache = studioCache((kind, id, record) => {
    before[kind] = { ...before[kind], [id]: record };
  });
  const [glazes, kept] = [queries.getQueryData(["glazes"]), queries.getQueryData(["settings"])];
  cache.patch("glazes", "g1", (record) => ({ ...record, runs: true }));
  cache.put("glazes", glaze("g3", "Tenmoku"));
  cache.settings({ paper: "letter" });
  expect([known("glazes", "g1")?.runs, known("glazes", "g3")?.name]).toEqual([true, "Tenmoku"]);
  expect(queries.getQueryData(["settings"])).toEqual({ ...settings, paper: "letter" });
  showChanged(before as never);
  expect(queries.getQueryData(["glazes"])).toEqual(glazes);
  expect(queries.getQueryData(["settings"])).toEqual(kept);
});

test("a kind that was not read yet is left unread: half a list would be taken for the whole", () => {
  showChanged({ kilns: { k1: null } });
  expect(queries.getQueryData(["kilns"])).toBeUndefined();
});

import { describe, expect, test } from "vitest";
import { KINDS } from "./all-kinds.ts";
import { checkDay, checkId, checkMoment } from "./fields.ts";
import { pictureType } from "./note-and-photo-records.ts";
import { checkReadings } from "./reading.ts";
import { checkRecord, KIND_NAMES, type RecordKind } from "./record-kind.ts";

const stamps = { createdAt: "2026-11-20T08:30:00.000Z", changedAt: "2026-11-20T08:30:00.000Z" };
const kiln = { name: "back room", chamber: { shape: "round", diameterMm: 400, depthMm: 450 } };
const furniture = {
  shelves: [{ name: "full", shape: "disc", diameterMm: 380, thicknessMm: 15, count: 3 }],
  posts: [{ heightMm: 100, widthMm: 35, shape: "round", count: 9 }],
};
const cup = { name: "cup", count: 2, diameterMm: 70, heightMm: 65 };
const level = {
  shelf: "full",
  topMm: 40,
  xMm: 0,
  yMm: 0,
  turnDeg: 0,
  posts: [],
  placements: [{ ware: "cup", xMm: 0, yMm: 0, turnDeg: 0 }],
};
const good = {
  kilns: { id: "k", kiln, furniture, rules: {}, ...stamps },
  clayBodies: { id: "c", name: "buff", cones: { coolest: "06", hottest: "6" }, note: "", ...stamps },
  glazes: { id: "g", name: "rain", cones: null, runs: false, note: "", ...stamps },
  ware: {
    id: "w",
    ware: cup,
    stage: "bisque",
    firingKind: null,
    dueOn: "2028-02-29",
    ownerNote: "",
    clayBodyId: null,
    glazeId: null,
    ...stamps,
  },
  loads: {
    id: "l",
    kilnId: "k",
    name: "first",
    state: "planned",
    request: { format: "load-request/1", kiln, furniture, ware: [cup] },
    plan: { format: "load-plan/1", levels: [level], left: [] },
    pins: [{ level: 0, placement: 0 }],
    ticks: [{ level: 0, placement: 0, at: stamps.createdAt }],
    sources: [{ ware: "cup", wareId: "w" }],
    version: 1,
    ...stamps,
  },
  firings: {
    id: "f",
    kilnId: "k",
    loadId: null,
    name: "bisque",
    state: "firing",
    programme: { format: "programme/1", name: "slow", segments: [{ rateCPerHour: 60, targetC: 1000, holdMin: 0 }] },
    startedAt: stamps.createdAt,
    endedAt: null,
    meterReadings: [{ at: stamps.createdAt, kWh: 12 }],
    ...stamps,
  },
  notes: { id: "n", aboutKind: "loads", aboutId: "l", text: "warm", ...stamps },
  photos: {
    id: "p",
    aboutKind: null,
    aboutId: null,
    mediaType: "image/webp",
    byteLength: 12,
    caption: "",
    takenAt: null,
    ...stamps,
  },
  programmes: {
    id: "r",
    programme: { format: "programme/1", name: "slow", segments: [{ rateCPerHour: 60, targetC: 1000, holdMin: 0 }] },
    note: "",
    ...stamps,
  },
  calibrations: {
    id: "a",
    kilnId: "k",
    at: stamps.createdAt,
    firingIds: ["f"],
    calibration: {
      ...{ format: "calibration/1", kiln: "back room" },
      wallFactor: { value: 1.1, sigma: 0.05 },
      wareMassFactor: { value: 0.9, sigma: 0.1 },
      powerFactor: { value: 0.97, sigma: 0.02 },
      leakFactor: { value: 1.2, sigma: 0.3 },
      openFactor: { value: 1, sigma: 0.1 },
      probeOffsetC: { value: -4.5, sigma: 3 },
      tilt: { value: -0.02, sigma: 0.03 },
      middleShare: { value: 0, sigma: 0.15 },
    },
    ...stamps,
  },
  upkeep: {
    id: "u",
    kilnId: "k",
    at: stamps.createdAt,
    what: "element resistance",
    ohms: [21.5, 22],
    note: "",
    ...stamps,
  },
  loggers: { id: "o", kilnId: "k", probe: "lid", name: "box", tokenHash: "0f".repeat(32), ...stamps },
} as const;
const kinds = KINDS as unknown as Record<string, RecordKind>;
const check = (kind: string, value: unknown) => checkRecord(kinds[kind] as RecordKind, value, "it");

describe("a record", () => {
  test.each(KIND_NAMES)("of %s is taken as it is when it is sound", (kind) => {
    expect(check(kind, structuredClone(good[kind]))).toEqual(good[kind]);
  });

  test.each(KIND_NAMES)("of %s with a field too many, one too few, an odd id or time is refused", (kind) => {
    const record = good[kind];
    const refused = (value: object, facts: object) =>
      expect(() => check(kind, value)).toThrow(expect.objectContaining(facts));
    refused({ ...record, colour: "red" }, { code: "unknown-field", path: "it.colour" });
    const { changedAt: _, ...short } = record;
    refused(short, { code: "missing-field", path: "it.changedAt" });
    refused({ ...record, id: "a b" }, { code: "not-an-id", path: "it.id" });
    refused({ ...record, createdAt: "2026-11-20" }, { code: "not-a-moment", path: "it.createdAt" });
  });

  const load = good.loads;
  const outcome = { level: 0, placement: 0, grade: "lost", faults: ["dunting"], note: "", at: stamps.createdAt };
  test.each<[string, object, string, string]>([
    [
      "kilns",
      { kiln: { ...kiln, probes: [{ name: "p", angleDeg: 0, heightMm: 500, reachMm: 20 }] } },
      "out-of-range",
      "it.kiln.probes[0].heightMm",
    ],
    [
      "kilns",
      { furniture: { ...furniture, shelves: [furniture.shelves[0], furniture.shelves[0]] } },
      "name-twice",
      "it.furniture.shelves[1].name",
    ],
    ["clayBodies", { cones: { coolest: "6", hottest: "06" } }, "wrong-order", "it.cones"],
    [
      "ware",
      {
        ware: {
          ...cup,
          profile: [
            [0, 30],
            [60, 35],
          ],
        },
      },
      "wrong-profile",
      "it.ware.profile[1]",
    ],
    ["ware", { ware: { ...cup, cone: "99" } }, "not-a-cone", "it.ware.cone"],
    ["ware", { ware: { ...cup, glaze: "moss" }, glazeId: "g" }, "said-twice", "it.ware.glaze"],
    ["ware", { dueOn: "2027-02-29" }, "not-a-day", "it.dueOn"],
    ["ware", { ownerNote: "a\0b" }, "not-text", "it.ownerNote"],
    ["loads", { pins: [{ level: 0, placement: 1 }] }, "unknown-place", "it.pins[0]"],
    ["loads", { plan: null, ticks: [] }, "unknown-place", "it.pins[0]"],
    ["loads", { ticks: [{ level: 0, placement: 0, at: "noon" }] }, "not-a-moment", "it.ticks[0].at"],
    ["loads", { sources: [{ ware: "cup", wareId: "../w" }] }, "not-an-id", "it.sources[0].wareId"],
    [
      "loads",
      { plan: { ...load.plan, levels: [{ ...level, shelf: "half" }] } },
      "unknown-name",
      "it.plan.levels[0].shelf",
    ],
    ["loads", { request: { ...load.request, ware: [cup, cup] } }, "name-twice", "it.request.ware[1].name"],
    ["loads", { version: 0 }, "out-of-range", "it.version"],
    ["firings", { startedAt: null }, "missing-field", "it.startedAt"],
    ["firings", { shutOffAt: "2026-11-20T08:29:59.999Z" }, "wrong-order", "it.shutOffAt"],
    ["firings", { plannedStartAt: "tomorrow" }, "not-a-moment", "it.plannedStartAt"],
    ["firings", { checklist: [{ item: "lid", at: "noon" }] }, "not-a-moment", "it.checklist[0].at"],
    ["firings", { cones: [{ level: 0, cone: "60", bendDeg: 90, place: "" }] }, "wrong-value", "it.cones[0].cone"],
    ["firings", { outcomes: [outcome, outcome] }, "said-twice", "it.outcomes[1]"],
    ["firings", { outcomes: [{ ...outcome, faults: ["ugly"] }] }, "wrong-value", "it.outcomes[0].faults[0]"],
    [
      "firings",
      { notices: [{ id: "n", kind: "silence", since: "noon", until: null, message: "" }] },
      "not-a-moment",
      "it.notices[0].since",
    ],
    ["calibrations", { firingIds: ["a b"] }, "not-an-id", "it.firingIds[0]"],
    ["upkeep", { ohms: [] }, "too-few", "it.ohms"],
    ["upkeep", { ohms: undefined }, "missing-field", "it.ohms"],
    ["loggers", { tokenHash: "G".repeat(64) }, "not-a-hash", "it.tokenHash"],
    ["firings", { endedAt: "2026-11-20T08:29:59.999Z" }, "wrong-order", "it.endedAt"],
    [
      "firings",
      {
        meterReadings: [
          { at: stamps.createdAt, kWh: 12 },
          { at: stamps.createdAt, kWh: 11 },
        ],
      },
      "wrong-order",
      "it.meterReadings[1].kWh",
    ],
    ["firings", { programme: { ...good.firings.programme, segments: [] } }, "too-few", "it.programme.segments"],
    ["notes", { aboutId: null }, "half-said", "it.aboutId"],
    ["notes", { text: "" }, "too-short", "it.text"],
    ["photos", { mediaType: "image/svg+xml" }, "wrong-value", "it.mediaType"],
    ["photos", { byteLength: 30_000_000 }, "out-of-range", "it.byteLength"],
  ])("of %s with %j is refused", (kind, changes, code, path) => {
    expect(() => check(kind, { ...good[kind as keyof typeof good], ...changes })).toThrow(
      expect.objectContaining({ code, path }),
    );
  });

  test("refers only to kinds that come before its own, so that adding in order works", () => {
    for (const kind of Object.values(kinds)) {
      for (const to of Object.values(kind.refersTo)) {
        expect(KIND_NAMES.indexOf(to)).toBeLessThan(KIND_NAMES.indexOf(kind.name));
      }
      for (const field of Object.keys(kind.refersTo)) expect(Object.keys(kind.schema.properties)).toContain(field);
    }
    expect(Object.keys(KINDS)).toEqual([...KIND_NAMES]);
  });
});

describe("ids and times", () => {
  test.each(["", "a/b", "..", "a b", "é", "x".repeat(65)])("%j is no id", (id) => {
    expect(() => checkId(id, "id")).toThrow("letters, digits");
  });
  test.each([
    "2026-02-30T00:00:00.000Z",
    "2026-11-25T24:00:00.000Z",
    "2026-11-25T09:00:00Z",
    "2026-11-25T09:00:00.000+01:00",
    "+12026-01-01T00:00:00.000Z",
  ])("%s is no moment, or not spelled so that text order is time order", (moment) =>
    expect(() => checkMoment(moment, "at")).toThrow("a moment in UTC"),
  );
  test("29 February is a day in leap years", () => {
    expect(() => checkDay("2028-02-29", "day")).not.toThrow();
    for (const day of ["2027-02-29", "2026-13-01", "2026-1-1", "today"]) expect(() => checkDay(day, "day")).toThrow();
  });
});

test("readings of no probe's, and temperatures no probe could have read, are refused", () => {
  const at = stamps.createdAt;
  expect(() => checkReadings("lid", [{ at, tempC: 1222 }])).not.toThrow();
  for (const tempC of [Number.NaN, Number.POSITIVE_INFINITY, -273, 3000]) {
    expect(() => checkReadings("lid", [{ at, tempC }])).toThrow(expect.objectContaining({ path: "readings[0].tempC" }));
  }
  expect(() => checkReadings("", [])).toThrow(expect.objectContaining({ code: "not-a-name" }));
});

test("a picture is told by its first bytes", () => {
  const text = (words: string) => new Uint8Array([...words].map((letter) => letter.charCodeAt(0)));
  expect(pictureType(Uint8Array.of(0xff, 0xd8, 0xff, 0xe0))).toBe("image/jpeg");
  expect(pictureType(text("\x89PNG\r\n\x1a\n"))).toBe("image/png");
  expect(pictureType(text("RIFF\0\0\0\0WEBP"))).toBe("image/webp");
  for (const other of ["", "GIF89a", "RIFF\0\0\0\0WAVE", "<svg/>", "\x89PNG\n"])
    expect(pictureType(text(other))).toBeNull();
});

import type { CalibrationRecord } from "../../studio/records/calibration-record.ts";
import type { ClayBodyRecord, GlazeRecord } from "../../studio/records/clay-and-glaze-records.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { KilnRecord } from "../../studio/records/kiln-record.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import type { LoggerRecord } from "../../studio/records/logger-record.ts";
import type { NoteRecord, PhotoRecord } from "../../studio/records/note-and-photo-records.ts";
import type { ProgrammeRecord } from "../../studio/records/programme-record.ts";
import type { StudioRecords } from "../../studio/records/store.ts";
import type { UpkeepRecord } from "../../studio/records/upkeep-record.ts";
import type { WareRecord } from "../../studio/records/ware-record.ts";

// An invented studio, every kind of record in it and every field used both ways.

export const MOMENT = "2026-11-20T08:30:00.000Z";
export const LATER = "2026-11-21T17:05:09.250Z";
const stamps = { createdAt: MOMENT, changedAt: MOMENT };

export const kiln = (id = "kiln-1"): KilnRecord => ({
  id,
  kiln: {
    name: "back room",
    chamber: { shape: "polygon", sides: 8, acrossFlatsMm: 430, depthMm: 460 },
    probes: [{ name: "thermocouple", angleDeg: 60, heightMm: 200, reachMm: 25 }],
    spyholes: [{ name: "top", angleDeg: 330, heightMm: 400, diameterMm: 20, open: true }],
  },
  furniture: {
    shelves: [{ name: "full", shape: "disc", diameterMm: 390, thicknessMm: 16, count: 4 }],
    posts: [{ heightMm: 100, widthMm: 35, shape: "square", count: 6 }],
  },
  rules: { gapMm: 8 },
  ...stamps,
});

export const clayBody = (id = "clay-1"): ClayBodyRecord => ({
  id,
  name: "buff stoneware",
  cones: { coolest: "5", hottest: "7" },
  note: "",
  ...stamps,
});

export const glaze = (id = "glaze-1"): GlazeRecord => ({
  id,
  name: "rain over slate",
  cones: { coolest: "5.5", hottest: "6" },
  runs: true,
  note: "two coats, \u201cthin\u201d at the foot; 釉",
  ...stamps,
});

export const ware = (id = "ware-1", changes: Partial<WareRecord> = {}): WareRecord => ({
  id,
  ware: {
    name: "espresso cup",
    count: 6,
    diameterMm: 70,
    heightMm: 65.5,
    handle: { reachMm: 26, widthMm: 16, angleDeg: 0 },
    profile: [
      [0, 28],
      [20, 33.25],
      [65.5, 35],
    ],
    cone: "6",
  },
  stage: "glazed",
  firingKind: "glaze",
  dueOn: "2026-12-18",
  ownerNote: "winter market",
  clayBodyId: "clay-1",
  glazeId: "glaze-1",
  ...stamps,
  ...changes,
});

export const plainWare = (id: string, changes: Partial<WareRecord> = {}): WareRecord => ({
  ...ware(id, { firingKind: null, dueOn: null, clayBodyId: null, glazeId: null, ownerNote: "" }),
  ware: { name: "bowl", count: 2, diameterMm: 150, heightMm: 60 },
  ...changes,
});

export const load = (id = "load-1", changes: Partial<LoadRecord> = {}): LoadRecord => ({
  id,
  kilnId: "kiln-1",
  name: "before the market",
  state: "loading",
  request: {
    format: "load-request/1",
    kiln: kiln().kiln,
    furniture: kiln().furniture,
    ware: [ware().ware],
    rules: { gapMm: 8 },
  },
  plan: {
    format: "load-plan/1",
    levels: [
      {
        shelf: "full",
        topMm: 41,
        xMm: 0,
        yMm: 0,
        turnDeg: 0,
        posts: [{ xMm: 150, yMm: 40, turnDeg: 0, heightsMm: [25] }],
        placements: [{ ware: "espresso cup", xMm: 20.123456789, yMm: -80, turnDeg: 110 }],
      },
    ],
    left: [{ ware: "espresso cup", count: 5, reason: "no room" }],
    figures: { value: 1 },
  },
  pins: [{ level: 0, placement: 0 }],
  ticks: [{ level: 0, placement: 0, at: LATER }],
  sources: [{ ware: "espresso cup", wareId: "ware-1" }],
  takenBack: [{ level: 0, placement: 0, at: MOMENT }],
  version: 1,
  ...stamps,
  ...changes,
});

export const firing = (id = "firing-1", changes: Partial<FiringRecord> = {}): FiringRecord => ({
  id,
  kilnId: "kiln-1",
  loadId: "load-1",
  name: "glaze, slow",
  state: "cooling",
  programme: {
    format: "programme/1",
    name: "slow glaze",
    segments: [
      { rateCPerHour: 60, targetC: 120, holdMin: 30 },
      { rateCPerHour: null, targetC: 1200, holdMin: 0 },
    ],
  },
  startedAt: MOMENT,
  endedAt: null,
  meterReadings: [{ at: MOMENT, kWh: 10321.4 }],
  ...stamps,
  ...changes,
});

/** A firing with everything that came around it. */
export const wholeFiring = (id = "firing-3", changes: Partial<FiringRecord> = {}): FiringRecord => ({
  ...firing(id, { state: "finished", endedAt: LATER }),
  plannedStartAt: MOMENT,
  shutOffAt: LATER,
  foretold: {
    ...{ hours: 9.25, kWh: 31.5, peakC: 1221.7, cone: "6", cost: null, kWhEachHour: [2.5, 3.25] },
    levels: [{ level: 0, peakC: 1214.5, ladder: 27.2, offsetC: -3.5 }],
    coolHours: { 200: 9, 120: 11.5, 95: 12.75, 50: null },
    curve: [
      [0, 20],
      [555, 1221.7],
    ],
    assumed: ["Walls of 64 mm."],
    calibrationId: "calibration-1",
  },
  checklist: [
    { item: "plugs", at: MOMENT },
    { item: "lid", at: null },
  ],
  cones: [{ level: 0, cone: "5.5", bendDeg: 88.5, place: "by the spyhole" }],
  outcomes: [
    {
      ...{ level: 0, placement: 0, grade: "second", faults: ["running", "stuck"], note: "on its cookie", at: LATER },
      becomes: "again",
    },
  ],
  takenBack: [{ level: 0, placement: 1, at: LATER }],
  notices: [
    { id: "notice-1", kind: "silence", since: MOMENT, until: LATER, message: "Nothing heard for 10 minutes." },
    { id: "notice-2", kind: "stalling", since: LATER, until: null, message: "It climbs more slowly than it should." },
  ],
  ...changes,
});

export const programme = (id = "programme-1"): ProgrammeRecord => ({
  id,
  programme: { format: "programme/1", name: "usual", segments: [{ rateCPerHour: 80, targetC: 600, holdMin: 10 }] },
  note: "for thick ware",
  ...stamps,
});

export const calibration = (id = "calibration-1", changes: Partial<CalibrationRecord> = {}): CalibrationRecord => ({
  ...{ id, kilnId: "kiln-1", at: LATER, firingIds: ["firing-1", "gone-since"] },
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
  ...changes,
});

const foretoldWith = {
  ...{ kWh: 31, shelvesC: [1220, 1214.5], coolHours: 11.5, finished: true },
  unsure: { kWhPercent: 4, shelfC: 6.5, coolPercent: 8 },
};

/** What a calibration says beyond its values. */
export const LEARNED: NonNullable<CalibrationRecord["learned"]> = {
  ...{ fit: 1.1, settled: true, before: foretoldWith, after: foretoldWith, notes: ["Learned: much."] },
  misfits: [{ kind: "meter", unit: "kWh", count: 1, before: 3, after: 0.2 }],
  next: [{ kind: "cones", how: "Set a cone on every shelf.", surerBy: 0.4 }],
};

export const upkeep = (id = "upkeep-1", changes: Partial<UpkeepRecord> = {}): UpkeepRecord => ({
  ...{ id, kilnId: "kiln-1", at: LATER, what: "element resistance", ohms: [21.5, 22], note: "cold, unplugged" },
  ...stamps,
  ...changes,
});

export const logger = (id = "logger-1"): LoggerRecord => ({
  ...{
    id,
    kilnId: "kiln-1",
    probe: "thermocouple",
    name: "the box by the door",
    tokenHash: "0123456789abcdef".repeat(4),
  },
  ...stamps,
});

export const note = (id = "note-1", changes: Partial<NoteRecord> = {}): NoteRecord => ({
  id,
  aboutKind: "firings",
  aboutId: "firing-1",
  text: "Smelt of hot dust until 300 °C.\nVent closed at 650.",
  ...stamps,
  ...changes,
});

/** The eight bytes every PNG begins with, and some that no text survives. */
export const PICTURE = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 255, 254, 0, 13, 10, 128);

export const photo = (id = "photo-1", changes: Partial<PhotoRecord> = {}): PhotoRecord => ({
  id,
  aboutKind: "ware",
  aboutId: "ware-1",
  mediaType: "image/png",
  byteLength: PICTURE.length,
  caption: "before glazing",
  takenAt: LATER,
  ...stamps,
  ...changes,
});

export const READINGS = [
  { at: "2026-11-20T08:31:00.000Z", tempC: 21.3 },
  { at: "2026-11-20T08:32:00.000Z", tempC: 0.1 + 0.2 },
  { at: "2026-11-20T08:33:00.000Z", tempC: -0.5 },
] as const;

/** Keeps one of everything, and a second of what can stand with its optional fields empty. */
export async function fillStudio(records: StudioRecords): Promise<void> {
  await records.kilns.add(kiln(), { ...kiln("kiln-2"), rules: {} });
  await records.clayBodies.add(clayBody(), { ...clayBody("clay-2"), cones: null });
  await records.glazes.add(glaze(), { ...glaze("glaze-2"), cones: null, runs: false });
  await records.ware.add(ware(), plainWare("ware-2"));
  await records.loads.add(
    load(),
    load("load-2", {
      ...{ plan: null, pins: [], ticks: [], sources: [], state: "planned", version: 7, takenBack: [] },
      alternativeOf: "load-1",
    }),
  );
  await records.firings.add(
    firing(),
    firing("firing-2", { loadId: null, programme: null, startedAt: null, state: "planned", meterReadings: [] }),
    wholeFiring(),
  );
  await records.readings.add("firing-1", "thermocouple", READINGS);
  await records.readings.add("firing-1", "lid", READINGS.slice(0, 1));
  await records.notes.add(note(), note("note-2", { aboutKind: null, aboutId: null }));
  await records.programmes.add(programme());
  await records.calibrations.add(calibration(), calibration("calibration-2", { firingIds: [], learned: LEARNED }));
  const { ohms: _, ...plain } = upkeep("upkeep-2", { what: "shelf washed", count: 4 });
  await records.upkeep.add(upkeep(), plain);
  await records.loggers.add(logger());
  await records.photos.add(photo(), PICTURE);
  await records.photos.add(photo("photo-2", { aboutKind: null, aboutId: null, takenAt: null }), PICTURE);
}

/** Everything kept, in one value that can be compared. */
export async function everything(records: StudioRecords) {
  const [photos, firings] = [await records.photos.list(), await records.firings.list()];
  const pictures = [];
  for (const { id } of photos) pictures.push([...((await records.photos.picture(id)) ?? [])]);
  const readings = [];
  for (const { id } of firings) readings.push(...(await records.readings.of(id)));
  return {
    kilns: await records.kilns.list(),
    clayBodies: await records.clayBodies.list(),
    glazes: await records.glazes.list(),
    ware: await records.ware.list(),
    loads: await records.loads.list(),
    firings,
    readings,
    notes: await records.notes.list(),
    photos,
    pictures,
    programmes: await records.programmes.list(),
    calibrations: await records.calibrations.list(),
    upkeep: await records.upkeep.list(),
    loggers: await records.loggers.list(),
  };
}

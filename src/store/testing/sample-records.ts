import type { ClayBodyRecord, GlazeRecord } from "../../studio/records/clay-and-glaze-records.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { KilnRecord } from "../../studio/records/kiln-record.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import type { NoteRecord, PhotoRecord } from "../../studio/records/note-and-photo-records.ts";
import type { StudioRecords } from "../../studio/records/store.ts";
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
  );
  await records.readings.add("firing-1", "thermocouple", READINGS);
  await records.readings.add("firing-1", "lid", READINGS.slice(0, 1));
  await records.notes.add(note(), note("note-2", { aboutKind: null, aboutId: null }));
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
  };
}

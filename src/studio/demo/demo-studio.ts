import type { CalibrationRecord } from "../records/calibration-record.ts";
import type { ClayBodyRecord, GlazeRecord } from "../records/clay-and-glaze-records.ts";
import type { FiringRecord } from "../records/firing-record.ts";
import type { KilnRecord } from "../records/kiln-record.ts";
import type { LoadRecord } from "../records/load-record.ts";
import type { NoteRecord } from "../records/note-and-photo-records.ts";
import type { ProgrammeRecord } from "../records/programme-record.ts";
import type { ReadingSeries } from "../records/reading.ts";
import { FIRST_SETTINGS, type StudioSettings } from "../records/studio-settings.ts";
import type { UpkeepRecord } from "../records/upkeep-record.ts";
import type { WareRecord } from "../records/ware-record.ts";
import { pastYear } from "../year/year-data.ts";
import { demoFirings } from "./demo-firings.ts";
import { DEMO_KILNS } from "./demo-kilns.ts";
import { demoLoads } from "./demo-loads.ts";
import { DEMO_CLAYS, DEMO_GLAZES } from "./demo-materials.ts";
import { demoNotes } from "./demo-notes.ts";
import { DEMO_TARIFF, demoProgrammes, programmeRecords } from "./demo-programmes.ts";
import { demoTime } from "./demo-time.ts";
import { demoUpkeep } from "./demo-upkeep.ts";
import { DEMO_WARE } from "./demo-ware.ts";

/** How long the kiln had fired before what the demo goes into. */
const YEAR_DAYS = 335;

/** A whole invented studio, as records. */
export interface DemoStudio {
  readonly settings: StudioSettings;
  readonly kilns: readonly KilnRecord[];
  readonly clayBodies: readonly ClayBodyRecord[];
  readonly glazes: readonly GlazeRecord[];
  readonly ware: readonly WareRecord[];
  readonly loads: readonly LoadRecord[];
  readonly firings: readonly FiringRecord[];
  readonly notes: readonly NoteRecord[];
  readonly programmes: readonly ProgrammeRecord[];
  readonly calibrations: readonly CalibrationRecord[];
  readonly upkeep: readonly UpkeepRecord[];
  readonly readings: readonly ReadingSeries[];
}

/** Invented prices, so that money has something to show. */
const DEMO_COSTS: Partial<StudioSettings> = {
  ...{ currency: "EUR", tariff: DEMO_TARIFF },
  ...{ elementSetPrice: 260, elementLifeFirings: 120, shelfPrice: 34, shelfLifeFirings: 150 },
  guestFee: { perLitre: 0.9, perFiring: 3 },
};

/**
 * The studio of an invented potter in the middle of her work. Its last loads are planned, fired and learned from as it is
 * made, which takes two seconds or so of computing; the year before them is kept as data (src/studio/year).
 *
 * @param now the moment everything in it is reckoned from, ISO 8601 in UTC
 * @param newId a new id each time
 */
export function demoStudio(now: string, newId: () => string): DemoStudio {
  const time = demoTime(now);
  const made = (daysAgo: number) => ({ id: newId(), createdAt: time.ago(daysAgo), changedAt: time.ago(daysAgo) });
  const each = <Name extends string, Content extends object>(all: Readonly<Record<Name, Content>>, daysAgo: number) =>
    Object.fromEntries(
      Object.entries(all).map(([name, content]) => [name, { ...(content as Content), ...made(daysAgo) }]),
    ) as Record<Name, Content & ReturnType<typeof made>>;

  const kilns = each(DEMO_KILNS, YEAR_DAYS + 60);
  const clays = each(DEMO_CLAYS, YEAR_DAYS + 59);
  const glazes = each(DEMO_GLAZES, YEAR_DAYS + 58);
  const ware = DEMO_WARE.map(
    ({ ware: piece, clay, glaze, stage, kind, dueInDays, ownerNote, daysOld }): WareRecord => ({
      ...{ ware: piece, stage, firingKind: kind, ownerNote, ...made(daysOld) },
      dueOn: dueInDays === null ? null : time.day(dueInDays),
      clayBodyId: clays[clay].id,
      glazeId: glaze === null ? null : glazes[glaze].id,
    }),
  );
  const { big, small } = kilns;
  const loads = demoLoads({ big, small, ware, glazes: Object.values(glazes) }, time, newId);
  const programmes = demoProgrammes();
  // The elements were changed then: what her records show of the year before them.
  const past = pastYear(time.ago(62), big.id);
  const idOf = (name: string): string => named(ware, (batch) => batch.ware.name, name);
  const firings = demoFirings(
    { bisque: loads.pastBisque, glaze: loads.pastGlaze, trial: loads.trial, market: loads.market },
    programmes,
    DEMO_TARIFF,
    past.calibrations.at(-1) ?? null,
    time,
    newId,
  );
  const notes = demoNotes(
    {
      ...{ bigKiln: big.id, tide: glazes.tide.id, moonJar: idOf("moon jar"), teapot: idOf("round teapot") },
      ...{ market: loads.market.id, bisqueFiring: firings.bisque.id },
      ...{ glazeFiring: firings.glaze.id, trialFiring: firings.trial.id },
    },
    time,
    newId,
  );
  return {
    settings: { ...FIRST_SETTINGS, studioName: "Window Bench, Ilsabet Quorn", ...DEMO_COSTS },
    kilns: Object.values(kilns),
    clayBodies: Object.values(clays),
    glazes: Object.values(glazes),
    ...{ ware, loads: [...Object.values(loads), ...past.loads], notes },
    firings: [...past.firings, ...firings.earlier, firings.bisque, firings.glaze, firings.trial, firings.next],
    readings: [...past.readings, ...firings.readings],
    calibrations: [...past.calibrations, ...firings.calibrations],
    programmes: programmeRecords(programmes, time, newId),
    upkeep: [...past.upkeep, ...demoUpkeep({ big: big.id, small: small.id }, time, newId)],
  };
}

function named<R extends { id: string }>(records: readonly R[], nameOf: (record: R) => string, name: string): string {
  const record = records.find((each) => nameOf(each) === name);
  if (!record) throw new Error(`The demo has nothing called ${name}.`);
  return record.id;
}

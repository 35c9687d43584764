import { CALIBRATIONS, type CalibrationRecord } from "./calibration-record.ts";
import { CLAY_BODIES, type ClayBodyRecord, GLAZES, type GlazeRecord } from "./clay-and-glaze-records.ts";
import { FIRINGS, type FiringRecord } from "./firing-record.ts";
import { KILNS, type KilnRecord } from "./kiln-record.ts";
import { LOADS, type LoadRecord } from "./load-record.ts";
import { LOGGERS, type LoggerRecord } from "./logger-record.ts";
import { NOTES, type NoteRecord, PHOTOS, type PhotoRecord } from "./note-and-photo-records.ts";
import { PROGRAMMES, type ProgrammeRecord } from "./programme-record.ts";
import { UPKEEP, type UpkeepRecord } from "./upkeep-record.ts";
import { WARE, type WareRecord } from "./ware-record.ts";

/** The record each kind holds. */
export interface RecordOf {
  kilns: KilnRecord;
  clayBodies: ClayBodyRecord;
  glazes: GlazeRecord;
  ware: WareRecord;
  loads: LoadRecord;
  firings: FiringRecord;
  notes: NoteRecord;
  photos: PhotoRecord;
  programmes: ProgrammeRecord;
  calibrations: CalibrationRecord;
  upkeep: UpkeepRecord;
  loggers: LoggerRecord;
}

/** Every kind of record by its name, in the order of adding. */
export const KINDS = {
  kilns: KILNS,
  clayBodies: CLAY_BODIES,
  glazes: GLAZES,
  ware: WARE,
  loads: LOADS,
  firings: FIRINGS,
  notes: NOTES,
  photos: PHOTOS,
  programmes: PROGRAMMES,
  calibrations: CALIBRATIONS,
  upkeep: UPKEEP,
  loggers: LOGGERS,
} as const;

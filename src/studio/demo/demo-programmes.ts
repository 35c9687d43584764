import type { Programme, ProgrammeFile } from "../../firing/programme/programme.ts";
import { writeProgramme } from "../../firing/programme/write-programme.ts";
import type { Tariff } from "../../firing/tariff/tariff.ts";
import type { ProgrammeRecord } from "../records/programme-record.ts";
import type { DemoTime } from "./demo-time.ts";

export type DemoProgrammeName = "bisque" | "glaze" | "trial";

/** The programmes the invented potter fires by, written for her cones. */
export function demoProgrammes(): Readonly<Record<DemoProgrammeName, Programme>> {
  return {
    bisque: writeProgramme({ cone: "05", kind: "bisque", pace: "slow", name: "bisque, slow" }).programme,
    glaze: writeProgramme({ cone: "6", kind: "glaze", pace: "medium", name: "glaze, cone 6" }).programme,
    trial: writeProgramme({ cone: "6", kind: "glaze", pace: "fast", name: "trials, quick" }).programme,
  };
}

const NOTES: Readonly<Record<DemoProgrammeName, string>> = {
  bisque: "For anything with a thick foot. Vent open to 650 °C.",
  glaze: "The usual one.",
  trial: "Thin test pieces only, in the small kiln.",
};

/** The same as records of hers. */
export const programmeRecords = (
  programmes: Readonly<Record<DemoProgrammeName, Programme>>,
  time: DemoTime,
  newId: () => string,
): ProgrammeRecord[] =>
  Object.entries(programmes).map(([name, programme]) => ({
    id: newId(),
    programme: JSON.parse(JSON.stringify(programme)) as ProgrammeFile,
    note: NOTES[name as DemoProgrammeName],
    ...{ createdAt: time.ago(57), changedAt: time.ago(57) },
  }));

/** What electricity costs the invented potter: an invented tariff, cheaper by night. */
export const DEMO_TARIFF: Tariff = {
  ...{ format: "tariff/1", name: "day and night", timeZone: "UTC", currency: "EUR", pricePerKWh: 0.34 },
  slots: [{ name: "night", from: "22:00", to: "06:00", pricePerKWh: 0.21 }],
};

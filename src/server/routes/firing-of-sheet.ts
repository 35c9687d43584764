import { readProgramme } from "../../firing/programme/programme.ts";
import type { LoadRequest } from "../../loading/load-request.ts";
import { BadInput } from "../../measures/bad-input.ts";
import { firingPages } from "../../sheets/firing/firing-pages.ts";
import type { PageContent, Paper } from "../../sheets/page/sheet-page.ts";
import { firingSheet } from "../../studio/firing-sheet.ts";
import { firingStart } from "../../studio/firing-start.ts";
import { foretellLoad } from "../../studio/firings/foretold-record.ts";
import { newestCalibration } from "../../studio/firings/newest-calibration.ts";
import type { CalibrationRecord } from "../../studio/records/calibration-record.ts";
import { FIRINGS, type FiringRecord } from "../../studio/records/firing-record.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import { recordPath } from "../../studio/records/refusals.ts";
import type { StudioSettings } from "../../studio/records/studio-settings.ts";

interface FiringOfSheet {
  readonly firing: FiringRecord;
  readonly load: LoadRecord;
  readonly request: LoadRequest;
  readonly calibrations: readonly CalibrationRecord[];
  readonly settings: StudioSettings;
  readonly paper: Paper;
}

/**
 * A firing's pages for the sheet of its load: what to key in, what to expect of it in this kiln as it is known now, when
 * to look. What else was tried with the load is told on the screen, where there is time for it.
 *
 * @throws BadInput for a firing of another load, or one without a programme
 */
export function firingOfSheet({ firing, load, request, calibrations, settings, paper }: FiringOfSheet): PageContent[] {
  const refuse = (field: string, found: string, expected: string): never => {
    throw new BadInput({ code: "wrong-firing", path: `${recordPath(FIRINGS, firing.id)}.${field}`, found, expected });
  };
  if (firing.loadId !== load.id) return refuse("loadId", `the load ${firing.loadId}`, `the load ${load.id}`);
  if (firing.programme === null) return refuse("programme", "none", "a programme to print");
  const programme = readProgramme(firing.programme);
  const calibration = newestCalibration(calibrations, load.kilnId);
  const { prediction, foretold } = foretellLoad({ load, programme, calibration });
  const units = settings.temperatureUnits;
  const startAt = firing.startedAt ?? firing.plannedStartAt;
  const { tariff } = settings;
  const sheet = firingSheet(
    request,
    programme,
    { prediction, cone: foretold.cone, assumed: foretold.assumed ?? [], advice: [] },
    {
      units,
      pricePerKWh: tariff !== undefined && (tariff.slots ?? []).length === 0 ? tariff.pricePerKWh : null,
      start: tariff === undefined || startAt === undefined ? null : firingStart(prediction, tariff, { start: startAt }),
    },
  );
  return firingPages(sheet, { paper, units });
}

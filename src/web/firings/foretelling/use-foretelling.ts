import { keepPreviousData, useQuery } from "@tanstack/react-query";
import { useMemo } from "react";
import type { Programme } from "../../../firing/programme/programme.ts";
import { newestCalibration } from "../../../studio/firings/newest-calibration.ts";
import type { CalibrationRecord } from "../../../studio/records/calibration-record.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import { wholeLoad } from "../../loads/whole-load.ts";
import { useCalibrations } from "../../studio/hooks.ts";
import { askKiln } from "./ask-kiln.ts";
import type { ForetoldHere, LoadedKiln } from "./kiln-answers.ts";

/** A loaded kiln as far as this page knows it; null without a load that is planned, undefined while it is read. */
export function useLoadedKiln(load: LoadRecord | null | undefined): LoadedKiln | null | undefined {
  const calibrations = useCalibrations();
  return useMemo(() => {
    if (load === undefined || (load !== null && calibrations === undefined)) return undefined;
    return load && calibrations ? loadedKiln(load, newestCalibration(calibrations, load.kilnId)) : null;
  }, [load, calibrations]);
}

/** The same where both are at hand already. */
export function loadedKiln(load: LoadRecord, calibration: CalibrationRecord | null): LoadedKiln | null {
  const { request, plan } = wholeLoad(load);
  const key = `${load.id} ${load.version} ${load.changedAt} ${calibration?.id ?? ""}`;
  return plan && { key, request, plan, calibration: calibration && { calibration: calibration.calibration } };
}

export interface Foretelling {
  /** The last that was reckoned: of the programme before, while a new one is at work. */
  readonly foretold: ForetoldHere | undefined;
  /** Undefined until it is reckoned, which takes longer. */
  readonly advice: readonly string[] | undefined;
  readonly isBusy: boolean;
  readonly error: Error | null;
}

const KEPT_MS = 60_000;

/** A programme foretold for a load, reckoned beside the page whenever either is another. */
export function useForetelling(kiln: LoadedKiln | null | undefined, programme: Programme | null): Foretelling {
  const isAsked = kiln !== null && kiln !== undefined && programme !== null;
  const about = [kiln?.key, programme?.cone, programme?.kind, programme?.segments];
  const foretold = useQuery({
    queryKey: ["foretold", ...about],
    queryFn: () => askKiln({ kind: "foretell", kiln: kiln as LoadedKiln, programme: programme as Programme }),
    enabled: isAsked,
    placeholderData: keepPreviousData,
    gcTime: KEPT_MS,
    retry: false,
  });
  const advice = useQuery({
    queryKey: ["advised", ...about],
    queryFn: () => askKiln({ kind: "advise", kiln: kiln as LoadedKiln, programme: programme as Programme }),
    enabled: isAsked && foretold.isSuccess && !foretold.isPlaceholderData,
    gcTime: KEPT_MS,
    retry: false,
  });
  return {
    foretold: isAsked ? foretold.data : undefined,
    advice: advice.data,
    isBusy: isAsked && (foretold.isFetching || foretold.isPlaceholderData),
    error: foretold.error,
  };
}

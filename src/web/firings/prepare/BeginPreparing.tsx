import { useEffect, useRef, useState } from "react";
import { useLocation, useSearch } from "wouter";
import type { ProgrammeFile } from "../../../firing/programme/programme.ts";
import { BadInput } from "../../../measures/bad-input.ts";
import { checklistFor } from "../../../studio/firings/checklist.ts";
import { newestCalibration } from "../../../studio/firings/newest-calibration.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import { Button, Empty, Page, Problem, Spinner } from "../../parts/index.ts";
import { newId, useCalibrations, useCommand, useFirings, useLoad, useWare } from "../../studio/hooks.ts";
import { askKiln } from "../foretelling/ask-kiln.ts";
import type { LoadedKiln } from "../foretelling/kiln-answers.ts";
import { loadedKiln } from "../foretelling/use-foretelling.ts";
import { usualWish, type WrittenWish } from "./usual-wish.ts";

const BACK = { href: "/loads", label: "To the loads" };

/**
 * Makes the firing of a load, with a programme written for what stands in it, and goes to it. A load whose firing is
 * being prepared already has that one.
 */
export function BeginPreparing() {
  const loadId = new URLSearchParams(useSearch()).get("load") ?? "";
  const load = useLoad(loadId);
  const ware = useWare();
  const firings = useFirings();
  const calibrations = useCalibrations();
  const command = useCommand();
  const [, go] = useLocation();
  const [error, setError] = useState<unknown>(null);
  const begun = useRef(false);

  useEffect(() => {
    if (!load || !ware || !firings || !calibrations || begun.current || load.plan === null) return;
    begun.current = true;
    const open = firings.find((firing) => firing.loadId === load.id && firing.endedAt === null);
    if (open) {
      go(`/firings/${open.id}`, { replace: true });
      return;
    }
    const kiln = loadedKiln(load, newestCalibration(calibrations, load.kilnId));
    const id = newId();
    firstProgramme(kiln, usualWish(load, ware))
      .then((programme) => {
        const given = command("prepare-firing", { id, loadId: load.id, programme }, (cache) =>
          cache.put("firings", preparedFiring(id, load, programme, new Date().toISOString())),
        );
        go(`/firings/${id}`, { replace: true });
        return given;
      })
      .catch(setError);
  }, [load, ware, firings, calibrations, command, go]);

  if (load === null || load?.plan === null) {
    return (
      <Page title="Prepare a firing" back={BACK}>
        <Empty
          title={load === null ? "That load is gone" : "This load is not planned yet"}
          words="A firing is prepared for a load whose pieces have their places: what the kiln does depends on them."
          action={
            <Button href={load === null ? "/loads" : `/loads/${loadId}`}>
              {load ? "To the load" : "To the loads"}
            </Button>
          }
        />
      </Page>
    );
  }
  return (
    <Page title="Prepare a firing" back={BACK}>
      <Problem error={error} />
      {error === null && <Spinner words="A programme is being written for this load" />}
    </Page>
  );
}

/** Aimed in this kiln; where that cannot be, as for a kiln that follows any climb; where not even that, none yet. */
async function firstProgramme(kiln: LoadedKiln | null, wish: WrittenWish): Promise<ProgrammeFile | null> {
  for (const place of [kiln, null]) {
    try {
      const { programme } = await askKiln({ kind: "write", kiln: place, wish });
      return JSON.parse(JSON.stringify(programme)) as ProgrammeFile;
    } catch (error) {
      if (!(error instanceof BadInput)) throw error;
    }
  }
  return null;
}

const preparedFiring = (id: string, load: LoadRecord, programme: ProgrammeFile | null, now: string): FiringRecord => ({
  ...{ id, kilnId: load.kilnId, loadId: load.id, name: load.name, state: "planned", programme },
  ...{ startedAt: null, endedAt: null, meterReadings: [], createdAt: now, changedAt: now },
  checklist: checklistFor(programme?.kind).map(({ item }) => ({ item, at: null })),
});

import { lazy, Suspense, useMemo, useState } from "react";
import { useLocation, useParams } from "wouter";
import { kilnMaps } from "../../studio/firings/kiln-maps.ts";
import type { CalibrationRecord } from "../../studio/records/calibration-record.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { KilnRecord } from "../../studio/records/kiln-record.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import { useAction } from "../actions/registry.ts";
import { Button, Empty, Menu, NothingHere, Page, Problem, Spinner } from "../parts/index.ts";
import { useCalibrations, useFirings, useKiln, useLoads } from "../studio/hooks.ts";
import { AgainstPart } from "./against/AgainstPart.tsx";
import parts from "./Learn.module.css";
import { firingsToLearnFrom } from "./learning/firings-to-learn-from.ts";
import { useLearn } from "./learning/use-learn.ts";
import { MapsPart } from "./maps/MapsPart.tsx";
import { TallyTable } from "./maps/TallyTable.tsx";
import { NextPart } from "./next/NextPart.tsx";
import { WhatTeaches } from "./next/WhatTeaches.tsx";
import { TaughtPart } from "./taught/TaughtPart.tsx";

const ChooseFirings = lazy(() => import("./learning/ChooseFirings.tsx"));

/** What a kiln's firings have taught: how it fires, how well it is foretold, where it loses, what to measure next. */
export default function LearnScreen() {
  const { kilnId = "" } = useParams<{ kilnId: string }>();
  const kiln = useKiln(kilnId);
  const firings = useFirings();
  const loads = useLoads();
  const calibrations = useCalibrations();
  if (kiln === undefined || !firings || !loads || !calibrations) return <Spinner />;
  if (kiln === null) {
    return (
      <NothingHere
        title="How it fires"
        back={{ href: "/kilns", label: "All kilns" }}
        heading="This kiln is not here"
        words="It may have been removed. Undo in the list of kilns brings it back."
      />
    );
  }
  return (
    <Learned
      kiln={kiln}
      firings={firings.filter((each) => each.kilnId === kilnId)}
      loads={loads}
      calibrations={calibrations.filter((each) => each.kilnId === kilnId)}
    />
  );
}

interface LearnedProps {
  readonly kiln: KilnRecord;
  readonly firings: readonly FiringRecord[];
  readonly loads: readonly LoadRecord[];
  readonly calibrations: readonly CalibrationRecord[];
}

function Learned({ kiln, firings, loads, calibrations }: LearnedProps) {
  const [, go] = useLocation();
  const [isChoosing, setChoosing] = useState(false);
  const { isBusy, error, learn } = useLearn(kiln.id);
  const newestFirst = useMemo(() => [...calibrations].sort((a, b) => (a.at < b.at ? 1 : -1)), [calibrations]);
  const maps = useMemo(() => kilnMaps(firings, loads), [firings, loads]);
  const from = firingsToLearnFrom(firings, loads, calibrations);
  const [last] = from.fresh;
  const [newest] = newestFirst;
  useAction({
    ...{ id: "learn-from-last", name: "Learn from the last firing", group: "Kilns" },
    run: () => last && void learn([last]),
    isEnabled: last !== undefined && !isBusy,
  });
  const hasFired = firings.some(({ startedAt }) => startedAt !== null);
  const name = kiln.kiln.name;
  return (
    <Page
      title="How it fires"
      back={{ href: `/kilns/${kiln.id}`, label: `To ${name}` }}
      undoScope="kilns"
      below={name}
      actions={
        <>
          {last && (
            <Button look="main" isBusy={isBusy} onPress={() => void learn([last])}>
              Learn from the last firing
            </Button>
          )}
          <Menu
            label={`More of ${name}`}
            items={[
              {
                id: "several",
                label: "Learn from several firings",
                isDisabled: from.fresh.length + from.learned.length === 0,
                onPress: () => setChoosing(true),
              },
              { id: "upkeep", label: "Upkeep", onPress: () => go(`/upkeep/${kiln.id}`) },
              { id: "firings", label: "Firings", onPress: () => go("/firings") },
            ]}
          />
        </>
      }
    >
      <Problem error={error} />
      {!last && from.lastCannot && <p className={parts.soft}>The last firing teaches nothing: {from.lastCannot}</p>}
      {!hasFired && (
        <Empty
          title="This kiln has not fired yet"
          words="After each firing Wareboard learns how this kiln really fires: its walls, its elements, its hot and cool shelves. The next one is foretold the better for it."
          action={<Button href="/firings">To the firings</Button>}
        />
      )}
      <div className={parts.columns}>
        <div className={parts.column}>
          {newest ? <TaughtPart calibrations={newestFirst} firings={firings} /> : <WhatTeaches />}
          <AgainstPart firings={firings} />
        </div>
        <div className={parts.column}>
          {newest && <NextPart calibration={newest} />}
          {maps.all.pieces > 0 && <MapsPart kiln={kiln.kiln} maps={maps} />}
          {hasFired && maps.all.pieces === 0 && (
            <p className={parts.part}>
              No piece was judged yet. Mark good, second and lost as you unload: then this shows where in the kiln they
              go wrong, and with which glaze.
            </p>
          )}
          {maps.byGlaze.length > 0 && (
            <>
              <TallyTable
                title="By glaze"
                of="Glaze"
                rows={maps.byGlaze.map(({ glaze, ...each }) => ({ name: glaze, ...each }))}
              />
              <TallyTable
                title="By form"
                of="Form"
                rows={maps.byForm.map(({ form, ...each }) => ({ name: form, ...each }))}
              />
            </>
          )}
        </div>
      </div>
      <Suspense fallback={null}>
        {isChoosing && <ChooseFirings kilnId={kiln.id} from={from} onClose={() => setChoosing(false)} />}
      </Suspense>
    </Page>
  );
}

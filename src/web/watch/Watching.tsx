import { lazy, Suspense, useMemo, useState } from "react";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import { useAwake } from "../at-the-kiln/use-awake.ts";
import { dayClockWords, timeWords } from "../firings/words/clock-words.ts";
import { AwayIcon, Button, Page, Sign, Spinner } from "../parts/index.ts";
import { ChartPart } from "./chart/ChartPart.tsx";
import { ConesPart } from "./cones/ConesPart.tsx";
import { CourseButtons } from "./course/CourseButtons.tsx";
import { FaultsPart } from "./FaultsPart.tsx";
import { stillWatch } from "./live/still-watch.ts";
import { minuteOf, studioNowMs } from "./live/studio-clock.ts";
import { useTick } from "./live/use-tick.ts";
import { useWatch } from "./live/use-watch.ts";
import { NowPart } from "./NowPart.tsx";
import { OutlookPart } from "./OutlookPart.tsx";
import { type ReadingsDialog, ReadingsPart } from "./ReadingsPart.tsx";
import styles from "./Watch.module.css";
import { agoWords } from "./words/since-words.ts";

const TypeReading = lazy(() => import("./readings/TypeReading.tsx"));
const BringLog = lazy(() => import("./readings/BringLog.tsx"));
const Senders = lazy(() => import("./readings/Senders.tsx"));

const DIALOGS = { type: TypeReading, log: BringLog, senders: Senders } as const;

/** A firing under way, or one that was: what is known of it, as it goes on. */
export function Watching({ firing }: { readonly firing: FiringRecord }) {
  useAwake();
  const isUnderWay = firing.state === "firing" || firing.state === "cooling";
  const { known, isLive } = useWatch(firing.id, isUnderWay);
  const tick = useTick();
  const [open, setOpen] = useState<ReadingsDialog | null>(null);
  const still = useMemo(() => (isUnderWay ? null : stillWatch(firing)), [firing, isUnderWay]);
  const nowMs = still !== null ? Date.parse(still.now) : known === null ? tick : studioNowMs(known, tick);
  const now = (): string => new Date(known === null ? Date.now() : studioNowMs(known, Date.now())).toISOString();
  const Opened = open === null ? null : DIALOGS[open];
  const watch = still ?? known?.watch ?? null;
  return (
    <Page
      title={firing.name}
      back={{ href: "/firings", label: "To the firings" }}
      undoScope={`firing:${firing.id}`}
      actions={<CourseButtons firing={firing} isOver={watch?.place?.doing === "over"} now={now} />}
    >
      {watch !== null && watch.pace !== 1 && (
        <p className={styles.notice}>
          <span>
            <b>A rehearsal.</b> This kiln is invented, and its clock runs {watch.pace} times as fast: it is{" "}
            {timeWords(new Date(nowMs).toISOString())} there.
          </span>
        </p>
      )}
      {!isUnderWay && <Over firing={firing} />}
      {known !== null && isUnderWay && !isLive && (
        <p className={styles.notice} role="status">
          <AwayIcon />
          <span>
            Known last at {timeWords(known.watch.now)}, {agoWords(Math.max(0, tick - known.heardMs))} ago. It goes on
            once the studio answers.
          </span>
        </p>
      )}
      {watch === null ? (
        isUnderWay && <Spinner words="The kiln is asked for" />
      ) : (
        <>
          {isUnderWay && <NowPart firing={firing} watch={watch} nowMs={nowMs} />}
          <FaultsPart faults={watch.faults} startedAt={watch.startedAt} />
          <div className={styles.board}>
            {isUnderWay && (
              <>
                <OutlookPart firing={firing} watch={watch} nowMin={minuteOf(watch.startedAt, nowMs)} />
                <ConesPart heat={watch.heat} wanted={watch.outlook?.cone?.cone ?? null} />
              </>
            )}
            <ChartPart firing={firing} watch={watch} nowMin={minuteOf(watch.startedAt, nowMs)} />
            <ReadingsPart isUnderWay={isUnderWay} onOpen={setOpen} />
          </div>
        </>
      )}
      {Opened !== null && (
        <Suspense fallback={null}>
          <Opened firing={firing} onClose={() => setOpen(null)} />
        </Suspense>
      )}
    </Page>
  );
}

function Over({ firing }: { readonly firing: FiringRecord }) {
  const { id, state, endedAt } = firing;
  return (
    <div className={styles.beside}>
      <Sign kind={state === "finished" ? "keeps" : "mind"}>
        {state === "finished" ? "It is over" : "It was broken off"}
        {endedAt !== null && `, ${dayClockWords(endedAt)}`}
      </Sign>
      {state === "finished" && (
        <Button look="main" href={`/firings/${id}/unload`}>
          Unload it
        </Button>
      )}
    </div>
  );
}

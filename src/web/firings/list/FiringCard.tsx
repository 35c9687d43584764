import { Link } from "wouter";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { Button, Sign } from "../../parts/index.ts";
import { programmeWords } from "../programmes/programme-words.ts";
import { dayClockWords } from "../words/clock-words.ts";
import { hoursLong, kWhWords } from "../words/figures.ts";
import styles from "./Firings.module.css";
import { measuredKWh, outcomeCounts, outcomeWords } from "./firing-groups.ts";
import { LiveLine } from "./LiveLine.tsx";

interface FiringCardProps {
  readonly firing: FiringRecord;
  readonly kilnName: string;
  readonly loadName: string | null;
}

/** A firing at a glance. The name leads to it. */
export function FiringCard({ firing, kilnName, loadName }: FiringCardProps) {
  const { state } = firing;
  const about = [kilnName, loadName !== null && loadName !== firing.name ? loadName : ""].filter(Boolean).join(" · ");
  return (
    <article className={styles.card}>
      <h3>
        <Link className={styles.name} href={`/firings/${firing.id}`}>
          {firing.name}
        </Link>
      </h3>
      <p className={styles.soft}>
        {about}
        {firing.programme && ` · ${programmeWords(firing.programme)}`}
      </p>
      {state === "planned" && <PlannedLine firing={firing} />}
      {(state === "firing" || state === "cooling") && <LiveLine firing={firing} />}
      {(state === "finished" || state === "broken off") && <PastLine firing={firing} />}
      <div className={styles.buttons}>
        {(state === "firing" || state === "cooling") && (
          <Button look="main" label={`Watch ${firing.name}`} href={`/firings/${firing.id}/watch`}>
            Watch
          </Button>
        )}
        {state === "planned" && (
          <Button look="plain" label={`Prepare: ${firing.name}`} href={`/firings/${firing.id}`}>
            Prepare
          </Button>
        )}
        {state === "finished" && firing.loadId !== null && outcomeCounts(firing) === null && (
          <Button look="plain" label={`Unload ${firing.name}`} href={`/firings/${firing.id}/unload`}>
            Unload
          </Button>
        )}
      </div>
    </article>
  );
}

function PlannedLine({ firing }: { readonly firing: FiringRecord }) {
  const list = firing.checklist ?? [];
  const done = list.filter(({ at }) => at !== null).length;
  const start = firing.plannedStartAt;
  const isLate = start !== undefined && Date.parse(start) < Date.now();
  return (
    <p>
      {start === undefined ? (
        "Start open"
      ) : isLate ? (
        <Sign kind="mind">Was to start {dayClockWords(start)}</Sign>
      ) : (
        `To start ${dayClockWords(start)}`
      )}
      {firing.foretold && ` · ${hoursLong(firing.foretold.hours)}, ${kWhWords(firing.foretold.kWh)}`}
      {list.length > 0 && ` · ${done} of ${list.length} seen to`}
    </p>
  );
}

function PastLine({ firing }: { readonly firing: FiringRecord }) {
  const kWh = measuredKWh(firing);
  const counts = outcomeCounts(firing);
  const seen = firing.cones?.length ?? 0;
  const facts = [
    firing.startedAt === null ? "" : dayClockWords(firing.startedAt),
    kWh === null ? "" : kWhWords(kWh),
    seen === 0 ? "" : `${seen} witness ${seen === 1 ? "cone" : "cones"} seen`,
  ].filter(Boolean);
  return (
    <>
      <p>
        {facts.join(" · ")}
        {firing.state === "broken off" && " · broken off"}
      </p>
      {counts && <Sign kind={counts.lost > 0 ? "mind" : "keeps"}>{outcomeWords(counts)}</Sign>}
    </>
  );
}

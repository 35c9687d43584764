import { lazy, Suspense, useId, useState } from "react";
import { Link, useLocation } from "wouter";
import { formatTemperature } from "../../../measures/temperature.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { Button, Menu, Page, Sign } from "../../parts/index.ts";
import { useKiln, useLoad, useSettings } from "../../studio/hooks.ts";
import { measuredKWh, outcomeCounts, outcomeWords } from "../list/firing-groups.ts";
import { LiveLine } from "../list/LiveLine.tsx";
import parts from "../prepare/Preparing.module.css";
import { ProgrammeTable } from "../programmes/ProgrammeTable.tsx";
import { programmeWords } from "../programmes/programme-words.ts";
import { useFiringCommands } from "../use-firing-commands.ts";
import { dayClockWords } from "../words/clock-words.ts";
import { hoursLong, kWhWords, moneyWords } from "../words/figures.ts";
import { courseHours } from "./course-hours.ts";
import { ForetoldChart } from "./ForetoldChart.tsx";

const RenameFiring = lazy(() => import("../RenameFiring.tsx"));
const FiringSheetDialog = lazy(() => import("../FiringSheetDialog.tsx"));

/** A firing that has begun or is over: what came of it, and where to go on. */
export default function FiringSummary({ firing }: { readonly firing: FiringRecord }) {
  const load = useLoad(firing.loadId ?? "");
  const kiln = useKiln(firing.kilnId);
  const { temperatureUnits: units } = useSettings();
  const { remove } = useFiringCommands();
  const [, go] = useLocation();
  const [asked, setAsked] = useState<"rename" | "sheet" | null>(null);
  const id = useId();
  const isOn = firing.state === "firing" || firing.state === "cooling";
  const { programme, foretold } = firing;
  const more = [
    { id: "money", label: "What it cost", onPress: () => go(`/money?firing=${firing.id}`) },
    { id: "rename", label: "Rename", onPress: () => setAsked("rename") },
    { id: "sheet", label: "Print the sheet", isDisabled: !load?.plan || !programme, onPress: () => setAsked("sheet") },
    {
      id: "remove",
      label: "Take out this firing",
      isDanger: true,
      isDisabled: firing.state === "firing",
      onPress: () => void remove(firing).then((isDone) => isDone && go("/firings")),
    },
  ];
  return (
    <Page
      title={firing.name}
      back={{ href: "/firings", label: "To the firings" }}
      undoScope={`firing:${firing.id}`}
      actions={
        <>
          <Button look={isOn ? "main" : "plain"} href={`/firings/${firing.id}/watch`}>
            {isOn ? "Watch" : "How it went"}
          </Button>
          {firing.loadId !== null && firing.state !== "firing" && (
            <Button look={isOn ? "plain" : "main"} href={`/firings/${firing.id}/unload`}>
              Unload
            </Button>
          )}
          <Button href={`/learn/${firing.kilnId}`}>What the kiln does</Button>
          <Menu label={`More for ${firing.name}`} items={more} />
        </>
      }
      below={
        <>
          {STATE_WORDS[firing.state]} in {kiln?.kiln.name ?? "a kiln that is gone"}
          {load && (
            <>
              {" · "}
              <Link href={`/loads/${load.id}`}>{load.name === firing.name ? "its load" : load.name}</Link>
            </>
          )}
        </>
      }
    >
      {isOn && <LiveLine firing={firing} />}
      <div className={parts.columns}>
        <div className={parts.column}>
          <section className={parts.part} aria-labelledby={`${id}-came`}>
            <h2 id={`${id}-came`}>{isOn ? "How it stands" : "What came of it"}</h2>
            <Course firing={firing} />
            {foretold && foretold.curve.length > 1 && <ForetoldChart firing={firing} />}
          </section>
        </div>
        <div className={parts.column}>
          <Found firing={firing} />
          {programme && (
            <section className={parts.part} aria-labelledby={`${id}-programme`}>
              <h2 id={`${id}-programme`}>The programme</h2>
              <p>{programmeWords(programme)}</p>
              <ProgrammeTable programme={programme} units={units} />
            </section>
          )}
        </div>
      </div>
      <Suspense fallback={null}>
        {asked === "rename" && <RenameFiring firing={firing} onClose={() => setAsked(null)} />}
        {asked === "sheet" && load && <FiringSheetDialog firing={firing} load={load} onClose={() => setAsked(null)} />}
      </Suspense>
    </Page>
  );
}

const STATE_WORDS: Readonly<Record<FiringRecord["state"], string>> = {
  planned: "To be fired",
  firing: "Firing",
  cooling: "Cooling",
  finished: "Fired",
  "broken off": "Broken off",
};

/** Hours, energy and price, each beside what was foretold. */
function Course({ firing }: { readonly firing: FiringRecord }) {
  const { temperatureUnits: units, currency, tariff } = useSettings();
  const { foretold, startedAt, shutOffAt, endedAt } = firing;
  const hours = courseHours(firing);
  const kWh = measuredKWh(firing);
  const rows: readonly (readonly [string, string | null, string | null])[] = [
    [
      "Switched on",
      startedAt && dayClockWords(startedAt),
      firing.plannedStartAt ? dayClockWords(firing.plannedStartAt) : null,
    ],
    ["Shut off after", hours === null ? null : hoursLong(hours), foretold ? hoursLong(foretold.hours) : null],
    ["Over", endedAt && dayClockWords(endedAt), null],
    ["Drew", kWh === null ? null : kWhWords(kWh), foretold ? kWhWords(foretold.kWh) : null],
    ["Hottest at the probe", null, foretold ? formatTemperature(foretold.peakC, units) : null],
    ["Cost", null, foretold?.cost == null ? null : moneyWords(foretold.cost, tariff?.currency ?? currency)],
  ];
  return (
    <>
      <table className={parts.levels}>
        <thead>
          <tr>
            <th scope="col">
              <span className="heard">What</span>
            </th>
            <th scope="col">It was</th>
            <th scope="col">Foretold</th>
          </tr>
        </thead>
        <tbody>
          {rows
            .filter(([, was, expected]) => was !== null || expected !== null)
            .map(([what, was, expected]) => (
              <tr key={what}>
                <th scope="row">{what}</th>
                <td>{was ?? "–"}</td>
                <td>{expected ?? "–"}</td>
              </tr>
            ))}
        </tbody>
      </table>
      {shutOffAt === undefined && hours === null && startedAt !== null && endedAt !== null && (
        <p className={parts.soft}>When the elements went off was not written down.</p>
      )}
    </>
  );
}

/** Pieces judged, cones seen, notices. */
function Found({ firing }: { readonly firing: FiringRecord }) {
  const id = useId();
  const counts = outcomeCounts(firing);
  const cones = firing.cones ?? [];
  const notices = firing.notices ?? [];
  if (firing.state === "firing" && notices.length === 0) return null;
  return (
    <section className={parts.part} aria-labelledby={id}>
      <h2 id={id}>What was found</h2>
      {counts === null ? (
        <p>{firing.loadId === null ? "No load was written down for it." : "No piece was looked at yet."}</p>
      ) : (
        <Sign kind={counts.lost > 0 ? "mind" : "keeps"}>{outcomeWords(counts)}</Sign>
      )}
      {cones.length > 0 && (
        <ul className={parts.signs}>
          {cones.map(({ level, cone, bendDeg, place }) => (
            <li key={`${level} ${cone} ${place}`}>
              Level {level + 1}
              {place && `, ${place}`}: cone {cone} bent to {bendDeg}°
            </li>
          ))}
        </ul>
      )}
      {notices.length > 0 && (
        <ul className={parts.signs}>
          {notices.map(({ id: noticeId, since, message }) => (
            <li key={noticeId}>
              <Sign kind="mind">
                {dayClockWords(since)}: {message}
              </Sign>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

import { lazy, Suspense, useId, useMemo, useState } from "react";
import type { Prediction } from "../../../firing/prediction/predict.ts";
import type { Tariff } from "../../../firing/tariff/tariff.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { Button, ChoiceField, Sign } from "../../parts/index.ts";
import { useSettings } from "../../studio/hooks.ts";
import parts from "../prepare/Preparing.module.css";
import { useFiringCommands } from "../use-firing-commands.ts";
import { dayClockWords } from "../words/clock-words.ts";
import { moneyWords } from "../words/figures.ts";
import { CalendarButton } from "./CalendarButton.tsx";
import { MomentField } from "./MomentField.tsx";
import { type StartAnswer, type StartWish, startFor } from "./start-choices.ts";
import { useMinute } from "./use-minute.ts";

const TariffDialog = lazy(() => import("../tariff/TariffDialog.tsx"));

const KINDS = [
  { id: "ready", label: "When I am ready" },
  { id: "at", label: "At a time" },
  { id: "open-by", label: "To open it by" },
  { id: "cheapest", label: "When it is cheapest" },
] as const;
type Kind = (typeof KINDS)[number]["id"];

const DAY_MS = 86_400_000;
/** The cheapest start is looked for this far ahead. */
const CHEAPEST_WITHIN_DAYS = 2;

interface StartPartProps {
  readonly firing: FiringRecord;
  /** Undefined until it is reckoned, and where there is no load to reckon with. */
  readonly prediction: Prediction | undefined;
  readonly tariff: Tariff | null;
}

/** When it is to be switched on, and what comes of that. */
export function StartPart({ firing, prediction, tariff }: StartPartProps) {
  const { planStart } = useFiringCommands();
  const now = useMinute();
  const id = useId();
  const planned = firing.plannedStartAt ?? null;
  const [kind, setKind] = useState<Kind>(planned === null ? "ready" : "at");
  const [at, setAt] = useState<string | null>(planned);
  const [openBy, setOpenBy] = useState<string | null>(null);
  const [until, setUntil] = useState<string | null>(null);
  const [asksTariff, setAsksTariff] = useState(false);
  const wish = useMemo(
    () => wishOf(kind, { at: at ?? now, openBy, until: until ?? later(now, CHEAPEST_WITHIN_DAYS) }),
    [kind, at, openBy, until, now],
  );
  const answer = useMemo(
    () => (prediction && wish ? startFor(wish, { prediction, tariff, now }) : null),
    [prediction, tariff, now, wish],
  );
  const startAt = answer?.kind === "found" ? answer.startAt : wish?.kind === "at" ? wish.at : null;
  const isPlanned = wish !== null && answer?.kind !== "none" && sameMinute(startAt, planned);
  return (
    <section className={parts.part} aria-labelledby={id}>
      <div className={parts.head}>
        <h2 id={id}>When</h2>
        {planned !== null && <CalendarButton firing={firing} />}
      </div>
      <ChoiceField label="Start" isLabelHidden options={KINDS} value={kind} onChange={setKind} />
      {kind === "at" && <MomentField label="Switch it on" value={at ?? now} min={now} onChange={setAt} />}
      {kind === "open-by" && (
        <MomentField
          label="The lid may be lifted by"
          hint={tariff?.slots?.length ? "The cheapest start that keeps it." : "The latest start that keeps it."}
          value={openBy}
          min={now}
          onChange={setOpenBy}
        />
      )}
      {kind === "cheapest" && tariff && (
        <MomentField
          label="Not later than"
          value={until ?? later(now, CHEAPEST_WITHIN_DAYS)}
          min={now}
          onChange={setUntil}
        />
      )}
      {answer && <Answer answer={answer} tariff={tariff} needsTariff={kind === "cheapest" && tariff === null} />}
      <div className={parts.buttons}>
        {wish && !isPlanned && answer?.kind !== "none" && (
          <Button look="main" onPress={() => planStart(firing, startAt)}>
            {startAt === null ? "Leave the start open" : `Plan it for ${dayClockWords(startAt)}`}
          </Button>
        )}
        <Button look={kind === "cheapest" && tariff === null ? "main" : "quiet"} onPress={() => setAsksTariff(true)}>
          {tariff === null ? "What electricity costs" : "The tariff"}
        </Button>
      </div>
      {isPlanned && planned !== null && <Sign kind="keeps">Planned</Sign>}
      <Suspense fallback={null}>
        {asksTariff && <TariffDialog tariff={tariff} onClose={() => setAsksTariff(false)} />}
      </Suspense>
    </section>
  );
}

function Answer({
  answer,
  tariff,
  needsTariff,
}: {
  readonly answer: StartAnswer;
  readonly tariff: Tariff | null;
  readonly needsTariff: boolean;
}) {
  const { currency } = useSettings();
  if (answer.kind === "none") {
    return (
      <Sign kind="mind">
        {answer.reason}
        {!needsTariff &&
          answer.earliestOpenAt !== null &&
          ` Started now, the lid may be lifted ${dayClockWords(answer.earliestOpenAt)}.`}
      </Sign>
    );
  }
  const { startAt, shutOffAt, openAt, cost, saves } = answer;
  const money = (value: number) => moneyWords(value, tariff?.currency ?? currency);
  return (
    <>
      <dl className={parts.moments}>
        {startAt !== null && <Moment when={startAt} what="switch it on" />}
        {shutOffAt !== null && <Moment when={shutOffAt} what="it should shut off: be there" />}
        {openAt !== null && <Moment when={openAt} what="the lid may be lifted" />}
        {cost !== null && (
          <>
            <dt>{money(cost)}</dt>
            <dd>
              for its electricity
              {saves !== null && saves >= 0.005 && `, ${money(saves)} less than at the dearest time`}
            </dd>
          </>
        )}
      </dl>
      {shutOffAt !== null && isNight(shutOffAt) && (
        <Sign kind="mind">It shuts off in the night. Somebody must be up to see that it has.</Sign>
      )}
    </>
  );
}

/** People sleep from eleven to six. */
function isNight(moment: string): boolean {
  const hour = new Date(moment).getHours();
  return hour >= 23 || hour < 6;
}

const Moment = ({ when, what }: { readonly when: string; readonly what: string }) => (
  <>
    <dt>{dayClockWords(when)}</dt>
    <dd>{what}</dd>
  </>
);

function wishOf(
  kind: Kind,
  { at, openBy, until }: { readonly at: string; readonly openBy: string | null; readonly until: string },
): StartWish | null {
  if (kind === "ready") return { kind };
  if (kind === "at") return { kind, at };
  if (kind === "cheapest") return { kind, until };
  return openBy === null ? null : { kind, openBy };
}

const later = (moment: string, days: number): string => new Date(Date.parse(moment) + days * DAY_MS).toISOString();

const sameMinute = (a: string | null, b: string | null): boolean => (a?.slice(0, 16) ?? "") === (b?.slice(0, 16) ?? "");

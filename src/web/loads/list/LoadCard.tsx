import { Link } from "wouter";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import type { WareRecord } from "../../../studio/records/ware-record.ts";
import { Button, Menu, Sign } from "../../parts/index.ts";
import { dueStretch, dueWords } from "../../waiting/words/due-words.ts";
import { FIRING_WORDS, pieces } from "../../waiting/words/ware-words.ts";
import { wholeLoad } from "../whole-load.ts";
import styles from "./LoadCard.module.css";
import { loadFacts } from "./load-facts.ts";
import { NEXT_STATE } from "./load-groups.ts";
import { SmallElevation } from "./SmallElevation.tsx";

/** What can be asked of a load from its card. */
export type CardWish = "plan" | "next" | "firing" | "rename" | "another-way" | "sheet" | "remove";

const DAYS_SHOWN = 2;
const FIRED: readonly LoadRecord["state"][] = ["fired", "unpacked"];

interface LoadCardProps {
  readonly load: LoadRecord;
  readonly kilnName: string;
  readonly ware: readonly WareRecord[];
  readonly today: string;
  readonly isPlanning: boolean;
  readonly onWish: (wish: CardWish, load: LoadRecord) => void;
}

/** A load at a glance. The name leads to its drawings. */
export function LoadCard({ load, kilnName, ware, today, isPlanning, onWish }: LoadCardProps) {
  const facts = loadFacts(load, ware);
  const { request, plan } = wholeLoad(load);
  const next = NEXT_STATE[load.state];
  const left = facts.leftOut.reduce((sum, { count }) => sum + count, 0);
  const firing = [
    facts.kinds.map((kind) => FIRING_WORDS[kind]).join(" and "),
    facts.cones.length > 0 ? `cone ${facts.cones.join(", ")}` : "",
  ].filter(Boolean);
  const [soonest] = facts.due;
  const wanted = `Wanted ${facts.due
    .slice(0, DAYS_SHOWN)
    .map((day) => dueWords(day, today))
    .join(", ")}${facts.due.length > DAYS_SHOWN ? " and later" : ""}`;
  const isEmpty = load.state === "planned" && !facts.placed;
  return (
    <article className={styles.card}>
      <div className={styles.drawing}>
        <SmallElevation request={request} plan={plan} />
      </div>
      <div className={styles.words}>
        <h3>
          <Link className={styles.name} href={`/loads/${load.id}`}>
            {load.name}
          </Link>
        </h3>
        <p className={styles.soft}>
          {kilnName}
          {firing.length > 0 && ` · ${firing.join(", ")}`}
        </p>
        <p>
          {facts.placed === null
            ? `${pieces(facts.waiting)} to place`
            : `${facts.placed} of ${pieces(facts.waiting)} in`}
          {isPlanning && " · being planned"}
        </p>
        {left > 0 && (
          <p className={styles.soft}>
            Left out:{" "}
            {facts.leftOut
              .slice(0, 3)
              .map(({ ware: name, count }) => `${count}\u00a0×\u00a0${name}`)
              .join(", ")}
            {facts.leftOut.length > 3 && " and more"}
          </p>
        )}
        {soonest !== undefined && load.state !== "unpacked" && (
          <p>
            {dueStretch(soonest, today) === "late" || dueStretch(soonest, today) === "week" ? (
              <Sign kind="mind">{wanted}</Sign>
            ) : (
              <span className={styles.soft}>{wanted}</span>
            )}
          </p>
        )}
      </div>
      <div className={styles.buttons}>
        {isEmpty && (
          <Button look="plain" label={`Plan it: ${load.name}`} onPress={() => onWish("plan", load)} isBusy={isPlanning}>
            Plan it
          </Button>
        )}
        {next !== null && !isEmpty && (
          <Button look="plain" label={`${next.name}: ${load.name}`} onPress={() => onWish("next", load)}>
            {next.name}
          </Button>
        )}
        {load.state === "loaded" && (
          <Button look="quiet" label={`Prepare the firing of ${load.name}`} onPress={() => onWish("firing", load)}>
            Prepare the firing
          </Button>
        )}
        {load.state === "loading" && (
          <Button look="quiet" href={`/loads/${load.id}/at-the-kiln`}>
            At the kiln
          </Button>
        )}
        <Menu label={`More for ${load.name}`} items={menuOf(load, onWish)} />
      </div>
    </article>
  );
}

function menuOf(load: LoadRecord, onWish: LoadCardProps["onWish"]) {
  const wish = (id: CardWish, label: string, more: { isDisabled?: boolean; isDanger?: boolean } = {}) => ({
    id,
    label,
    onPress: () => onWish(id, load),
    ...more,
  });
  return [
    wish("firing", "Prepare the firing", { isDisabled: load.plan === null || FIRED.includes(load.state) }),
    wish("sheet", "Print the sheet", { isDisabled: load.plan === null }),
    wish("another-way", "Another way, beside this one"),
    wish("rename", "Rename"),
    wish("remove", "Take out this load", { isDanger: true }),
  ];
}

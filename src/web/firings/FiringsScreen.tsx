import { useState } from "react";
import { useLocation } from "wouter";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import { Button, Empty, Menu, Page, Spinner } from "../parts/index.ts";
import { useFirings, useKilns, useLoads } from "../studio/hooks.ts";
import { FiringCard } from "./list/FiringCard.tsx";
import styles from "./list/Firings.module.css";
import { firingGroups } from "./list/firing-groups.ts";
import { PrepareMenu } from "./list/PrepareMenu.tsx";
import { localMonth, monthWords } from "./words/device-time.ts";
import { kWhWords } from "./words/figures.ts";

const MONTHS_SHOWN = 3;

/** Every firing: what is under way first, then what is planned, then what is past. */
export default function FiringsScreen() {
  const firings = useFirings();
  const loads = useLoads();
  const kilns = useKilns();
  const [, go] = useLocation();
  const [showsAll, setShowsAll] = useState(false);
  if (!firings || !loads || !kilns) return <Spinner />;
  const kilnNames = new Map(kilns.map(({ id, kiln }) => [id, kiln.name]));
  const loadNames = new Map(loads.map(({ id, name }) => [id, name]));
  const { underWay, planned, past } = firingGroups(firings, localMonth);
  const months = showsAll ? past : past.slice(0, MONTHS_SHOWN);
  const card = (firing: FiringRecord) => (
    <FiringCard
      key={firing.id}
      firing={firing}
      kilnName={kilnNames.get(firing.kilnId) ?? "a kiln that is gone"}
      loadName={firing.loadId === null ? null : (loadNames.get(firing.loadId) ?? null)}
    />
  );
  const group = (id: string, title: string, of: readonly FiringRecord[], beside = "") =>
    of.length > 0 && (
      <section key={id} className={styles.group} aria-labelledby={`firings-${id}`}>
        <div className={styles.groupHead}>
          <h2 id={`firings-${id}`}>{title}</h2>
          {beside && <span className={styles.soft}>{beside}</span>}
        </div>
        <div className={styles.cards}>{of.map(card)}</div>
      </section>
    );
  return (
    <Page
      title="Firings"
      undoScope="firings"
      actions={
        <>
          <Menu
            label="What lies behind the firings"
            items={[
              { id: "programmes", label: "My own programmes", onPress: () => go("/programmes") },
              { id: "money", label: "What firing costs", onPress: () => go("/money") },
              ...kilns.map(({ id, kiln: { name } }) => ({
                id,
                label: `How ${name} fires`,
                onPress: () => go(`/learn/${id}`),
              })),
            ]}
          />
          {firings.length > 0 && <PrepareMenu loads={loads} firings={firings} />}
        </>
      }
    >
      {firings.length === 0 && (
        <Empty
          title="No firing yet"
          words="A firing is prepared from a planned load: Wareboard writes its programme, foretells what each level gets, and watches it with you. It never switches the kiln."
          action={
            loads.some(({ plan }) => plan !== null) ? (
              <PrepareMenu loads={loads} firings={firings} />
            ) : (
              <Button look="main" href="/loads">
                To the loads
              </Button>
            )
          }
        />
      )}
      {group("under-way", "Under way", underWay)}
      {group("planned", "Planned", planned)}
      {months.map(({ month, firings: of, kWh }) =>
        group(
          month,
          monthWords(month),
          of,
          `${of.length === 1 ? "1 firing" : `${of.length} firings`}${kWh === null ? "" : `, ${kWhWords(kWh)} by the meter`}`,
        ),
      )}
      {months.length < past.length && (
        <div>
          <Button look="quiet" onPress={() => setShowsAll(true)}>
            Show all {past.length} months
          </Button>
        </div>
      )}
    </Page>
  );
}

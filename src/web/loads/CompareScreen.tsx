import { useState } from "react";
import { useLocation, useParams } from "wouter";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import { AddIcon, Menu, NothingHere, Page, Spinner, tell, wordsOf } from "../parts/index.ts";
import { newId, useCommand, useLoad, useLoads, useWare } from "../studio/hooks.ts";
import styles from "./compare/Compare.module.css";
import { WayColumn } from "./compare/WayColumn.tsx";
import { WAY_WORDS, WAYS, type Way, wayName, weighedFor } from "./compare/ways.ts";
import { tries } from "./list/load-groups.ts";
import { undoLast } from "./undo-last.ts";
import { beginPlanning } from "./use-planning.ts";

const MOST_WAYS = 4;
const MOST_SEED = 1_000_000;

/** Ways to load the same, side by side: what each takes, what it leaves, and where it stands. */
export default function CompareScreen() {
  const { id = "" } = useParams<{ id: string }>();
  const load = useLoad(id);
  const loads = useLoads();
  if (load === undefined || loads === undefined) return <Spinner />;
  if (load === null) {
    return (
      <NothingHere
        title="Side by side"
        back={{ href: "/loads", label: "All loads" }}
        heading="This load is gone"
        words="It was taken out meanwhile."
      />
    );
  }
  return <Compared load={load} loads={loads} />;
}

function Compared({ load, loads }: { load: LoadRecord; loads: readonly LoadRecord[] }) {
  const ways = tries(loads, load).slice(0, MOST_WAYS);
  const [first] = ways as [LoadRecord, ...LoadRecord[]];
  const ware = useWare();
  const command = useCommand();
  const [, go] = useLocation();
  const [isBusy, setBusy] = useState(false);
  const worthOf = new Map(first.request.ware.map(({ name, value }) => [name, value ?? 1]));
  const levels = Math.max(1, ...ways.map(({ plan }) => plan?.levels.length ?? 0));

  const another = async (way: Way) => {
    setBusy(true);
    const copyId = newId();
    const batches = new Map(ware?.map((batch) => [batch.id, batch]));
    const dueOn = new Map(
      first.sources.flatMap(({ ware: name, wareId }) => {
        const day = batches.get(wareId)?.dueOn;
        return day ? [[name, day] as const] : [];
      }),
    );
    try {
      const name = wayName(
        first.name,
        way,
        loads.map((each) => each.name),
      );
      const { changed } = await command("copy-load", { id: first.id, name, newId: copyId });
      // Emptied first: another way is worth seeing even where it is no better than the one it was copied from.
      const version = changed.loads?.[copyId]?.version ?? 1;
      const request = weighedFor(way, first.request, dueOn);
      await command("change-load", { id: copyId, version, plan: null, request });
      beginPlanning({ loadId: copyId, keep: "nothing", seed: 1 + Math.floor(Math.random() * MOST_SEED) });
    } catch (error) {
      tell(wordsOf(error));
    }
    setBusy(false);
  };

  const keep = async (kept: LoadRecord) => {
    const others = ways.filter(({ id }) => id !== kept.id);
    let taken = 0;
    try {
      for (const other of others) {
        await command("remove-load", { id: other.id }, (cache) => cache.remove("loads", other.id));
        taken += 1;
      }
    } catch (error) {
      tell(wordsOf(error));
      return;
    }
    const words = others.length === 1 ? "the other" : `the ${others.length} others`;
    tell(`Kept ${kept.name}, took out ${words}`, () => void undoLast("loads", taken));
    go(`/loads/${kept.id}`);
  };

  const isFull = ways.length >= MOST_WAYS;
  return (
    <Page
      title="Side by side"
      back={{ href: `/loads/${load.id}`, label: "Back to the load" }}
      below={
        ways.length === 1
          ? "Plan the same pieces another way, then choose."
          : `${ways.length} ways to load the same. Each is told beside the first.`
      }
      undoScope="loads"
      isFull
      actions={
        <Menu
          label="Another way"
          look={ways.length === 1 ? "main" : "plain"}
          icon={<AddIcon />}
          items={WAYS.map((way) => ({
            id: way,
            label: WAY_WORDS[way].label,
            onPress: () => void another(way),
            isDisabled: isFull || isBusy,
          }))}
        >
          Another way
        </Menu>
      }
    >
      <div className={styles.ways} style={{ "--ways": ways.length, "--rows": levels + 4 } as React.CSSProperties}>
        {ways.map((way) => (
          <WayColumn
            key={way.id}
            load={way}
            first={first}
            levels={levels}
            worthOf={worthOf}
            onKeep={ways.length > 1 ? () => void keep(way) : undefined}
          />
        ))}
      </div>
      {isFull && <p>Four ways stand side by side. Take one out to try another.</p>}
    </Page>
  );
}

import { lazy, Suspense, useState } from "react";
import { useLocation, useSearch } from "wouter";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import { useAction } from "../actions/registry.ts";
import { AddIcon, Button, Empty, Page, Spinner } from "../parts/index.ts";
import { useFirings, useKilns, useLoads, useWare } from "../studio/hooks.ts";
import { dayOf } from "../waiting/words/calendar-day.ts";
import styles from "./Loads.module.css";
import { type CardWish, LoadCard } from "./list/LoadCard.tsx";
import { type LoadFamily, loadGroups, STATE_WORDS } from "./list/load-groups.ts";
import { firingOfLoad } from "./unpacking/firing-of-load.ts";
import { useLoadCommands } from "./use-load-commands.ts";
import { beginPlanning, useIsPlanning } from "./use-planning.ts";

const NewLoadDialog = lazy(() => import("./new-load/NewLoadDialog.tsx"));
const RenameDialog = lazy(() => import("./RenameDialog.tsx"));
const SheetDialog = lazy(() => import("./sheet/SheetDialog.tsx"));
const UnpackDialog = lazy(() => import("./unpacking/UnpackDialog.tsx"));

const UNPACKED_SHOWN = 6;

/** Every load, by how far it has come; the place where new ones are made. */
export default function LoadsScreen() {
  const loads = useLoads();
  const kilns = useKilns();
  const ware = useWare();
  const firings = useFirings();
  const commands = useLoadCommands();
  const isPlanning = useIsPlanning();
  const [, go] = useLocation();
  const isNew = new URLSearchParams(useSearch()).has("new");
  const [asked, setAsked] = useState<{ readonly what: "rename" | "sheet" | "unpack"; readonly id: string } | null>(
    null,
  );
  const [showsAll, setShowsAll] = useState(false);
  const makeNew = () => go("/loads?new=1");
  useAction({ id: "loads.new", name: "New load", keys: "n", group: "Loads", run: makeNew });

  if (!loads || !kilns || !ware) return <Spinner />;
  const today = dayOf(new Date());
  const kilnNames = new Map(kilns.map(({ id, kiln }) => [id, kiln.name]));
  const askedLoad = asked && loads.find(({ id }) => id === asked.id);
  // With a firing of it, shelf by shelf and piece by piece; without one, what each batch became.
  const unpack = (id: string): void => {
    const firing = firingOfLoad(id, firings ?? []);
    if (firing) go(`/firings/${encodeURIComponent(firing.id)}/unload`);
    else setAsked({ what: "unpack", id });
  };
  const wish = (what: CardWish, load: LoadRecord): void => {
    if (what === "rename" || what === "sheet") setAsked({ what, id: load.id });
    else if (what === "plan") beginPlanning({ loadId: load.id, keep: "nothing" });
    else if (what === "next" && load.state === "fired") unpack(load.id);
    else if (what === "next") void commands.next(load);
    else if (what === "firing") go(`/firings/new?load=${encodeURIComponent(load.id)}`);
    else if (what === "another-way") go(`/loads/compare/${load.id}`);
    else void commands.remove(load);
  };
  const card = (load: LoadRecord) => (
    <LoadCard
      key={load.id}
      load={load}
      kilnName={kilnNames.get(load.kilnId) ?? "a kiln that is gone"}
      ware={ware}
      today={today}
      isPlanning={isPlanning(load.id)}
      onWish={wish}
    />
  );
  const newLoad = (
    <Button look="main" icon={<AddIcon />} onPress={makeNew}>
      New load
    </Button>
  );

  return (
    <Page title="Loads" undoScope="loads" actions={loads.length > 0 && newLoad}>
      {loads.length === 0 && (
        <Empty
          title="No load yet"
          words="A load is what goes into the kiln together. Choose what waits, and Wareboard works out the shelves, the posts and where each piece stands."
          action={newLoad}
        />
      )}
      {loadGroups(loads).map(({ state, families }) => {
        const shown = state === "unpacked" && !showsAll ? families.slice(0, UNPACKED_SHOWN) : families;
        return (
          <section key={state} className={styles.group} aria-labelledby={`loads-${state}`}>
            <h2 id={`loads-${state}`}>{STATE_WORDS[state]}</h2>
            <div className={styles.cards}>
              {shown.map((family) =>
                family.loads.length === 1 ? (
                  family.loads.map(card)
                ) : (
                  <Family key={family.id} family={family} card={card} />
                ),
              )}
            </div>
            {shown.length < families.length && (
              <Button look="quiet" onPress={() => setShowsAll(true)}>
                Show all {families.length}
              </Button>
            )}
          </section>
        );
      })}
      <Suspense fallback={null}>
        {isNew && <NewLoadDialog onClose={() => go("/loads", { replace: true })} />}
        {askedLoad && asked.what === "rename" && <RenameDialog load={askedLoad} onClose={() => setAsked(null)} />}
        {askedLoad && asked.what === "sheet" && <SheetDialog load={askedLoad} onClose={() => setAsked(null)} />}
        {askedLoad && asked.what === "unpack" && (
          <UnpackDialog load={askedLoad} ware={ware} onClose={() => setAsked(null)} />
        )}
      </Suspense>
    </Page>
  );
}

function Family({ family, card }: { family: LoadFamily; card: (load: LoadRecord) => React.ReactNode }) {
  return (
    <section className={styles.family} aria-label={`${family.loads.length} ways to load the same`}>
      <div className={styles.familyHead}>
        <p>{family.loads.length} ways to load the same</p>
        <Button look="quiet" href={`/loads/compare/${family.loads[0]?.id}`}>
          Side by side
        </Button>
      </div>
      <div className={styles.cards}>{family.loads.map(card)}</div>
    </section>
  );
}

import { lazy, Suspense, useMemo, useState } from "react";
import { useSearch } from "wouter";
import { monthCosts } from "../../studio/firings/month-costs.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import { dayClockWords } from "../firings/words/clock-words.ts";
import { Button, ChoiceField, Empty, Page, Spinner } from "../parts/index.ts";
import { useFirings, useLoads, useSettings, useWare } from "../studio/hooks.ts";
import { GuestsPart } from "./guests/GuestsPart.tsx";
import styles from "./Money.module.css";
import { MonthsPart } from "./months/MonthsPart.tsx";
import { PricesPart } from "./prices/PricesPart.tsx";
import { SharesPart } from "./shares/SharesPart.tsx";

const TariffDialog = lazy(() => import("../firings/tariff/TariffDialog.tsx"));
const PricesDialog = lazy(() => import("./prices/PricesDialog.tsx"));

/** What firing costs: by month, by firing and its fair shares, what guests owe, and what all of it rests on. */
export default function MoneyScreen() {
  const firings = useFirings();
  const loads = useLoads();
  const ware = useWare();
  const settings = useSettings();
  const asked = new URLSearchParams(useSearch()).get("firing");
  const [chosenId, setChosenId] = useState(asked);
  const [isPrinting, setPrinting] = useState(false);
  const [dialog, setDialog] = useState<"tariff" | "wear" | "fee" | null>(null);
  const fired = useMemo(() => startedNewestFirst(firings ?? []), [firings]);
  const months = useMemo(() => monthCosts(firings ?? [], loads ?? [], settings), [firings, loads, settings]);
  if (!firings || !loads || !ware) return <Spinner />;
  const currency = settings.tariff?.currency ?? settings.currency;
  const firing = fired.find(({ id }) => id === chosenId) ?? fired.find(({ loadId }) => loadId !== null) ?? fired[0];
  const load = loads.find(({ id }) => id === firing?.loadId) ?? null;
  const offPaper = isPrinting ? "no" : undefined;
  return (
    <Page title="What firing costs" back={{ href: "/firings", label: "To the firings" }} undoScope="settings">
      {fired.length === 0 && (
        <Empty
          title="Nothing was fired yet"
          words="Each firing’s cost is reckoned from its meter, or as it was foretold, and shared out over its pieces by the space they take. Set below what electricity, elements and shelves cost."
          action={<Button href="/firings">To the firings</Button>}
        />
      )}
      <div className={firing ? styles.columns : styles.column} data-sheet={isPrinting || undefined}>
        <div className={styles.column}>
          {firing && (
            <>
              <div data-print="no">
                <ChoiceField
                  label="Firing"
                  options={fired.map(({ id, name, startedAt }) => ({
                    id,
                    label: `${name}, ${dayClockWords(startedAt ?? "")}`,
                  }))}
                  value={firing.id}
                  onChange={setChosenId}
                />
              </div>
              <div data-print={offPaper}>
                <SharesPart firing={firing} load={load} currency={currency} />
              </div>
              <GuestsPart
                firing={firing}
                load={load}
                ware={ware}
                currency={currency}
                onPrinting={setPrinting}
                onAskFee={() => setDialog("fee")}
              />
            </>
          )}
        </div>
        <div className={styles.column} data-print={offPaper}>
          {months.length > 0 && <MonthsPart months={months} currency={currency} />}
          <PricesPart
            currency={currency}
            onTariff={() => setDialog("tariff")}
            onWear={() => setDialog("wear")}
            onFee={() => setDialog("fee")}
          />
        </div>
      </div>
      <Suspense fallback={null}>
        {dialog === "tariff" && <TariffDialog tariff={settings.tariff ?? null} onClose={() => setDialog(null)} />}
        {(dialog === "wear" || dialog === "fee") && (
          <PricesDialog of={dialog} currency={currency} onClose={() => setDialog(null)} />
        )}
      </Suspense>
    </Page>
  );
}

const startedNewestFirst = (firings: readonly FiringRecord[]): FiringRecord[] =>
  firings
    .filter(({ startedAt }) => startedAt !== null)
    .sort((a, b) => ((a.startedAt ?? "") < (b.startedAt ?? "") ? 1 : -1));

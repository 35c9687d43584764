import { useEffect, useRef, useState } from "react";
import type { ShownReadings } from "../../../studio/api/readings-contract.ts";
import type { FiringWatch } from "../../../studio/api/watch-contract.ts";
import { ask } from "../../studio/client.ts";
import { keepReadings, keptReadings } from "../live/kept-watch.ts";
import { type MeasuredLine, measuredLines, withLatest } from "./measured-lines.ts";

/** As fine as a screen can show; the studio gathers them by minute or hour where there are more. */
const MOST = 4000;
/** What is fetched is made longer by what is heard; all of it is fetched anew now and then, for what came late. */
const FETCH_EVERY_MS = 60_000;
/** As often at most where a rehearsal's clock runs fast. */
const FETCH_SELDOM_MS = 4000;
const MINUTE_MS = 60_000;

export interface Measured {
  readonly lines: readonly MeasuredLine[];
  readonly by: ShownReadings["by"];
  readonly isFetched: boolean;
}

interface Fetched {
  readonly id: string;
  readonly fromMin: number | null;
  readonly startedAt: string;
  readonly lines: readonly MeasuredLine[];
  readonly by: ShownReadings["by"];
}

/** A firing's temperatures over a span: fetched as finely as fits, and on from there as they come in. */
export function useMeasured(
  id: string,
  startedAt: string,
  fromMin: number | null,
  { latest, pace }: Pick<FiringWatch, "latest" | "pace">,
): Measured {
  const [fetched, setFetched] = useState<Fetched | null>(null);
  const [heard, setHeard] = useState<readonly FiringWatch["latest"][]>([]);
  const [round, setRound] = useState(0);
  const lastAt = useRef<string | null>(null);

  useEffect(() => {
    void round;
    let wanted = true;
    const from = fromMin === null ? "" : `&from=${new Date(Date.parse(startedAt) + fromMin * MINUTE_MS).toISOString()}`;
    const show = (shown: ShownReadings): Fetched => ({
      ...{ id, fromMin, startedAt, lines: measuredLines(shown, startedAt), by: shown.by },
    });
    ask<ShownReadings>(`/firings/${encodeURIComponent(id)}/readings?most=${MOST}${from}`).then(
      (shown) => {
        if (!wanted) return;
        setFetched(show(shown));
        setHeard([]);
        // The whole of it, for when the studio is away.
        if (fromMin === null) keepReadings(id, shown);
      },
      async () => {
        // Away: what was fetched before stays, or what this device kept.
        const kept = await keptReadings(id);
        if (wanted && kept !== null) setFetched((before) => before ?? show(kept));
      },
    );
    return () => {
      wanted = false;
    };
  }, [id, startedAt, fromMin, round]);
  useEffect(() => {
    const everyMs = Math.max(FETCH_SELDOM_MS, FETCH_EVERY_MS / pace);
    const timer = setInterval(() => setRound((before) => before + 1), everyMs);
    return () => clearInterval(timer);
  }, [pace]);
  useEffect(() => {
    if (latest === null || latest.at === lastAt.current) return;
    lastAt.current = latest.at;
    setHeard((before) => [...before, latest]);
  }, [latest]);

  const isThis = fetched !== null && fetched.id === id && fetched.startedAt === startedAt;
  const lines = withLatest(isThis ? fetched.lines : [], heard, startedAt);
  return { lines, by: isThis ? fetched.by : "raw", isFetched: isThis };
}

import { useEffect, useState } from "react";
import type { FiringWatch } from "../../../studio/api/watch-contract.ts";
import { ask } from "../../studio/client.ts";
import { pauseMs } from "../../studio/line.ts";
import { type KnownWatch, keepWatch, keptWatch } from "./kept-watch.ts";

export interface LiveWatch {
  /** Null before anything is known. */
  readonly known: KnownWatch | null;
  /** Whether the studio tells of it as it goes. */
  readonly isLive: boolean;
}

/** Often enough for a phone that was put down and taken up again. */
const KEEP_EVERY_MS = 5000;

/** Watches a firing: what the studio tells as it goes; while it is away, what it told last. */
export function useWatch(firingId: string, isUnderWay: boolean): LiveWatch {
  const [live, setLive] = useState<LiveWatch>({ known: null, isLive: false });
  useEffect(() => {
    if (!isUnderWay) return;
    let wanted = true;
    let stream: EventSource | null = null;
    let failures = 0;
    let keptMs = 0;
    let again: ReturnType<typeof setTimeout> | undefined;
    const hear = (watch: FiringWatch): void => {
      if (!wanted) return;
      const known = { watch, heardMs: Date.now() };
      setLive({ known, isLive: true });
      if (known.heardMs - keptMs < KEEP_EVERY_MS) return;
      keptMs = known.heardMs;
      keepWatch(firingId, known);
    };
    const listen = (): void => {
      if (!wanted) return;
      stream = new EventSource(`/api/firings/${encodeURIComponent(firingId)}/watch/events`);
      stream.onopen = () => {
        failures = 0;
      };
      stream.onmessage = ({ data }: MessageEvent<string>) => hear(JSON.parse(data) as FiringWatch);
      stream.onerror = () => {
        failures += 1;
        setLive(({ known }) => ({ known, isLive: false }));
        if (stream?.readyState === EventSource.CLOSED) again = setTimeout(listen, pauseMs(failures));
      };
    };
    void keptWatch(firingId).then((known) => {
      if (wanted && known !== null) setLive((now) => (now.known === null ? { known, isLive: false } : now));
    });
    ask<FiringWatch>(`/firings/${encodeURIComponent(firingId)}/watch`).then(hear, () => {});
    listen();
    return () => {
      wanted = false;
      clearTimeout(again);
      stream?.close();
    };
  }, [firingId, isUnderWay]);
  return live;
}

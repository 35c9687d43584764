import { useQuery } from "@tanstack/react-query";
import type { FiringWatch } from "../../../studio/api/watch-contract.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { Sign } from "../../parts/index.ts";
import { ask } from "../../studio/client.ts";
import { useSettings } from "../../studio/hooks.ts";
import { useMinute } from "../start/use-minute.ts";
import { liveWords } from "./live-words.ts";

const AGAIN_MS = 30_000;

/** A firing under way at a glance, looked at anew every half minute; its own screen watches it closely. */
export function LiveLine({ firing }: { readonly firing: FiringRecord }) {
  const { temperatureUnits } = useSettings();
  const now = useMinute();
  const { data: watch } = useQuery({
    queryKey: ["watch at a glance", firing.id],
    queryFn: () => ask<FiringWatch>(`/firings/${encodeURIComponent(firing.id)}/watch`),
    refetchInterval: AGAIN_MS,
    gcTime: AGAIN_MS,
    retry: false,
  });
  const troubles = watch?.faults.filter(({ untilMin }) => untilMin === null) ?? [];
  return (
    <>
      <p>{liveWords(firing, watch, now, temperatureUnits).join(" · ")}</p>
      {troubles.map(({ kind, sinceMin, message, isDanger }) => (
        <Sign key={`${kind} ${sinceMin}`} kind={isDanger ? "breaks" : "mind"}>
          {message}
        </Sign>
      ))}
    </>
  );
}

import { useQuery } from "@tanstack/react-query";
import type { ShownReadings } from "../../../studio/api/readings-contract.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { read } from "../../studio/read.ts";
import { useWatched } from "../../studio/watched.ts";
import { waitingSends } from "../waiting/waiting-sends.ts";

/** As long before the opening a reading still tells of it. */
const BEFORE_MS = 30 * 60_000;

/** The probe's last temperature as the kiln was opened, °C: read then, or typed in; null where nothing tells it. */
export function useOpeningTemperature({ id, endedAt }: FiringRecord): number | null {
  const path = `/firings/${id}/readings`;
  const waiting = useWatched(waitingSends).findLast((each) => each.path === path)?.json as
    | { tempC?: number }
    | undefined;
  const from = endedAt === null ? null : new Date(Date.parse(endedAt) - BEFORE_MS).toISOString();
  const question = `firings/${encodeURIComponent(id)}/readings?by=raw&from=${from}`;
  const { data } = useQuery({
    // Asked again once what was typed in has gone.
    queryKey: ["readings", question, waiting?.tempC ?? null],
    queryFn: () => read<ShownReadings>(question, false),
    enabled: from !== null,
  });
  return waiting?.tempC ?? data?.series[0]?.tempC.at(-1) ?? null;
}

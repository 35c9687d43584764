import { useQuery } from "@tanstack/react-query";
import { useMemo } from "react";
import type { ShownReadings } from "../../../studio/api/readings-contract.ts";
import type { ReadingSeries } from "../../../studio/records/reading.ts";
import { read } from "../../studio/read.ts";

/** A firing's temperatures by the minute, longest two weeks; undefined while they are read or the studio is away. */
export function useReadings(firingId: string): readonly ReadingSeries[] | undefined {
  const path = `firings/${encodeURIComponent(firingId)}/readings?by=minute&most=20000`;
  const { data } = useQuery({ queryKey: ["readings", path], queryFn: () => read<ShownReadings>(path, false) });
  return useMemo(() => data?.series.map((each) => seriesOf(firingId, each)), [data, firingId]);
}

const seriesOf = (firingId: string, { probe, at, tempC }: ShownReadings["series"][number]): ReadingSeries => ({
  firingId,
  probe,
  readings: at.map((moment, i) => ({ at: moment, tempC: tempC[i] as number })),
});

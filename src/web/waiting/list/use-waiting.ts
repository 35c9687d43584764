import { useMemo } from "react";
import { promisedPieces } from "../../../studio/queries/promised.ts";
import { useClayBodies, useGlazes, useLoads, useWare } from "../../studio/hooks.ts";
import { useToday } from "../words/use-today.ts";
import { type WaitingBatch, waitingBatches } from "./waiting-batch.ts";

const NONE: readonly never[] = [];

/** Every batch, ready for the list; undefined while it is read. Loads, glazes and clay bodies may come after it. */
export function useWaiting(): WaitingBatch[] | undefined {
  const ware = useWare();
  const glazes = useGlazes() ?? NONE;
  const clayBodies = useClayBodies() ?? NONE;
  const loads = useLoads() ?? NONE;
  const today = useToday();
  const promised = useMemo(() => promisedPieces(loads), [loads]);
  return useMemo(
    () => ware && waitingBatches(ware, { glazes, clayBodies, promised, today }),
    [ware, glazes, clayBodies, promised, today],
  );
}

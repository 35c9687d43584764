import type { LoadRecord } from "../../src/studio/records/load-record.ts";
import { ask, command, largerKiln, waiting } from "./studio-data.ts";

/** A load that has been planned, and how to be rid of it and its ware again. */
export interface PlannedLoad {
  readonly record: LoadRecord;
  readonly pieces: number;
  readonly remove: () => Promise<void>;
}

/** Makes a load of so many waiting pieces and has it planned, without a browser. */
export async function plannedLoad(address: string, kilnId: "usual" | "larger", pieces: number): Promise<PlannedLoad> {
  const ware = waiting(1, pieces);
  const wareIds = ware.map(({ id }) => id);
  const id = `load-${kilnId}`;
  await command(address, "add-ware", { ware });
  // Only for as long as it is wanted: a new load would be for the largest kiln.
  if (kilnId === "larger") await command(address, "add-kiln", largerKiln());
  await command(address, "make-load", { id, kilnId, name: id, wareIds });
  const { jobId } = await ask<{ jobId: string }>(address, "/plans", { loadId: id, keep: "nothing" });
  // The events end when the planning is over.
  await (await fetch(`${address}/api/plans/${jobId}/events`)).text();
  const record = await ask<LoadRecord>(address, `/loads/${id}`);
  return {
    record,
    pieces: record.plan?.levels.reduce((sum, { placements }) => sum + placements.length, 0) ?? 0,
    remove: async () => {
      await command(address, "remove-load", { id });
      if (kilnId === "larger") await command(address, "remove-kiln", { id: kilnId });
      await command(address, "remove-ware", { ids: wareIds });
    },
  };
}

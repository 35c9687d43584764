import { randomUUID } from "node:crypto";
import { predict } from "../../firing/prediction/predict.ts";
import type { NewLogger } from "../../studio/api/readings-contract.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { KilnRecord } from "../../studio/records/kiln-record.ts";
import type { Chosen } from "./choose-firing.ts";
import type { StudioTalk } from "./studio-talk.ts";

/** A rehearsed firing under way. */
export interface Begun {
  readonly id: string;
  readonly startedAt: string;
  /** What its readings are sent with. */
  readonly token: string;
}

/** How long a firing takes until it may be unloaded, as it is foretold; a little more, for the kiln is another than described. */
export function rehearsalMinutes({ input }: Chosen): number {
  const { hours, coolHours } = predict(input);
  return (hours + (coolHours["50"] ?? 24)) * 60 * 1.15;
}

/** Prepares the firing, adds the logger that sends its readings, and starts it: all by the commands that she has too. */
export async function beginFiring(studio: StudioTalk, { load, programme }: Chosen, now: string): Promise<Begun> {
  const kiln = await studio.get<KilnRecord>(`kilns/${load.kilnId}`);
  const running = (await studio.get<FiringRecord[]>("firings")).filter(
    ({ kilnId, state }) => kilnId === kiln.id && (state === "firing" || state === "cooling"),
  );
  // A copy: what fires in her own kiln goes on there, and has no place here.
  for (const { id } of running) await studio.command("end-firing", { id, at: now, brokenOff: true });
  const id = randomUUID();
  await studio.command("prepare-firing", {
    id,
    loadId: load.id,
    name: `Rehearsal: ${load.name}`.slice(0, 100),
    programme,
  });
  const probe = kiln.kiln.probes?.[0]?.name ?? "probe";
  const { token } = await studio.post<NewLogger>("loggers", { kilnId: kiln.id, probe, name: "rehearsal" });
  await studio.command("start-firing", { id, at: now });
  const { startedAt } = await studio.get<FiringRecord>(`firings/${id}`);
  return { id, token, startedAt: startedAt ?? now };
}

/** A rehearsal writes no letters and calls nobody. */
export const keepQuiet = (studio: StudioTalk): Promise<unknown> =>
  studio.command("change-settings", { notices: { browser: true, email: "", webhook: "" } });

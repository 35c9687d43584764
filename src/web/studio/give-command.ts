import type { Changed, CommandAnswer } from "../../studio/api/contract.ts";
import { type StudioCache, studioCache } from "./cache.ts";
import { newId } from "./new-id.ts";
import { line, whenTold } from "./sending.ts";

/**
 * Gives the studio a command through the outbox.
 *
 * @param show shows the change at once; what was there before is remembered, to be put back where she takes it back
 * @throws StudioRefusal where the studio says no; TakenBack where she took it back before it was saved
 */
export async function giveCommand(
  name: string,
  input: object,
  show?: (cache: StudioCache) => void,
): Promise<CommandAnswer> {
  const before: Record<string, Record<string, unknown>> = {};
  show?.(
    studioCache((kind, id, record) => {
      before[kind] ??= {};
      if (!(id in before[kind])) before[kind][id] = record;
    }),
  );
  const key = newId();
  const told = whenTold(key);
  await line.add({ key, name, input, before: before as Changed });
  const { outcome } = await told;
  if (outcome.kind === "done") return outcome.answer;
  throw outcome.kind === "refused" ? outcome.error : new Error("The outbox told of a command that is still waiting.");
}

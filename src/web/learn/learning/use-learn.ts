import { useState } from "react";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { undoLast } from "../../loads/undo-last.ts";
import { tell } from "../../parts/index.ts";
import { newId, useCommand } from "../../studio/hooks.ts";

export interface Learning {
  readonly isBusy: boolean;
  /** What the studio refused, and why. */
  readonly error: unknown;
  readonly learn: (firings: readonly FiringRecord[]) => Promise<boolean>;
}

/** Learns from firings of one kiln; about a second for each. */
export function useLearn(kilnId: string): Learning {
  const command = useCommand();
  const [isBusy, setBusy] = useState(false);
  const [error, setError] = useState<unknown>(null);
  const learn = async (firings: readonly FiringRecord[]): Promise<boolean> => {
    setBusy(true);
    setError(null);
    try {
      const { entry } = await command("learn-from", { id: newId(), kilnId, firingIds: firings.map(({ id }) => id) });
      tell(entry.summary, () => void undoLast("kilns"));
      return true;
    } catch (refused) {
      setError(refused);
      return false;
    } finally {
      setBusy(false);
    }
  };
  return { isBusy, error, learn };
}

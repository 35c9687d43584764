import type { StudioSettings } from "../../studio/records/studio-settings.ts";
import { useCommand } from "../studio/hooks.ts";

/** Changes some of the studio's settings: shown at once, kept when the studio has done it. */
export function useChangeSettings(): (change: Partial<StudioSettings>) => void {
  const command = useCommand();
  return (change) => {
    // A refusal is told by the frame, and the settings are read again.
    void command("change-settings", change, (cache) => cache.settings(change));
  };
}

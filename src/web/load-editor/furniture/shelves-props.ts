import type { Edited } from "../../../loading/editing/open-plan.ts";
import type { LoadPlan } from "../../../loading/load-plan.ts";
import type { LoadRequest } from "../../../loading/load-request.ts";

/** What changing shelves by hand takes. */
export interface ShelvesPanelProps {
  readonly request: LoadRequest;
  readonly plan: LoadPlan;
  readonly level: number;
  readonly onLevel: (level: number) => void;
  readonly onEdit: (edited: Edited, note: string) => void;
}

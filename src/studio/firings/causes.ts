import type { FaultName } from "../records/faults.ts";
import { CAUSES } from "./causes-data.ts";
import type { PieceFacts } from "./piece-facts.ts";

/** What may have caused a fault. */
export interface Cause {
  readonly fault: FaultName;
  /** In a few words. */
  readonly cause: string;
  /** The reasoning; where this firing shows signs of it, with its numbers. */
  readonly because: string;
  /** What to try next time. */
  readonly tryNext: string;
  readonly source: string;
  /** `shown`: this firing has signs of it; `open`: nothing known speaks for or against; `unlikely`: its signs are missing. */
  readonly standing: "shown" | "open" | "unlikely";
}

const ORDER = { shown: 0, open: 1, unlikely: 2 } as const;

/**
 * What may have caused a fault, likeliest first: what this firing shows signs of, then what cannot be told from it, then
 * what its readings speak against. Advice from trade knowledge, never a finding.
 *
 * @param facts where and how the piece was fired (`pieceFacts`)
 */
export function causesOf(fault: FaultName, facts: PieceFacts): Cause[] {
  return CAUSES.filter((each) => each.fault === fault)
    .map(({ cause, why, sign, tryNext, source }): Cause => {
      const found = sign?.(facts) ?? null;
      const standing = found === null ? "open" : found === false ? "unlikely" : "shown";
      const because = typeof found === "string" ? `${found} ${why}` : why;
      return { fault, cause, because, tryNext, source, standing };
    })
    .sort((a, b) => ORDER[a.standing] - ORDER[b.standing]);
}

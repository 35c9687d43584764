import type { Programme } from "../../../firing/programme/programme.ts";
import { becomesOf } from "../../../studio/firings/piece-becomes.ts";
import { BECOMES, type Becomes } from "../../../studio/records/becomes.ts";
import type { FaultName } from "../../../studio/records/faults.ts";
import type { Outcome } from "../../../studio/records/firing-parts.ts";
import { pieceFired } from "../judging/becomes.ts";
import { type Progress, progressOf } from "../judging/judged.ts";
import type { FiredPiece } from "../judging/pieces.ts";

/** Pieces of one kind that became one thing. */
export interface Moved {
  readonly becomes: Becomes;
  readonly name: string;
  readonly count: number;
}

export interface Summary {
  readonly progress: Progress;
  /** Nobody looked at them: they count as good. */
  readonly unseen: number;
  /** What moves where, in the order of `BECOMES`, most first. */
  readonly moved: readonly Moved[];
  /** Pieces whose batch is gone since: nothing moves on. */
  readonly withoutBatch: number;
  /** Which faults, and on how many pieces, most first. */
  readonly faults: readonly { readonly fault: FaultName; readonly count: number }[];
}

/** What there is to keep once a kiln is unpacked. */
export function summaryOf(
  pieces: readonly FiredPiece[],
  judged: ReadonlyMap<string, Outcome>,
  kind: Programme["kind"],
): Summary {
  const progress = progressOf(pieces, judged);
  const counts = new Map<string, number>();
  const faults = new Map<FaultName, number>();
  for (const piece of pieces) {
    const outcome = judged.get(piece.key);
    for (const fault of outcome?.faults ?? []) faults.set(fault, (faults.get(fault) ?? 0) + 1);
    if (piece.batch === null) continue;
    const becomes = becomesOf(outcome?.becomes, pieceFired(outcome?.grade ?? "good", piece.batch, kind));
    const key = JSON.stringify([becomes, piece.name]);
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  const moved = [...counts].map(([key, count]): Moved => {
    const [becomes, name] = JSON.parse(key) as [Becomes, string];
    return { becomes, name, count };
  });
  return {
    progress,
    unseen: progress.pieces - progress.judged,
    moved: moved.sort((a, b) => BECOMES.indexOf(a.becomes) - BECOMES.indexOf(b.becomes) || b.count - a.count),
    withoutBatch: pieces.filter(({ batch }) => batch === null).length,
    faults: [...faults].map(([fault, count]) => ({ fault, count })).sort((a, b) => b.count - a.count),
  };
}

import type { Prediction } from "../../../firing/prediction/predict.ts";
import { bestStart } from "../../../firing/tariff/best-start.ts";
import { firingCost } from "../../../firing/tariff/firing-cost.ts";
import type { Tariff } from "../../../firing/tariff/tariff.ts";
import { openAfterHoursOf } from "../../../studio/firing-start.ts";

/** When she would like it to go on. Moments in UTC. */
export type StartWish =
  /** Whenever she is ready. */
  | { readonly kind: "ready" }
  | { readonly kind: "at"; readonly at: string }
  /** So that the lid may be lifted by a moment. */
  | { readonly kind: "open-by"; readonly openBy: string }
  /** When the electricity is cheapest, not later than a moment. */
  | { readonly kind: "cheapest"; readonly until: string };

/** What is known of the firing and its price. */
export interface StartFacts {
  readonly prediction: Prediction;
  readonly tariff: Tariff | null;
  readonly now: string;
}

/** A start, and what comes of it. */
export interface StartPlan {
  /** Null: whenever she is ready. */
  readonly startAt: string | null;
  readonly shutOffAt: string | null;
  /** When the lid may be lifted; null where that is over a week off, or the start is open. */
  readonly openAt: string | null;
  readonly cost: number | null;
  /** What this start saves against the dearest that would do. */
  readonly saves: number | null;
}

export type StartAnswer =
  | ({ readonly kind: "found" } & StartPlan)
  | { readonly kind: "none"; readonly reason: string; readonly earliestOpenAt: string | null };

const MINUTE_MS = 60_000;
const HOUR_MS = 3_600_000;
const STEP_MIN = 15;

/**
 * Finds the start that does what she wishes. Without a tariff, "open by" is the latest start that keeps it: the kiln
 * stands cold no longer than it must, and she is there when it shuts off no earlier than need be.
 *
 * @throws BadInput for moments that are none
 */
export function startFor(wish: StartWish, facts: StartFacts): StartAnswer {
  const { prediction, tariff, now } = facts;
  if (wish.kind === "ready") return { kind: "found", ...planAt(null, facts) };
  if (wish.kind === "at") return { kind: "found", ...planAt(wish.at, facts) };
  const after = openAfterHoursOf(prediction);
  const none = (reason: string): StartAnswer => ({
    kind: "none",
    reason,
    earliestOpenAt: after === null ? null : later(now, after),
  });
  if (wish.kind === "cheapest") {
    if (tariff === null) return none("What electricity costs is not known yet.");
    return cheapest(now, wish.until, facts) ?? none("That is before now.");
  }
  if (after === null) return none("It takes over a week until the lid may be lifted: no opening can be promised.");
  const latestMs = Date.parse(wish.openBy) - after * HOUR_MS;
  if (latestMs < Date.parse(now)) return none("It would not be cool enough by then.");
  const latest = new Date(latestMs).toISOString();
  if (tariff !== null && (tariff.slots ?? []).length > 0) return cheapest(now, latest, facts) ?? none("No start fits.");
  const onTheQuarter = Math.floor(latestMs / (STEP_MIN * MINUTE_MS)) * STEP_MIN * MINUTE_MS;
  return { kind: "found", ...planAt(new Date(Math.max(onTheQuarter, Date.parse(now))).toISOString(), facts) };
}

/** Between two moments at most a month apart, the start that costs least. */
function cheapest(earliest: string, latest: string, facts: StartFacts): StartAnswer | null {
  const { prediction, tariff } = facts;
  if (tariff === null || latest < earliest) return null;
  const lastTried = later(earliest, 30 * 24);
  const found = bestStart({
    firing: prediction.firing,
    tariff,
    earliest,
    latest: latest < lastTried ? latest : lastTried,
    wanted: { kind: "cheapest" },
  });
  if (found.kind === "none") return null;
  const { best, dearest } = found;
  return { kind: "found", ...planAt(best.startIso, facts), saves: dearest.cost.total - best.cost.total };
}

function planAt(startAt: string | null, { prediction, tariff }: StartFacts): StartPlan {
  const after = openAfterHoursOf(prediction);
  // At the same price all day any start tells the cost; by slots only the start itself does.
  const isFlat = tariff !== null && (tariff.slots ?? []).length === 0 && tariff.demand === undefined;
  const reckonedAt = startAt ?? (isFlat ? "2000-01-01T00:00:00.000Z" : null);
  return {
    startAt,
    shutOffAt: startAt && later(startAt, prediction.hours),
    openAt: startAt && after !== null ? later(startAt, after) : null,
    cost: tariff === null || reckonedAt === null ? null : firingCost(prediction.firing, tariff, reckonedAt).total,
    saves: null,
  };
}

const later = (moment: string, hours: number): string => new Date(Date.parse(moment) + hours * HOUR_MS).toISOString();

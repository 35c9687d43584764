import type { LoadPlan } from "../../../loading/load-plan.ts";
import type { PlanEvent } from "../../../studio/api/contract.ts";

/** How the planning of one load stands. */
export interface PlanningState {
  readonly running: boolean;
  /** Of the best plan so far. */
  readonly pieces: number;
  readonly value: number;
  /** The best plan so far, or one that came of it and is not kept; null where the load's own plan is the one to show. */
  readonly livePlan: LoadPlan | null;
  /** What went wrong, in words. */
  readonly problem: string | null;
  /** True where `livePlan` is done, not kept, and could be. */
  readonly canKeep: boolean;
}

export const NOT_PLANNING: PlanningState = {
  running: false,
  pieces: 0,
  value: 0,
  livePlan: null,
  problem: null,
  canKeep: false,
};

export const BEGINNING: PlanningState = { ...NOT_PLANNING, running: true };

/** How the planning stands once the job has said something. */
export function afterEvent(state: PlanningState, event: PlanEvent): PlanningState {
  switch (event.kind) {
    case "better":
      return { ...state, running: true, pieces: event.pieces, value: event.value, livePlan: event.plan };
    case "kept":
      return NOT_PLANNING;
    case "not-kept":
      return { ...state, running: false, livePlan: event.plan, problem: event.reason, canKeep: true };
    case "impossible":
      return { ...NOT_PLANNING, problem: sentences(["No load can be made of this.", ...event.reasons]) };
    case "stopped":
      return stopped(state);
    case "failed":
      return { ...NOT_PLANNING, problem: `Planning broke off: ${event.message}` };
  }
}

/** How it stands where the job is gone without having said how it ended. */
export const afterLoss = (state: PlanningState): PlanningState => ({
  ...state,
  running: false,
  problem: "The planning was lost on the way: the studio's server was stopped or started again. Plan once more.",
  canKeep: state.livePlan !== null,
});

const stopped = (state: PlanningState): PlanningState =>
  state.livePlan
    ? { ...state, running: false, problem: "Stopped early: this is the best found so far.", canKeep: true }
    : NOT_PLANNING;

const sentences = (parts: readonly string[]): string => parts.join(" ");

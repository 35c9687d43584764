import { useSyncExternalStore } from "react";
import type { PlanWish } from "../../studio/api/contract.ts";
import { useCommand, useLoad } from "../studio/hooks.ts";
import { showAnswer } from "../studio/sending.ts";
import { PlanningJobs } from "./planning/planning-jobs.ts";
import { planningServer, tabMemory } from "./planning/planning-server.ts";
import type { PlanningState } from "./planning/planning-state.ts";

/** Every planning of this tab. */
const jobs = new PlanningJobs(planningServer, tabMemory);
jobs.onKept = ({ answer }) => showAnswer(answer);

const subscribe = (listener: () => void): (() => void) => jobs.subscribe(listener);

/** The planning of one load, and what can be done about it. */
export interface Planning extends PlanningState {
  /** Starts it; one that runs is begun anew. `keep`: what stays as it stands. */
  plan(keep: PlanWish["keep"], more?: Pick<PlanWish, "seed" | "seconds">): void;
  /** Enough: what was found so far can be kept. */
  stop(): void;
  /** Keeps a plan that was found and not kept (`canKeep`), whatever changed meanwhile. */
  keepAnyway(): Promise<void>;
  /** Lets go of it, and of the problem. */
  letGo(): void;
}

/**
 * The planning of a load, followed live. It goes on while she looks at another screen; coming back shows it.
 *
 * @param loadId which load
 */
export function usePlanning(loadId: string): Planning {
  const state = useSyncExternalStore(subscribe, () => jobs.stateOf(loadId));
  const load = useLoad(loadId);
  const command = useCommand();
  return {
    ...state,
    plan: (keep, more) => void jobs.plan({ loadId, keep, ...more }),
    stop: () => void jobs.stop(loadId),
    keepAnyway: async () => {
      const { livePlan } = jobs.stateOf(loadId);
      if (livePlan === null || !load) return;
      await command("change-load", { id: loadId, version: load.version, plan: livePlan });
      jobs.forget(loadId);
    },
    letGo: () => jobs.forget(loadId),
  };
}

/** Tells of any load whether it is being planned. */
export function useIsPlanning(): (loadId: string) => boolean {
  const running = useSyncExternalStore(subscribe, () => jobs.running());
  return (loadId) => running.includes(loadId);
}

/** Starts planning a load outside any component: the load was made a moment ago. */
export const beginPlanning = (wish: PlanWish): void => void jobs.plan(wish);

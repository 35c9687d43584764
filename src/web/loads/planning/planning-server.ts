import type { PlanEvent, PlanWish } from "../../../studio/api/contract.ts";
import { ask } from "../../studio/client.ts";
import { waitingCount } from "../../studio/connection.ts";
import type { PlanningMemory, PlanningServer } from "./planning-jobs.ts";

/** The studio's server, asked over HTTP; a job's words come as server-sent events. */
export const planningServer: PlanningServer = {
  begin: async (wish: PlanWish) => {
    await changesSent();
    return (await ask<{ jobId: string }>("/plans", { body: wish })).jobId;
  },
  listen: (jobId, heard, lost) => {
    const source = new EventSource(`/api/plans/${jobId}/events`);
    source.onmessage = (message: MessageEvent<string>) => heard(JSON.parse(message.data) as PlanEvent);
    // The browser tries again by itself while the network is away; closed means that the server knows no such job.
    source.onerror = () => {
      if (source.readyState === EventSource.CLOSED) lost();
    };
    return () => source.close();
  },
  end: (jobId) => ask(`/plans/${jobId}`, { method: "DELETE" }),
};

const PATIENCE_MS = 3000;

/**
 * Comes back when none of her changes waits any more: a load planned before they arrived would be another one. Where the
 * studio is away it comes back all the same, and asking says so.
 */
const changesSent = (): Promise<void> =>
  new Promise((resolve) => {
    const settle = (): void => {
      if (waitingCount.get() > 0) return;
      done();
    };
    const done = (): void => {
      clearTimeout(timer);
      leave();
      resolve();
    };
    const timer = setTimeout(done, PATIENCE_MS);
    const leave = waitingCount.subscribe(settle);
    settle();
  });

const PLACE = "wareboard.planning";

/** Running jobs, remembered for as long as this tab is open. */
export const tabMemory: PlanningMemory = {
  read: () => {
    try {
      return JSON.parse(sessionStorage.getItem(PLACE) ?? "{}") as Record<string, string>;
    } catch {
      return {};
    }
  },
  write: (jobs) => {
    try {
      sessionStorage.setItem(PLACE, JSON.stringify(jobs));
    } catch {
      // A browser that keeps nothing: a reload forgets the job, which goes on all the same.
    }
  },
};

import type { ErrorAnswer, PlanEvent, PlanWish } from "../../../studio/api/contract.ts";
import type { PlanningMemory, PlanningServer } from "./planning-jobs.ts";

/** The studio's server, asked over HTTP; a job's words come as server-sent events. */
export const planningServer: PlanningServer = {
  begin: async (wish) => {
    const answer = await asked("/api/plans", {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(wish satisfies PlanWish),
    });
    return ((await answer.json()) as { jobId: string }).jobId;
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
  end: async (jobId) => {
    await asked(`/api/plans/${jobId}`, { method: "DELETE" });
  },
};

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

async function asked(path: string, init: RequestInit): Promise<Response> {
  let answer: Response;
  try {
    answer = await fetch(path, init);
  } catch {
    throw new Error("The studio's server does not answer. Planning needs it: try again when it is back.");
  }
  if (answer.ok) return answer;
  const said = (await answer.json().catch(() => null)) as ErrorAnswer | null;
  throw new Error(said?.error.message ?? `The studio's server answered with ${answer.status}.`);
}

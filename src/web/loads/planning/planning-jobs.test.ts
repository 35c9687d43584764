import { describe, expect, test } from "vitest";
import type { LoadPlan } from "../../../loading/load-plan.ts";
import type { PlanEvent, PlanWish } from "../../../studio/api/contract.ts";
import { PlanningJobs, type PlanningServer } from "./planning-jobs.ts";

const plan: LoadPlan = { format: "load-plan/1", levels: [], left: [], figures: {} };
const better = (pieces: number): PlanEvent => ({ kind: "better", pieces, value: pieces * 2, plan });
const kept = {
  kind: "kept",
  answer: {
    entry: { id: "e", at: "", scope: "load:l1", command: "change-load", summary: "Planned", undone: false },
    changed: {},
    settingsChanged: false,
  },
} as const satisfies PlanEvent;

/** A server that says what the test tells it to. */
function standIn() {
  const heard = new Map<string, (event: PlanEvent) => void>();
  const lost = new Map<string, () => void>();
  const log: string[] = [];
  let next = 1;
  const server: PlanningServer = {
    begin: async (wish: PlanWish) => {
      log.push(`begin ${wish.loadId} ${wish.keep}`);
      return `j${next++}`;
    },
    listen: (jobId, onEvent, onLost) => {
      heard.set(jobId, onEvent);
      lost.set(jobId, onLost);
      return () => heard.delete(jobId);
    },
    end: async (jobId) => {
      log.push(`end ${jobId}`);
    },
  };
  let memory: Readonly<Record<string, string>> = {};
  const jobs = (): PlanningJobs =>
    new PlanningJobs(server, {
      read: () => memory,
      write: (running) => {
        memory = running;
      },
    });
  return {
    jobs,
    log,
    say: (jobId: string, event: PlanEvent) => heard.get(jobId)?.(event),
    lose: (jobId: string) => lost.get(jobId)?.(),
    listening: () => [...heard.keys()],
  };
}

describe("planning a load", () => {
  test("shows each better plan while it runs, and nothing of its own once it is kept", async () => {
    const { jobs, say, listening } = standIn();
    const planning = jobs();
    let keptEvents = 0;
    planning.onKept = () => {
      keptEvents++;
    };
    await planning.plan({ loadId: "l1", keep: "nothing" });
    expect(planning.stateOf("l1")).toMatchObject({ running: true, livePlan: null });
    say("j1", better(7));
    expect(planning.stateOf("l1")).toMatchObject({ running: true, pieces: 7, value: 14, livePlan: plan });
    expect(planning.stateOf("l2").running).toBe(false);
    say("j1", kept);
    expect(planning.stateOf("l1")).toMatchObject({ running: false, livePlan: null, problem: null });
    expect(keptEvents).toBe(1);
    expect(listening()).toEqual([]);
  });

  test("says why a plan was not kept, and lets it be kept or let go", async () => {
    const { jobs, say } = standIn();
    const planning = jobs();
    await planning.plan({ loadId: "l1", keep: "nothing" });
    say("j1", { kind: "not-kept", plan, reason: "The load was changed meanwhile: this plan was not kept." });
    expect(planning.stateOf("l1")).toMatchObject({ running: false, livePlan: plan, canKeep: true });
    expect(planning.stateOf("l1").problem).toContain("changed meanwhile");
    planning.forget("l1");
    expect(planning.stateOf("l1")).toMatchObject({ livePlan: null, problem: null, canKeep: false });
  });

  test("stopped early, offers the best found so far; before anything was found, ends in silence", async () => {
    const { jobs, say, log } = standIn();
    const planning = jobs();
    await planning.plan({ loadId: "l1", keep: "pinned" });
    say("j1", better(3));
    await planning.stop("l1");
    expect(log).toEqual(["begin l1 pinned", "end j1"]);
    say("j1", { kind: "stopped" });
    expect(planning.stateOf("l1")).toMatchObject({ running: false, canKeep: true, livePlan: plan });
    await planning.plan({ loadId: "l1", keep: "nothing" });
    say("j2", { kind: "stopped" });
    expect(planning.stateOf("l1")).toMatchObject({ running: false, canKeep: false, problem: null });
  });

  test("a second press ends the first job and hears only the second", async () => {
    const { jobs, say, log } = standIn();
    const planning = jobs();
    await planning.plan({ loadId: "l1", keep: "nothing" });
    await planning.plan({ loadId: "l1", keep: "all" });
    expect(log).toEqual(["begin l1 nothing", "end j1", "begin l1 all"]);
    say("j1", better(99));
    expect(planning.stateOf("l1").pieces).toBe(0);
    say("j2", better(5));
    expect(planning.stateOf("l1").pieces).toBe(5);
  });

  test("goes on over a reload, and says so where the job is gone", async () => {
    const { jobs, say, lose } = standIn();
    await jobs().plan({ loadId: "l1", keep: "nothing" });
    const again = jobs();
    expect(again.stateOf("l1").running).toBe(true);
    say("j1", better(4));
    expect(again.stateOf("l1").pieces).toBe(4);
    lose("j1");
    expect(again.stateOf("l1")).toMatchObject({ running: false, canKeep: true });
    expect(again.stateOf("l1").problem).toContain("lost");
    expect(jobs().stateOf("l1").running).toBe(false);
  });

  test("tells what makes a load impossible, and a server's refusal, in its words", async () => {
    const { jobs, say } = standIn();
    const planning = jobs();
    await planning.plan({ loadId: "l1", keep: "nothing" });
    say("j1", { kind: "impossible", reasons: ["No post is tall enough."] });
    expect(planning.stateOf("l1").problem).toBe("No load can be made of this. No post is tall enough.");
    const refusing = new PlanningJobs(
      {
        begin: () => Promise.reject(new Error("This load is gone.")),
        listen: () => () => {},
        end: () => Promise.resolve(),
      },
      { read: () => ({}), write: () => {} },
    );
    await refusing.plan({ loadId: "l9", keep: "nothing" });
    expect(refusing.stateOf("l9")).toMatchObject({ running: false, problem: "This load is gone." });
  });
});

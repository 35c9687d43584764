import { shown } from "../../measures/bad-input.ts";
import type { PlanWish } from "../../studio/api/contract.ts";
import { Refusal } from "../answering/refusals.ts";
import { PlanJob } from "./plan-job.ts";

/** Each uses the machine's cores: more at once would only be slower. */
const AT_ONCE = 2;
/** How long the end of a job is remembered, for a browser that was away. */
const REMEMBERED_MS = 10 * 60_000;

/** Plans, telling the job what it finds and how it ended. Throws nothing. */
export type DoPlanJob = (job: PlanJob, wish: PlanWish) => Promise<void>;

/** Every planning of this server: two at once, the others in line. They go on whether somebody listens or not. */
export class PlanJobs {
  readonly #jobs = new Map<string, PlanJob>();
  readonly #line: { readonly job: PlanJob; readonly wish: PlanWish }[] = [];
  readonly #running = new Set<Promise<void>>();
  readonly #do: DoPlanJob;
  readonly #newId: () => string;

  constructor(newId: () => string, doPlanJob: DoPlanJob) {
    this.#newId = newId;
    this.#do = doPlanJob;
  }

  /** Puts a wish in line. One that runs for the same load is stopped: she has thought better of it. */
  begin(wish: PlanWish): PlanJob {
    for (const job of this.#jobs.values()) if (job.loadId === wish.loadId && !job.isOver) this.#stop(job);
    const job = new PlanJob(this.#newId(), wish.loadId);
    this.#jobs.set(job.id, job);
    this.#line.push({ job, wish });
    this.#next();
    return job;
  }

  /** @throws Refusal where there is no such job, or none any more */
  get(id: string): PlanJob {
    const job = this.#jobs.get(id);
    if (job) return job;
    throw new Refusal(404, {
      code: "unknown-job",
      path: "jobId",
      found: shown(id),
      expected: "a planning that runs, or ended within the last ten minutes",
    });
  }

  stop(id: string): void {
    this.#stop(this.get(id));
  }

  /** Stops all, and waits until their threads are gone. */
  async close(): Promise<void> {
    for (const job of this.#jobs.values()) this.#stop(job);
    while (this.#running.size > 0) await Promise.all(this.#running);
  }

  #stop(job: PlanJob): void {
    job.stop();
    const place = this.#line.findIndex((each) => each.job === job);
    if (place < 0) return;
    this.#line.splice(place, 1);
    job.end({ kind: "stopped" });
    this.#forgetLater(job);
  }

  #next(): void {
    if (this.#running.size >= AT_ONCE) return;
    const first = this.#line.shift();
    if (!first) return;
    const done = this.#do(first.job, first.wish).finally(() => {
      this.#running.delete(done);
      this.#forgetLater(first.job);
      this.#next();
    });
    this.#running.add(done);
  }

  #forgetLater(job: PlanJob): void {
    setTimeout(() => this.#jobs.delete(job.id), REMEMBERED_MS).unref();
  }
}

import type { PlanEvent, PlanWish } from "../../../studio/api/contract.ts";
import { afterEvent, afterLoss, BEGINNING, NOT_PLANNING, type PlanningState } from "./planning-state.ts";

/** What planning asks of the server. */
export interface PlanningServer {
  /** Starts a job and gives its id. */
  begin(wish: PlanWish): Promise<string>;
  /** Tells what a job says until it has ended or `lost` is called; the answer stops listening. */
  listen(jobId: string, heard: (event: PlanEvent) => void, lost: () => void): () => void;
  end(jobId: string): Promise<void>;
}

/** Remembers the running jobs over a reload: load ids to job ids. */
export interface PlanningMemory {
  read(): Readonly<Record<string, string>>;
  write(jobs: Readonly<Record<string, string>>): void;
}

/** Told when a job has kept its plan, before the state says so: the place to put the load's new plan into the cache. */
export type KeptListener = (event: Extract<PlanEvent, { kind: "kept" }>) => void;

interface Job {
  state: PlanningState;
  jobId: string | null;
  quiet: () => void;
}

/**
 * The planning of every load of this browser. It belongs to no screen: a job goes on while she looks at another one, and
 * coming back shows it.
 */
export class PlanningJobs {
  readonly #server: PlanningServer;
  readonly #memory: PlanningMemory;
  readonly #jobs = new Map<string, Job>();
  readonly #listeners = new Set<() => void>();
  #running: readonly string[] = [];
  onKept: KeptListener = () => {};

  constructor(server: PlanningServer, memory: PlanningMemory) {
    this.#server = server;
    this.#memory = memory;
    for (const [loadId, jobId] of Object.entries(memory.read())) this.#follow(loadId, jobId, BEGINNING);
  }

  stateOf(loadId: string): PlanningState {
    return this.#jobs.get(loadId)?.state ?? NOT_PLANNING;
  }

  /** The loads being planned; the same list until it is another. */
  running(): readonly string[] {
    return this.#running;
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Starts a job; one that runs for the same load is ended first. */
  async plan(wish: PlanWish): Promise<void> {
    const before = this.#jobs.get(wish.loadId);
    if (before?.state.running) await this.#quietly(before);
    const job: Job = { state: BEGINNING, jobId: null, quiet: () => {} };
    this.#jobs.set(wish.loadId, job);
    this.#told();
    try {
      const jobId = await this.#server.begin(wish);
      if (this.#jobs.get(wish.loadId) === job) this.#follow(wish.loadId, jobId, BEGINNING);
      else await this.#server.end(jobId);
    } catch (error) {
      if (this.#jobs.get(wish.loadId) !== job) return;
      this.#set(wish.loadId, { ...NOT_PLANNING, problem: error instanceof Error ? error.message : String(error) });
    }
  }

  /** Ends the search early; what the job says last still comes. */
  async stop(loadId: string): Promise<void> {
    const job = this.#jobs.get(loadId);
    if (!job?.state.running) return;
    if (job.jobId === null) this.forget(loadId);
    else await this.#server.end(job.jobId).catch(() => this.#set(loadId, afterLoss(job.state)));
  }

  /** Lets go of what was found and not kept, and of any problem. */
  forget(loadId: string): void {
    this.#jobs.get(loadId)?.quiet();
    this.#jobs.delete(loadId);
    this.#remember();
    this.#told();
  }

  #follow(loadId: string, jobId: string, state: PlanningState): void {
    const job: Job = { state, jobId, quiet: () => {} };
    this.#jobs.set(loadId, job);
    const isCurrent = (): boolean => this.#jobs.get(loadId) === job;
    job.quiet = this.#server.listen(
      jobId,
      (event) => {
        if (!isCurrent()) return;
        if (event.kind === "kept") this.onKept(event);
        this.#set(loadId, afterEvent(job.state, event));
      },
      () => {
        if (isCurrent() && job.state.running) this.#set(loadId, afterLoss(job.state));
      },
    );
    this.#remember();
    this.#told();
  }

  #set(loadId: string, state: PlanningState): void {
    const job = this.#jobs.get(loadId);
    if (!job) return;
    job.state = state;
    if (!state.running) {
      job.quiet();
      this.#remember();
    }
    this.#told();
  }

  async #quietly(job: Job): Promise<void> {
    job.quiet();
    if (job.jobId !== null) await this.#server.end(job.jobId).catch(() => {});
  }

  #remember(): void {
    const running = [...this.#jobs].filter(([, { state, jobId }]) => state.running && jobId !== null);
    this.#memory.write(Object.fromEntries(running.map(([loadId, { jobId }]) => [loadId, jobId as string])));
  }

  #told(): void {
    const running = [...this.#jobs].filter(([, { state }]) => state.running).map(([loadId]) => loadId);
    if (running.join(" ") !== this.#running.join(" ")) this.#running = running;
    for (const listener of this.#listeners) listener();
  }
}

import { sameValue } from "../../../studio/history/same-value.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import { afterEdit, type LoadEdit } from "./load-edit.ts";

// Her edits of one load, faster than the studio answers. Each is made on the load as the one before leaves it and sent
// with the version that one will have come to; the outbox keeps their order. Where the load was changed elsewhere
// meanwhile, what she did is laid on the newer state if the plan beneath is still the same, and kept for her to decide
// about if it is not.

/** What came of an edit that was sent. */
export type EditOutcome =
  | { readonly kind: "done" }
  /** She undid it before it was saved. */
  | { readonly kind: "taken back" }
  /** The load is no longer as the edit found it. */
  | { readonly kind: "changed since" }
  | { readonly kind: "refused"; readonly error: unknown };

/** What an edit line needs of the studio. */
export interface EditLinePorts {
  /** Sends an edit made on a load and shows it at once; comes back when the studio has answered. */
  readonly send: (on: LoadRecord, edit: LoadEdit, after: LoadRecord) => Promise<EditOutcome>;
  /** The load as the studio has it now, or null where it is gone; waits for the studio where it does not answer. */
  readonly read: (id: string) => Promise<LoadRecord | null>;
  /** Takes back every edit of the load that still waits to be sent. */
  readonly takeBackAll: (id: string) => Promise<void>;
  /** Told of what could not be done. */
  readonly refused: (error: unknown) => void;
}

/** The load was changed elsewhere while she worked on it. */
export interface Parted {
  /** The load as she would have it. */
  readonly mine: LoadRecord;
  /** The load as it is kept; null where it is gone. */
  readonly theirs: LoadRecord | null;
}

export interface EditLineState {
  /** The load with every edit that is not acknowledged yet; null where there is none: then the studio's word holds. */
  readonly working: LoadRecord | null;
  readonly parted: Parted | null;
}

interface Waiting {
  readonly edit: LoadEdit;
  readonly on: LoadRecord;
  readonly after: LoadRecord;
}

const MOST_TRIES = 3;

/** The edits of one load that the studio has not acknowledged yet. */
export class EditLine {
  readonly #ports: EditLinePorts;
  readonly #listeners = new Set<() => void>();
  #waiting: Waiting[] = [];
  #tries = 0;
  /** True while it is found out what the load has become elsewhere; what she does meanwhile is sent after that. */
  #isLooking = false;
  #state: EditLineState = { working: null, parted: null };

  constructor(ports: EditLinePorts) {
    this.#ports = ports;
  }

  state(): EditLineState {
    return this.#state;
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /**
   * Does an edit.
   *
   * @param kept the load as this page knows it; built on only where none of her edits waits
   */
  add(kept: LoadRecord, edit: LoadEdit): void {
    const on = this.#state.working ?? kept;
    const after = afterEdit(on, edit);
    // What changes nothing is not counted by the studio either, and would put every later version out.
    if (sameValue({ ...after, version: on.version }, on)) return;
    const waiting = { edit, on, after };
    this.#waiting.push(waiting);
    if (!this.#isLooking) this.#send(waiting);
    this.#told();
  }

  /**
   * Takes in what she did before the page was loaded again and the studio would not do, for her to decide about.
   *
   * @param mine the load as she would have it
   */
  async takeIn(mine: LoadRecord): Promise<void> {
    const theirs = await this.#ports.read(mine.id);
    if (theirs && sameValue(theirs.plan, mine.plan)) return;
    this.#state = { ...this.#state, parted: { mine, theirs } };
    this.#told();
  }

  /** Lets her own state go, or takes it as decided about. */
  letGo(): void {
    this.#state = { ...this.#state, parted: null };
    this.#told();
  }

  #send(waiting: Waiting): void {
    const { on, edit, after } = waiting;
    void this.#ports.send(on, edit, after).then((outcome) => this.#heard(waiting, outcome));
  }

  #heard(waiting: Waiting, outcome: EditOutcome): void {
    // Edits that were given up together are still told of one by one.
    if (this.#isLooking || !this.#waiting.includes(waiting)) return;
    if (outcome.kind === "refused") void this.#giveUp(waiting, outcome.error);
    else if (outcome.kind === "changed since") void this.#layOnNewer();
    else {
      if (outcome.kind === "done") this.#tries = 0;
      this.#waiting = this.#waiting.filter((each) => each !== waiting);
      this.#told();
    }
  }

  async #giveUp({ on }: Waiting, error: unknown): Promise<void> {
    this.#waiting = [];
    this.#told();
    await this.#ports.takeBackAll(on.id);
    this.#ports.refused(error);
  }

  async #layOnNewer(): Promise<void> {
    const { on: found } = this.#waiting[0] as Waiting;
    this.#isLooking = true;
    await this.#ports.takeBackAll(found.id);
    const theirs = await this.#ports.read(found.id);
    this.#isLooking = false;
    this.#tries += 1;
    const given = this.#waiting;
    this.#waiting = [];
    if (theirs && this.#tries <= MOST_TRIES && sameValue(theirs.plan, found.plan)) {
      for (const { edit } of given) {
        const on: LoadRecord = this.#waiting.at(-1)?.after ?? theirs;
        const waiting = { edit, on, after: afterEdit(on, edit) };
        this.#waiting.push(waiting);
        this.#send(waiting);
      }
    } else {
      this.#tries = 0;
      this.#state = { ...this.#state, parted: { mine: (given.at(-1) as Waiting).after, theirs } };
    }
    this.#told();
  }

  #told(): void {
    this.#state = { ...this.#state, working: this.#waiting.at(-1)?.after ?? null };
    for (const listener of this.#listeners) listener();
  }
}

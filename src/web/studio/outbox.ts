import { inOrder, type Outcome, pauseMs, placeAfter, type WaitingCommand } from "./line.ts";

// Her changes on their way to the studio. Each is kept on this device before it is sent, so that neither a reload nor a
// lost network loses it; they go one at a time, in order; only one open page sends.

/** What the outbox needs of the browser. */
export interface OutboxPorts<Answer> {
  /** The line as it is kept on this device, shared by every open page. */
  readonly kept: {
    readonly all: () => Promise<readonly WaitingCommand[]>;
    readonly put: (command: WaitingCommand) => Promise<void>;
    /**
     * Changes the command at a place, or takes it out (null), with nothing in between: another page may be at it too.
     *
     * @returns what was there before; null where nothing was, and then nothing was done
     */
    readonly change: (
      place: string,
      change: (command: WaitingCommand) => WaitingCommand | null,
    ) => Promise<WaitingCommand | null>;
  };
  readonly send: (command: WaitingCommand) => Promise<Outcome<Answer>>;
  /** Undoes a command that was taken back after it was sent. */
  readonly sendUndo: (command: WaitingCommand, answer: Answer) => Promise<Outcome<Answer>>;
  /** Runs `work` while no other page does; pages wait for each other. */
  readonly alone: (work: () => Promise<void>) => Promise<void>;
  readonly nowMs: () => number;
  /** Waits so long, or until `wake` is called here or on another page. */
  readonly pause: (ms: number) => Promise<void>;
  readonly wake: () => void;
  /** Tells this page and every other what became of a command. */
  readonly tell: (command: WaitingCommand, outcome: Outcome<Answer>) => void;
  /** The line is now this long. */
  readonly counted: (waiting: number) => void;
}

export interface Outbox {
  /** Puts a command at the end of the line; comes back when it is kept on this device. */
  readonly add: (command: Pick<WaitingCommand, "key" | "name" | "input" | "before">) => Promise<WaitingCommand>;
  /** Takes a command back. False where it is no longer in the line: then the studio's own undo is the way. */
  readonly takeBack: (key: string) => Promise<boolean>;
  /** Takes a command out of the line for good, whether it arrived or not: where it holds up all after it. */
  readonly letGo: (key: string) => Promise<void>;
  readonly line: () => Promise<WaitingCommand[]>;
  /** Sends what waits, now. */
  readonly wake: () => void;
}

/** Makes the outbox. */
export function outbox<Answer>(ports: OutboxPorts<Answer>): Outbox {
  const { kept } = ports;
  let lastPlace: string | null = null;
  let sender: Promise<void> | null = null;

  const line = async () => {
    const all = inOrder(await kept.all());
    ports.counted(all.length);
    return all;
  };

  const sendAll = async () => {
    let silent = 0;
    for (let first = (await line())[0]; first; first = (await line())[0]) {
      // Written down before it goes: whatever happens next, it may have arrived.
      if (!(await kept.change(first.place, (command) => ({ ...command, tried: true })))) continue;
      let outcome = await ports.send(first);
      if (outcome.kind !== "away") {
        // She may have taken it back while it was on its way.
        const undoes = outcome.kind === "done";
        const last = await kept.change(first.place, (command) => (undoes && command.takenBack ? command : null));
        if (outcome.kind === "done" && last?.takenBack) outcome = await ports.sendUndo(first, outcome.answer);
      }
      if (outcome.kind === "away") {
        silent += 1;
        await ports.pause(pauseMs(silent));
        continue;
      }
      silent = 0;
      await kept.change(first.place, () => null);
      await line();
      ports.tell(first, outcome);
    }
  };

  const wake = () => {
    ports.wake();
    if (sender) return;
    sender = ports.alone(sendAll).finally(() => {
      sender = null;
    });
    // Something may have come between the last look at the line and the end of sending.
    void sender.then(line).then((all) => {
      if (all.length > 0) wake();
    });
  };

  return {
    line,
    wake,
    add: async ({ key, name, input, before }) => {
      lastPlace = placeAfter(ports.nowMs(), lastPlace);
      const waiting = { key, name, input, before, place: `${lastPlace}-${key.slice(0, 8)}` };
      await kept.put(waiting);
      await line();
      wake();
      return waiting;
    },
    letGo: async (key) => {
      const found = (await kept.all()).find((each) => each.key === key);
      if (found) await kept.change(found.place, () => null);
      await line();
      ports.wake();
    },
    takeBack: async (key) => {
      const found = (await kept.all()).find((each) => each.key === key);
      const was =
        found &&
        (await kept.change(found.place, (command) => (command.tried ? { ...command, takenBack: true } : null)));
      if (!was) return false;
      await line();
      return true;
    },
  };
}

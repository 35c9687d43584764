import { inOrder, type Outcome, pauseMs, placeAfter, type WaitingCommand } from "./line.ts";

// Her changes on their way to the studio. Each is kept on this device before it is sent, so that neither a reload nor a
// lost network loses it; they go one at a time, in order; only one open page sends.

/** What the outbox needs of the browser. */
export interface OutboxPorts<Answer> {
  /** The line as it is kept on this device, shared by every open page. */
  readonly kept: {
    readonly all: () => Promise<readonly WaitingCommand[]>;
    /** Puts a command at its place, or another in its place. */
    readonly put: (command: WaitingCommand) => Promise<void>;
    readonly takeOut: (place: string) => Promise<void>;
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

  const sendOne = async (command: WaitingCommand): Promise<Outcome<Answer>> => {
    const outcome = await ports.send(command);
    if (outcome.kind !== "done") return outcome;
    // She may have taken it back while it was on its way.
    const now = (await kept.all()).find(({ key }) => key === command.key) ?? command;
    return now.takenBack ? ports.sendUndo(now, outcome.answer) : outcome;
  };

  const sendAll = async () => {
    let silent = 0;
    for (let first = (await line())[0]; first; first = (await line())[0]) {
      // Written down before it goes: whatever happens next, it may have arrived.
      if (!first.tried) await kept.put({ ...first, tried: true });
      const outcome = await sendOne(first);
      if (outcome.kind === "away") {
        silent += 1;
        await ports.pause(pauseMs(silent));
        continue;
      }
      silent = 0;
      await kept.takeOut(first.place);
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
    takeBack: async (key) => {
      const found = (await kept.all()).find((each) => each.key === key);
      if (!found) return false;
      if (found.tried) await kept.put({ ...found, takenBack: true });
      else await kept.takeOut(found.place);
      await line();
      return true;
    },
  };
}

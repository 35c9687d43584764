/** Something that waits to be sent to the studio. */
export interface WaitingSend {
  readonly key: string;
  /** When it was put there. */
  readonly at: string;
  /** Under /api. */
  readonly path: string;
  /** What it is, in words: "The photo of the bowl". */
  readonly about: string;
  readonly picture?: Blob;
  readonly json?: unknown;
}

/** What the sending needs. */
export interface SendPorts {
  /** The line as it is now, the oldest first. */
  readonly all: () => Promise<readonly WaitingSend[]>;
  readonly mayGo: () => boolean;
  readonly send: (what: WaitingSend) => Promise<void>;
  /** Whether an error only says that the studio is away. */
  readonly isAway: (error: unknown) => boolean;
  readonly refused: (what: WaitingSend, error: unknown) => void;
  /** It has gone, or will never go. */
  readonly done: (what: WaitingSend) => Promise<void>;
}

/** Sends one after the other, in order. What the studio refuses is told and let go; where it is away, all the rest waits. */
export async function sendEach(ports: SendPorts): Promise<void> {
  for (let [first] = await ports.all(); first && ports.mayGo(); [first] = await ports.all()) {
    try {
      await ports.send(first);
    } catch (error) {
      if (ports.isAway(error)) return;
      ports.refused(first, error);
    }
    await ports.done(first);
  }
}

import { useWatched, watched } from "./watched.ts";

/** Whether the studio answered when it was last asked. */
export const answering = watched(true);
/** How many of her changes wait to be saved. */
export const waitingCount = watched(0);
/** True where the studio wants its passphrase before it says more. */
export const passphraseAsked = watched(false);

export type Connection = "here" | "away" | "sending";

/** How things stand between this browser and the studio. */
export function useConnection(): Connection {
  const answers = useWatched(answering);
  const waiting = useWatched(waitingCount);
  return answers ? (waiting > 0 ? "sending" : "here") : "away";
}

/** How many of her changes wait to be saved, from every open page of this browser. */
export const useWaitingCount = (): number => useWatched(waitingCount);

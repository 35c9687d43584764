/** What the planner says while it looks. */
interface Progress {
  readonly value: number;
  readonly pieces: number;
}

/** A line on the terminal that is written over while the planner looks; silent where nobody watches. */
export function terminalProgress(silent: boolean): { show: (progress: Progress) => void; clear: () => void } {
  const watched = !silent && process.stderr.isTTY === true;
  return {
    show: (progress) => {
      if (watched)
        process.stderr.write(
          `\r\x1b[K  ${progress.pieces} pieces placed, worth ${Math.round(progress.value * 10) / 10} …`,
        );
    },
    clear: () => {
      if (watched) process.stderr.write("\r\x1b[K");
    },
  };
}

/**
 * The clock of a rehearsal's studio. It begins in the past and runs faster than the world's, so that it has caught up with
 * that when the rehearsed firing is over: no moment it tells lies in the future. From then on it is the world's.
 *
 * @param speed how many times as fast; 1 is the world's own clock
 * @param lengthMs how long the rehearsed firing takes by this clock
 * @param world the world's clock, milliseconds
 */
export function rehearsalClock(speed: number, lengthMs: number, world: () => number): () => number {
  const beganMs = world();
  const firstMs = beganMs - lengthMs * (1 - 1 / speed);
  return () => {
    const nowMs = world();
    return Math.floor(Math.min(nowMs, firstMs + (nowMs - beganMs) * speed));
  };
}

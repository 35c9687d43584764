/**
 * The clock of a rehearsal's studio. It begins in the past and runs faster than the world's, so that it has caught up with
 * that when the rehearsed firing is over: no moment it tells lies in the future. It waits for its kiln: on a busy machine
 * a second more between two readings would else be an hour's silence. Once let go, it becomes the world's.
 */
export class RehearsalClock {
  private readonly speed: number;
  private readonly world: () => number;
  private readonly beganMs: number;
  private readonly firstMs: number;
  private heldAtMs: number;

  /**
   * @param speed how many times as fast; 1 is the world's own clock
   * @param lengthMs how long the rehearsed firing takes by this clock
   * @param world the world's clock, milliseconds
   */
  constructor(speed: number, lengthMs: number, world: () => number) {
    this.speed = speed;
    this.world = world;
    this.beganMs = world();
    this.firstMs = Math.ceil(this.beganMs - lengthMs * (1 - 1 / speed));
    this.heldAtMs = this.firstMs;
  }

  /** The moment it is, milliseconds. */
  nowMs(): number {
    return Math.min(this.wantedMs(), this.heldAtMs);
  }

  /** The moment it would be if it waited for nobody. */
  wantedMs(): number {
    const nowMs = this.world();
    return Math.floor(Math.min(nowMs, this.firstMs + (nowMs - this.beganMs) * this.speed));
  }

  /** It may go on as far as this. Never back. */
  mayGoTo(ms: number): void {
    this.heldAtMs = Math.max(this.heldAtMs, ms);
  }

  /** It waits no more. */
  letGo(): void {
    this.heldAtMs = Number.POSITIVE_INFINITY;
  }
}

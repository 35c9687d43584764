/**
 * Which pairs of pieces are near enough to matter, kept until some piece has moved half a skin's width (a Verlet list;
 * Allen and Tildesley, Computer Simulation of Liquids, 2nd ed. 2017, section 5.3).
 */
export class Neighbours {
  /** Where each piece's neighbours begin in `list`; only those with a higher index are listed. */
  readonly start: Int32Array;
  readonly list: Int32Array;

  private readonly reach: Float64Array;
  private readonly skin: number;
  private readonly seenX: Float64Array;
  private readonly seenY: Float64Array;
  private readonly seenKind: Int32Array;
  private seenCount = -1;

  /** @param reach how far each kind reaches from its axis, in millimetres */
  constructor(capacity: number, reach: Float64Array) {
    this.reach = reach;
    this.skin = 0.3 * reach.reduce((sum, each) => sum + each / reach.length, 0);
    this.start = new Int32Array(capacity + 1);
    this.list = new Int32Array((capacity * (capacity - 1)) / 2);
    this.seenX = new Float64Array(capacity);
    this.seenY = new Float64Array(capacity);
    this.seenKind = new Int32Array(capacity);
  }

  /** Lists the near pairs again where pieces have moved too far or are not the same since. */
  refresh(kindOf: Int32Array, count: number, places: Float64Array): void {
    if (!this.stale(kindOf, count, places)) return;
    this.seenCount = count;
    for (let i = 0; i < count; i++) {
      this.seenX[i] = places[3 * i] as number;
      this.seenY[i] = places[3 * i + 1] as number;
      this.seenKind[i] = kindOf[i] as number;
    }
    let filled = 0;
    for (let i = 0; i < count; i++) {
      this.start[i] = filled;
      const x = this.seenX[i] as number;
      const y = this.seenY[i] as number;
      const reach = (this.reach[kindOf[i] as number] as number) + this.skin;
      for (let j = i + 1; j < count; j++) {
        const dx = x - (this.seenX[j] as number);
        const dy = y - (this.seenY[j] as number);
        const near = reach + (this.reach[kindOf[j] as number] as number);
        if (dx * dx + dy * dy < near * near) this.list[filled++] = j;
      }
    }
    this.start[count] = filled;
  }

  /** Lists afresh at the next look, whatever has moved. */
  forget(): void {
    this.seenCount = -1;
  }

  private stale(kindOf: Int32Array, count: number, places: Float64Array): boolean {
    if (count !== this.seenCount) return true;
    const most = (this.skin / 2) ** 2;
    for (let i = 0; i < count; i++) {
      const dx = (places[3 * i] as number) - (this.seenX[i] as number);
      const dy = (places[3 * i + 1] as number) - (this.seenY[i] as number);
      if (dx * dx + dy * dy > most || this.seenKind[i] !== kindOf[i]) return true;
    }
    return false;
  }
}

import type { Programme } from "../programme/programme.ts";

/** As near as this to a target is there, °C. */
const THERE_C = 1;

/**
 * A controller as they are built into small kilns: a ramp by its clock, a wait at its end until the kiln is there, a hold.
 * It knows only what its probe reads.
 */
export class RehearsalController {
  private readonly segments: Programme["segments"];
  private segment = 0;
  private fromC: number;
  private begunMin = 0;
  private heldFromMin: number | null = null;

  /** @param startC what the probe reads when it is switched on */
  constructor({ segments }: Pick<Programme, "segments">, startC: number) {
    this.segments = segments;
    this.fromC = startC;
  }

  get isOver(): boolean {
    return this.segment >= this.segments.length;
  }

  /** What it asks for at a minute, °C, its probe reading so much; null once its programme is over. */
  wantedC(minute: number, readC: number): number | null {
    for (;;) {
      const segment = this.segments[this.segment];
      if (segment === undefined) return null;
      const { rateCPerHour, targetC, holdMin } = segment;
      if (this.heldFromMin !== null) {
        if (minute - this.heldFromMin < holdMin) return targetC;
        this.fromC = targetC;
        this.begunMin = minute;
        this.heldFromMin = null;
        this.segment++;
        continue;
      }
      const rising = targetC >= this.fromC;
      const away = Math.abs(targetC - this.fromC);
      const climbed = rateCPerHour === null ? away : (rateCPerHour * (minute - this.begunMin)) / 60;
      const short = rising ? targetC - readC : readC - targetC;
      if (climbed >= away && short <= THERE_C) {
        this.heldFromMin = minute;
        continue;
      }
      return this.fromC + (rising ? 1 : -1) * Math.min(away, climbed);
    }
  }

  /** Switched off by hand. */
  end(): void {
    this.segment = this.segments.length;
  }
}

import type { Programme } from "../programme/programme.ts";

export type Segments = Programme["segments"];
type Segment = Segments[number];

/** Where in its programme a firing is. */
export interface ProgrammePlace {
  /** The segment, from zero; the number of segments once the programme is over. */
  readonly segment: number;
  /** Climbing or falling as asked; waiting for the kiln to get there; holding; over. */
  readonly doing: "ramp" | "wait" | "hold" | "over";
  /** True while the segment's target lies above where it began. */
  readonly rising: boolean;
  /** What the segment asks for, °C an hour; null for as fast as the kiln can, in a hold, and once it is over. */
  readonly askedCPerHour: number | null;
  /** What the programme asks for now, °C; null once it is over. */
  readonly wantedC: number | null;
  /** How far the kiln is short of that in the direction it is going, °C; below zero where it is past it. */
  readonly behindC: number;
  /** When the programme was over, on the readings' clock; null before. */
  readonly overMin: number | null;
  /** What is left to do from the temperature it has now: the first segment is the rest of the present one. */
  readonly rest: Segments;
}

/** How a controller works, where controllers differ. */
export interface ControllerWay {
  /** At the end of a ramp it waits for the kiln; else its clock goes on and the hold begins. */
  readonly waits: boolean;
  /** Where its first ramp begins, °C. */
  readonly fromC: number;
}

/** As near as this to a target a controller takes as there. Common practice, no source. */
const THERE_C = 3;

/**
 * The first reading's noise, or readings that come seldom, make our clock of the programme early or late: a slow first
 * ramp's by a quarter of an hour. On a ramp that the kiln keeps up with, its readings set the clock: by so little at a
 * time that a kiln that stays behind is not taken for a clock that is wrong, and by no more than that noise can make.
 */
const CLOCK = { keepsUpC: 8, overMin: 20, firstErrorC: 9, seldomMin: 5 };

/** Follows a firing through its programme by its readings, taking its controller to work in one way. */
export class ProgrammeFollower {
  private segment = 0;
  private fromC: number;
  private begunMin: number;
  private holdFromMin: number | null = null;
  private waited = false;
  private overMin: number | null = null;
  private setMin = 0;
  private lastMin: number;
  private readonly segments: Segments;
  private readonly waits: boolean;
  private readonly mostSetMin: number;

  /** @param startMin when the first segment began, on the readings' clock */
  constructor(segments: Segments, startMin: number, way: ControllerWay) {
    this.segments = segments;
    this.begunMin = startMin;
    this.fromC = way.fromC;
    this.waits = way.waits;
    this.lastMin = startMin;
    const rate = segments[0]?.rateCPerHour ?? Number.POSITIVE_INFINITY;
    this.mostSetMin = Math.max(CLOCK.seldomMin, (CLOCK.firstErrorC / rate) * 60);
  }

  /** The kiln was shut off by hand: the programme is over, wherever it was. */
  end(minute: number): void {
    if (this.overMin !== null && this.overMin <= minute) return;
    this.segment = this.segments.length;
    this.overMin = minute;
  }

  /** One reading more, in order of time; where the firing is then. */
  read(minute: number, tempC: number): ProgrammePlace {
    for (;;) {
      const segment = this.segments[this.segment];
      if (segment === undefined) return this.over();
      const { rateCPerHour, targetC, holdMin } = segment;
      const rising = targetC >= this.fromC;
      const short = rising ? targetC - tempC : tempC - targetC;
      if (this.holdFromMin !== null) {
        const held = minute - this.holdFromMin;
        if (held < holdMin) return this.place("hold", rising, targetC, short, holdMin - held, tempC);
        this.next(segment, this.holdFromMin + holdMin);
        continue;
      }
      const away = Math.abs(targetC - this.fromC);
      const rampMin = rateCPerHour === null ? 0 : (away / rateCPerHour) * 60;
      const spent = minute - this.begunMin;
      if (spent >= rampMin) {
        const mustWait = this.waits || rateCPerHour === null;
        if (mustWait && short > THERE_C) {
          return this.place(rateCPerHour === null ? "ramp" : "wait", rising, targetC, short, holdMin, tempC);
        }
        // It got there at the ramp's end where it kept up, else with this reading.
        this.holdFromMin = this.waited || rateCPerHour === null ? minute : this.begunMin + rampMin;
        continue;
      }
      const climbed = (away * spent) / rampMin;
      const wantedC = this.fromC + (rising ? climbed : -climbed);
      const behindC = rising ? wantedC - tempC : tempC - wantedC;
      this.setClock(minute, behindC, rateCPerHour as number);
      return this.place("ramp", rising, wantedC, behindC, holdMin, tempC);
    }
  }

  private setClock(minute: number, behindC: number, rateCPerHour: number): void {
    const spentMin = Math.min(CLOCK.overMin, minute - this.lastMin);
    this.lastMin = minute;
    if (Math.abs(behindC) > CLOCK.keepsUpC) return;
    const wrongMin = (1 - Math.exp(-spentMin / CLOCK.overMin)) * (behindC / rateCPerHour) * 60;
    const set = Math.max(-this.mostSetMin, Math.min(this.mostSetMin, this.setMin + wrongMin));
    this.begunMin += set - this.setMin;
    this.setMin = set;
  }

  private next(done: Segment, begunMin: number): void {
    this.segment++;
    this.fromC = done.targetC;
    this.begunMin = begunMin;
    this.holdFromMin = null;
    this.waited = false;
    if (this.segment === this.segments.length) this.overMin = begunMin;
  }

  private over(): ProgrammePlace {
    return {
      segment: this.segments.length,
      doing: "over",
      rising: false,
      askedCPerHour: null,
      wantedC: null,
      behindC: 0,
      overMin: this.overMin,
      rest: [],
    };
  }

  private place(
    doing: "ramp" | "wait" | "hold",
    rising: boolean,
    wantedC: number,
    behindC: number,
    holdLeftMin: number,
    tempC: number,
  ): ProgrammePlace {
    if (doing === "wait") this.waited = true;
    const { targetC, rateCPerHour } = this.segments[this.segment] as Segment;
    const rate = doing === "ramp" ? rateCPerHour : null;
    // Ahead of its ramp, the kiln is held back until the programme has caught up; behind, it hurries: the rest begins here.
    const hurried = rate === null ? null : rateFrom(tempC, wantedC, targetC, rate);
    const rest = [{ rateCPerHour: hurried, targetC, holdMin: holdLeftMin }, ...this.segments.slice(this.segment + 1)];
    const askedCPerHour = doing === "hold" ? null : rateCPerHour;
    return { segment: this.segment, doing, rising, askedCPerHour, wantedC, behindC, overMin: null, rest };
  }
}

/** The rate that ends the ramp when the programme does, from where the kiln is; null where it should be there by now. */
function rateFrom(tempC: number, wantedC: number, targetC: number, rate: number): number | null {
  const left = Math.abs(targetC - wantedC);
  const away = Math.abs(targetC - tempC);
  return left < 1e-9 || away < 1e-9 ? null : (rate * away) / left;
}

import { ProgrammeFollower, type ProgrammePlace, type Segments } from "./programme-follower.ts";

/** Where a firing is by the likeliest way its controller works, and by every way that its readings bear. */
export interface FollowedPlace {
  readonly likeliest: ProgrammePlace;
  /** The likeliest among them. A fault against the programme must be one in all of them. */
  readonly possible: readonly ProgrammePlace[];
}

/** Readings further back than this hardly count in which way fits. */
const REMEMBERED_MIN = 10;
/** One reading tells no more than this against a way, °C: so that a way can come back. */
const MOST_APART_C = 60;
/** A way that fits worse than the best by more than this is not borne by the readings, °C. Above twice a reading's noise. */
const NOT_BORNE_C = 8;
/** The first way is believed until another fits this much better, °C. */
const CLEARLY_C = 4;
/** The first reading may be off by this much, °C: twice a reading's noise. It moves all that follows a slow first ramp. */
const FIRST_ERROR_C = 6;
/** A kiln this much warmer than its room may begin its ramp from what it has or from the room's, °C. */
const WARM_C = 15;
/** A kiln that is off loses at least this much at first, °C a minute, and this is asked of it no longer than so many minutes. */
const FALL = { cPerMin: 1, forMin: 30 };

/**
 * Follows a firing by every way in which controllers work: waiting for the kiln at the end of a ramp or not; where the
 * kiln is warm, beginning from what it has or from the room's temperature (common practice, no source); and by a clock that
 * is early or late by what the first reading's noise may make. What the readings have lain near to of late is the likeliest.
 */
export class FollowedProgramme {
  private readonly ways: { follower: ProgrammeFollower; apartC: number }[];
  private readonly over: { sinceMin: number; fromC: number }[] = [];
  private likeliest = 0;
  private lastMin: number;

  /** @param startMin when the first segment began, on the readings' clock; @param startC what the probe read then */
  constructor(segments: Segments, startMin: number, startC: number, roomC: number) {
    const starts = [startC, startC - FIRST_ERROR_C, startC + FIRST_ERROR_C];
    if (startC > roomC + WARM_C) starts.push(roomC);
    this.ways = starts
      .flatMap((fromC) => [true, false].map((waits) => ({ waits, fromC })))
      .map((way) => ({ follower: new ProgrammeFollower(segments, startMin, way), apartC: 0 }));
    this.lastMin = startMin;
  }

  /** The kiln was shut off by hand. */
  end(minute: number): void {
    for (const { follower } of this.ways) follower.end(minute);
  }

  /** One reading more, in order of time. */
  read(minute: number, tempC: number): FollowedPlace {
    const kept = Math.exp((this.lastMin - minute) / REMEMBERED_MIN);
    this.lastMin = minute;
    const places = this.ways.map((way, i) => {
      const place = way.follower.read(minute, tempC);
      const apart = Math.min(MOST_APART_C, Math.abs(this.apart(i, place, minute, tempC)));
      way.apartC = kept * way.apartC + (1 - kept) * apart;
      return place;
    });
    const least = this.ways.reduce((best, way) => Math.min(best, way.apartC), Number.POSITIVE_INFINITY);
    if ((this.ways[this.likeliest] as { apartC: number }).apartC > least + CLEARLY_C) {
      this.likeliest = this.ways.findIndex((way) => way.apartC === least);
    }
    return {
      likeliest: places[this.likeliest] as ProgrammePlace,
      // A warm kiln stands still until a ramp from the room's temperature has come up to it: that bears every way.
      possible: places.filter((place, i) => {
        const borne = (this.ways[i] as { apartC: number }).apartC <= least + NOT_BORNE_C;
        return borne || i === this.likeliest || (place.segment === 0 && place.doing === "ramp");
      }),
    };
  }

  /** How far a reading is from what a way asks for; once it is over, from falling. */
  private apart(way: number, place: ProgrammePlace, minute: number, tempC: number): number {
    if (place.wantedC !== null) return tempC - place.wantedC;
    this.over[way] ??= { sinceMin: minute, fromC: tempC };
    const { sinceMin, fromC } = this.over[way] as { sinceMin: number; fromC: number };
    return Math.max(0, tempC - fromC + FALL.cPerMin * Math.min(FALL.forMin, minute - sinceMin));
  }
}

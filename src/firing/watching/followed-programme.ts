import { ProgrammeFollower, type ProgrammePlace, type Segments } from "./programme-follower.ts";

/** Where a firing is by the likeliest way its controller works, and by every way that its readings bear. */
export interface FollowedPlace {
  readonly likeliest: ProgrammePlace;
  /** The likeliest among them. A fault against the programme must be one in all of them. */
  readonly possible: readonly ProgrammePlace[];
}

/** Readings further back than this hardly count in which way fits. */
const REMEMBERED_MIN = 10;
/** One reading tells no more than this against a way, °C: further off than that no way fits, and none is ruled out. */
const MOST_APART_C = 30;
/** A way that fits worse than the best by more than this is not borne by the readings, °C. Above twice a reading's noise. */
const NOT_BORNE_C = 8;
/** A beginning that is not borne for so long, while another fits within so much, is out for good. */
const OUT = { afterMin: 20, fitsC: 4, movedC: 20 };
/** The first way is believed until another fits this much better, °C. */
const CLEARLY_C = 4;
/** A kiln this much warmer than its room may begin its ramp from what it has or from the room's, °C. */
const WARM_C = 15;
/** A kiln that is off loses at least this much at first, °C a minute, and this is asked of it no longer than so many minutes. */
const FALL = { cPerMin: 1, forMin: 30 };

interface Way {
  readonly follower: ProgrammeFollower;
  readonly waits: boolean;
  /** How far from it the readings have been of late. */
  apartC: number;
  apartSinceMin: number | null;
  /** It did not fit for long while another did: it does not come back when something goes wrong. */
  out: boolean;
}

/**
 * Follows a firing by every way in which controllers work: waiting for the kiln at the end of a ramp or not; where the
 * kiln is warm, beginning from what it has or from the room's temperature (common practice, no source). What the readings have lain near to of late is the likeliest.
 */
export class FollowedProgramme {
  private readonly ways: Way[];
  private readonly over: { sinceMin: number; fromC: number }[] = [];
  private likeliest = 0;
  private readonly startC: number;
  private lastMin: number;

  /** @param startMin when the first segment began, on the readings' clock; @param startC what the probe read then */
  constructor(segments: Segments, startMin: number, startC: number, roomC: number) {
    const starts = startC > roomC + WARM_C ? [startC, roomC] : [startC];
    this.ways = starts
      .flatMap((fromC) => [true, false].map((waits) => ({ waits, fromC })))
      .map((way) => ({
        follower: new ProgrammeFollower(segments, startMin, way),
        waits: way.waits,
        apartC: 0,
        apartSinceMin: null,
        out: false,
      }));
    this.startC = startC;
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
    const least = this.leastApart(() => true);
    // When a programme began shows sooner or later; whether a controller waits, never for sure: those are not compared.
    for (const way of this.ways) {
      const fits = this.leastApart((other) => other.waits === way.waits);
      const told = fits <= OUT.fitsC && Math.abs(tempC - this.startC) >= OUT.movedC;
      if (!told || way.apartC <= fits + NOT_BORNE_C) way.apartSinceMin = null;
      else way.apartSinceMin ??= minute;
      if (way.apartSinceMin !== null && minute - way.apartSinceMin >= OUT.afterMin) way.out = true;
    }
    if ((this.ways[this.likeliest] as Way).out || (this.ways[this.likeliest] as Way).apartC > least + CLEARLY_C) {
      this.likeliest = this.ways.findIndex((way) => !way.out && way.apartC === least);
    }
    return {
      likeliest: places[this.likeliest] as ProgrammePlace,
      // A warm kiln stands still until a ramp from the room's temperature has come up to it: that bears every way.
      possible: places.filter((place, i) => {
        const { apartC, out } = this.ways[i] as Way;
        const borne = apartC <= least + NOT_BORNE_C || (place.segment === 0 && place.doing === "ramp");
        return i === this.likeliest || (borne && !out);
      }),
    };
  }

  private leastApart(among: (way: Way) => boolean): number {
    let least = Number.POSITIVE_INFINITY;
    for (const way of this.ways) if (!way.out && among(way)) least = Math.min(least, way.apartC);
    return least;
  }

  /** How far a reading is from what a way asks for; once it is over, from falling. As fast as it can, any pace fits. */
  private apart(way: number, place: ProgrammePlace, minute: number, tempC: number): number {
    if (place.wantedC !== null) return isAsFastAsItCan(place) ? 0 : tempC - place.wantedC;
    this.over[way] ??= { sinceMin: minute, fromC: tempC };
    const { sinceMin, fromC } = this.over[way] as { sinceMin: number; fromC: number };
    return Math.max(0, tempC - fromC + FALL.cPerMin * Math.min(FALL.forMin, minute - sinceMin));
  }
}

const isAsFastAsItCan = (place: ProgrammePlace): boolean => place.doing === "ramp" && place.askedCPerHour === null;

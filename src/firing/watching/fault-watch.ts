import { SURELY_C } from "./element-mode.ts";
import type { Fault, FaultKind, FaultLook, Finding, Sign } from "./fault.ts";
import { FAULT_THRESHOLDS } from "./fault-thresholds.ts";
import { Overshoot } from "./faults/overshoot.ts";
import { Silence } from "./faults/silence.ts";
import { Stalling } from "./faults/stalling.ts";
import { DEAD_PROBE_MESSAGE, StuckProbe } from "./faults/stuck-probe.ts";
import { type Elements, SuddenChange } from "./faults/sudden-change.ts";
import type { FollowedPlace } from "./followed-programme.ts";
import { RecentReadings } from "./recent-readings.ts";

const { lowestC, highestC } = FAULT_THRESHOLDS.dead;
/** One reading out of range may be a slip of the line; two in a row are a probe. */
const OUT_IN_A_ROW = 2;

/** What became of a reading. */
export interface Watched {
  /** Late, or the same moment again: for the record only. */
  readonly ignored: boolean;
  /** Whether it says how hot the kiln is. Null place where it was not followed. */
  readonly believed: boolean;
  readonly place: FollowedPlace | null;
}

/**
 * Looks for faults in a firing's readings. One fault is one fault: it begins once and ends once, and what follows from a
 * probe that cannot be believed is not told as another.
 */
export class FaultWatch {
  /** All faults so far, in the order in which they were noticed. */
  readonly faults: Fault[] = [];
  private readonly open = new Map<FaultKind, number>();
  private readonly silenceLook = new Silence();
  private readonly sudden = new SuddenChange();
  private readonly stuck = new StuckProbe();
  private readonly looks: readonly FaultLook[] = [new Stalling(), new Overshoot()];
  private readonly recent = new RecentReadings();
  private readonly follow: (minute: number, tempC: number) => FollowedPlace;
  private place: FollowedPlace | null = null;
  private lastMin = Number.NEGATIVE_INFINITY;
  private outInARow = 0;
  private outSinceMin = 0;

  /** @param follow where a believed reading puts the firing in its programme */
  constructor(follow: (minute: number, tempC: number) => FollowedPlace) {
    this.follow = follow;
  }

  /** One reading more. Those that come late, or twice, are ignored here. */
  read(minute: number, tempC: number): Watched {
    if (!(minute > this.lastMin)) return { ignored: true, believed: false, place: this.place };
    this.breakSilence(minute);
    this.lastMin = minute;
    if (!(tempC > lowestC.value && tempC < highestC.value)) {
      this.silenceLook.read(minute, Number.POSITIVE_INFINITY, this.isOff());
      this.outOfRange(minute, tempC);
      return { ignored: false, believed: false, place: this.place };
    }
    this.outInARow = 0;
    const trust = this.sudden.look(minute, tempC, this.elements());
    this.note("jump", trust.jump, minute);
    this.note("slipped probe", trust.slipped, minute);
    // A slipped probe is what its controller goes by: the programme goes on by it.
    if (trust.believed || this.isOpen("slipped probe")) this.place = this.follow(minute, tempC);
    this.silenceLook.read(minute, tempC, this.isOff());
    if (!trust.believed || this.place === null) {
      if (this.isOpen("slipped probe")) this.recent.clear();
      return { ignored: false, believed: false, place: this.place };
    }
    const reading = { minute, tempC, place: this.place, recent: this.recent };
    const stuck = this.stuck.look(reading);
    this.note("dead probe", stuck, minute);
    if (this.recent.add(minute, tempC) && !this.isOpen("dead probe") && !this.stuck.mayBeDead(minute)) {
      for (const look of this.looks) this.note(look.kind, look.look(reading), minute);
    }
    return { ignored: false, believed: !this.isOpen("dead probe"), place: this.place };
  }

  /** It is now this minute, whether a reading came or not. */
  silence(nowMin: number): void {
    const finding = this.silenceLook.look(nowMin);
    if (finding !== null) this.begin("silence", finding, this.silenceLook.noticedMin());
  }

  /** True while a fault of this kind lasts. */
  isOpen(kind: FaultKind): boolean {
    return this.open.has(kind);
  }

  /** A silence is the same whether anybody asked while it lasted or not. */
  private breakSilence(minute: number): void {
    this.silence(minute);
    this.end("silence", minute);
  }

  private outOfRange(minute: number, tempC: number): void {
    if (this.outInARow++ === 0) this.outSinceMin = minute;
    if (this.outInARow < OUT_IN_A_ROW) return;
    const found = `a reading of ${Number.isFinite(tempC) ? `${tempC} °C` : "no number"}`;
    this.begin("dead probe", { sinceMin: this.outSinceMin, found, message: DEAD_PROBE_MESSAGE }, minute);
  }

  private note(kind: FaultKind, sign: Sign, minute: number): void {
    if (sign.is === "wrong" || sign.is === "was wrong") this.begin(kind, sign, minute);
    if (sign.is === "fine" || sign.is === "was wrong") this.end(kind, minute);
  }

  private begin(kind: FaultKind, { sinceMin, found, message }: Finding, noticedMin: number): void {
    if (this.open.has(kind)) return;
    this.open.set(kind, this.faults.length);
    this.faults.push({ kind, sinceMin, noticedMin, untilMin: null, found, message });
  }

  private end(kind: FaultKind, untilMin: number): void {
    const at = this.open.get(kind);
    if (at === undefined) return;
    this.open.delete(kind);
    this.faults[at] = { ...(this.faults[at] as Fault), untilMin };
  }

  private isOff(): boolean {
    return this.place?.likeliest.doing === "over";
  }

  private elements(): Elements {
    const place = this.place?.likeliest;
    if (place === undefined || place.doing === "over" || !(place.rising || place.doing === "hold")) return "none asked";
    const full = place.doing !== "hold" && (place.askedCPerHour === null || place.behindC > SURELY_C);
    return full ? "full power" : "as asked";
  }
}

import type { ParameterValues } from "../calibration/parameters.ts";
import type { ConeName } from "../cones/cone.ts";
import { parseCone } from "../cones/parse-cone.ts";
import type { Curve } from "../heat-work/curve.ts";
import { type HeatWork, heatWork } from "../heat-work/heat-work.ts";
import type { Programme } from "../programme/programme.ts";
import { ElementMode } from "./element-mode.ts";
import type { Fault } from "./fault.ts";
import { FaultWatch } from "./fault-watch.ts";
import { FollowedProgramme } from "./followed-programme.ts";
import type { WatchedKiln } from "./kiln-bank.ts";
import { LiveModel } from "./live-model.ts";
import { LiveSteps } from "./live-steps.ts";
import { LogCurve } from "./log-curve.ts";
import { type Outlook, outlookOf } from "./outlook.ts";
import type { ProgrammePlace } from "./programme-follower.ts";

export interface WatchOptions {
  /** When the programme began, on the readings' clock; the first reading where it is not given. */
  readonly startMin?: number;
  /** The cone to wait for; the programme's where it is not given. */
  readonly cone?: ConeName | null;
}

/** What one place in the kiln has got so far. */
export interface HeatSoFar {
  readonly ladder: number;
  readonly coneDown: ConeName | null;
  readonly next: ConeName | null;
  readonly towardNext: number;
  readonly equivalentC: number;
}

/** A firing as it stands. */
export interface WatchState {
  /** The last reading that counted, on the readings' clock; null before the first. */
  readonly minute: number | null;
  readonly tempC: number | null;
  /** What the programme asks for now, °C; null once it is over. */
  readonly wantedC: number | null;
  readonly place: ProgrammePlace | null;
  /** At the probe, by the readings: every cone's work and bend. Null before two readings. */
  readonly heatWork: HeatWork | null;
  /** On each level, by the kiln that fits the readings best. */
  readonly levels: readonly HeatSoFar[];
  /** In the order in which they were noticed. */
  readonly faults: readonly Fault[];
  /** Null before the first reading, and while the probe cannot be believed. */
  readonly outlook: Outlook | null;
  /** What the readings taught of this kiln. */
  readonly learned: { readonly values: ParameterValues; readonly sigmas: ParameterValues } | null;
}

/** A firing being watched. Wareboard watches and advises; it never switches a kiln. */
export interface FiringWatch {
  /**
   * One reading: minutes on any clock that all readings share, and °C; not a number where the probe gave none. Readings
   * that come late or twice change nothing here.
   */
  read(minute: number, tempC: number): void;
  /** It is now this minute and no reading came: how silence is noticed. */
  silence(nowMin: number): void;
  /** She switched the kiln off before the programme's end. */
  shutOff(minute: number): void;
  /** How the firing stands. Costs some tens of milliseconds after a step of the model (one to ten minutes), else little. */
  state(): WatchState;
}

/**
 * Watches a firing by its readings: where it is in its programme, heat work so far, faults, and how it will go on.
 * The same readings in the same order give the same state: after a restart they are read again.
 *
 * @throws BadInput where the programme names a cone that is none
 */
export function watchFiring(watched: WatchedKiln, programme: Programme, options: WatchOptions = {}): FiringWatch {
  const cone =
    options.cone !== undefined ? options.cone : programme.cone === undefined ? null : parseCone(programme.cone);
  const log = new LogCurve();
  const elements = new ElementMode();
  let followed: FollowedProgramme | null = null;
  let shutOffMin: number | null = null;
  let model: LiveModel | null = null;
  let steps: LiveSteps | null = null;
  let last: { minute: number; tempC: number } | null = null;
  let place: ProgrammePlace | null = null;
  /** Where the programme was, and what had been read, at the model's last step: an outlook is the same whenever it is asked. */
  let then: { place: ProgrammePlace; log: Curve } | null = null;
  let outlook: Outlook | null = null;
  let believed = false;

  const faults = new FaultWatch((minute, tempC) => {
    followed ??= new FollowedProgramme(programme.segments, options.startMin ?? minute, tempC, watched.kiln.roomC);
    if (shutOffMin !== null && minute >= shutOffMin) followed.end(shutOffMin);
    return followed.read(minute, tempC);
  });

  const live = (minute: number, tempC: number, at: ProgrammePlace): void => {
    log.add(minute, tempC);
    const mode = elements.read(at, tempC);
    if (model === null || steps === null) {
      model = new LiveModel(watched, minute, tempC);
      steps = new LiveSteps(minute, tempC);
      then = { place: at, log: log.curve() };
      return;
    }
    for (const step of steps.read(minute, tempC, mode)) {
      model.live(step);
      then = { place: at, log: log.curve() };
      outlook = null;
    }
  };

  return {
    read(minute, tempC) {
      const seen = faults.read(minute, tempC);
      if (seen.ignored) return;
      place = seen.place?.likeliest ?? null;
      believed = seen.believed;
      if (Number.isFinite(tempC)) last = { minute, tempC };
      if (seen.believed && place !== null) live(minute, tempC, place);
    },
    silence: (nowMin) => faults.silence(nowMin),
    shutOff(minute) {
      shutOffMin = minute;
    },
    state() {
      if (believed && model !== null && then !== null) {
        outlook ??= outlookOf(model, then.place, then.log, cone);
      }
      const curve = log.curve();
      return {
        minute: last?.minute ?? null,
        tempC: last?.tempC ?? null,
        wantedC: place?.wantedC ?? null,
        place,
        heatWork: curve.minutes.length < 2 ? null : heatWork(curve),
        levels: model === null ? [] : levelsSoFar(model),
        faults: [...faults.faults],
        outlook: believed ? outlook : null,
        learned: model?.learned() ?? null,
      };
    },
  };
}

/** What every level has got, by the kiln that fits best. */
function levelsSoFar(model: LiveModel): HeatSoFar[] {
  const { bank, estimate } = model.known();
  const [middle, ...others] = bank.kilns;
  if (middle === undefined || middle.minutes.length < 2) return [];
  const shares = others.map((_, i) => (estimate.away[i] as number) / (bank.apart[i] as number));
  return middle.levelC.map((levelC, level) => {
    const tempC = Float64Array.from(levelC, (celsius, at) =>
      others.reduce(
        (sum, kiln, i) => sum + (shares[i] as number) * ((kiln.levelC[level]?.[at] as number) - celsius),
        celsius,
      ),
    );
    const { ladder, coneDown, next, towardNext, equivalentC } = heatWork({
      minutes: Float64Array.from(middle.minutes),
      tempC,
    });
    return { ladder, coneDown, next, towardNext, equivalentC };
  });
}

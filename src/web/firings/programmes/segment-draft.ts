import { PROGRAMME_FORMAT, type Programme, readProgramme, type Segment } from "../../../firing/programme/programme.ts";
import { celsiusFromFahrenheit, fahrenheitFromCelsius, type TemperatureUnits } from "../../../measures/temperature.ts";

/** A segment as it is typed. An empty rate is as fast as the kiln goes; an empty target is not filled in yet. */
export interface SegmentDraft {
  /** Made once, so that a row keeps its fields while others come and go. */
  readonly key: number;
  readonly rateCPerHour: number | null;
  readonly targetC: number | null;
  readonly holdMin: number;
  readonly stage: Segment["stage"];
  readonly reason: string | undefined;
}

/** A programme as it is typed. */
export interface ProgrammeDraft {
  readonly name: string;
  readonly cone: string | undefined;
  readonly kind: Programme["kind"];
  readonly segments: readonly SegmentDraft[];
}

let keys = 0;
const nextKey = (): number => {
  keys += 1;
  return keys;
};

/** A programme to be edited. */
export const draftOfProgramme = ({ name, cone, kind, segments }: Programme): ProgrammeDraft => ({
  ...{ name, cone, kind },
  segments: segments.map(({ rateCPerHour, targetC, holdMin, stage, reason }) => ({
    ...{ rateCPerHour, targetC, holdMin, stage, reason },
    key: nextKey(),
  })),
});

/** Another segment at the end: a hundred degrees on, at the rate of the one before. */
export function withOneMore(draft: ProgrammeDraft): ProgrammeDraft {
  const last = draft.segments.at(-1);
  const added: SegmentDraft = {
    key: nextKey(),
    rateCPerHour: last?.rateCPerHour ?? 100,
    targetC: last?.targetC == null ? null : Math.min(1450, last.targetC + 100),
    holdMin: 0,
    stage: undefined,
    reason: undefined,
  };
  return { ...draft, segments: [...draft.segments, added] };
}

/** A segment changed by her hand. Its reason was that of the figures before; its stage stays. */
export function changedSegment(
  draft: ProgrammeDraft,
  at: number,
  change: Partial<Pick<SegmentDraft, "rateCPerHour" | "targetC" | "holdMin">>,
): ProgrammeDraft {
  return {
    ...draft,
    segments: draft.segments.map((each, i) => (i === at ? { ...each, ...change, reason: undefined } : each)),
  };
}

/** A segment one place further down or, with −1, up. */
export function movedSegment(draft: ProgrammeDraft, at: number, by: 1 | -1): ProgrammeDraft {
  const segments = [...draft.segments];
  const [one, other] = [segments[at], segments[at + by]];
  if (!one || !other) return draft;
  segments[at] = other;
  segments[at + by] = one;
  return { ...draft, segments };
}

/**
 * The programme a draft means.
 *
 * @throws BadInput naming the field: `segments[2].targetC`
 */
export function programmeOfDraft({ name, cone, kind, segments }: ProgrammeDraft): Programme {
  return readProgramme({
    ...{ format: PROGRAMME_FORMAT, name: name.trim() },
    segments: segments.map(({ rateCPerHour, targetC, holdMin, stage, reason }) => ({
      ...{ rateCPerHour, targetC, holdMin },
      ...(stage === undefined ? {} : { stage }),
      ...(reason === undefined ? {} : { reason }),
    })),
    ...(cone === undefined ? {} : { cone }),
    ...(kind === undefined ? {} : { kind }),
  });
}

/** Whole degrees as she reads them: a target, or a rate an hour. */
export const shownDegrees = (
  celsius: number | null,
  units: TemperatureUnits,
  what: "target" | "rate",
): number | null => {
  if (celsius === null) return null;
  if (units === "C") return Math.round(celsius * 10) / 10;
  return Math.round(what === "target" ? fahrenheitFromCelsius(celsius) : (celsius * 9) / 5);
};

/** °C of what she typed. */
export const typedDegrees = (
  degrees: number | null,
  units: TemperatureUnits,
  what: "target" | "rate",
): number | null => {
  if (degrees === null || units === "C") return degrees;
  return what === "target" ? celsiusFromFahrenheit(degrees) : (degrees * 5) / 9;
};

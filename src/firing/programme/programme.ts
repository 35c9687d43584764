import { type Static, Type } from "typebox";
import { BadInput } from "../../measures/bad-input.ts";
import { readBySchema } from "../../measures/read-schema.ts";
import { Name, OneOf } from "../../measures/schema.ts";

export const PROGRAMME_FORMAT = "programme/1";

/** The stages of a firing, in the words of the trade. */
const STAGES = [
  "drying",
  "boiling",
  "organics",
  "chemical water",
  "climb",
  "last hundred",
  "drop",
  "drop hold",
  "slow cool",
  "guarded quartz",
  "guarded cristobalite",
] as const;
export type Stage = (typeof STAGES)[number];
export const StageSchema = OneOf(STAGES, "What this segment is for, in a word.");

export const SegmentSchema = Type.Object(
  {
    rateCPerHour: Type.Union([Type.Number({ exclusiveMinimum: 0, maximum: 2000 }), Type.Null()], {
      description: "How fast towards the target, above 0 also when cooling; null is as fast as the kiln can.",
    }),
    targetC: Type.Number({ minimum: 0, maximum: 1450, description: "Where it goes; a falling target cools." }),
    holdMin: Type.Number({ minimum: 0, maximum: 6000, description: "How long it stays there." }),
    stage: Type.Optional(StageSchema),
    reason: Type.Optional(Type.String({ maxLength: 400, description: "Why it is as it is." })),
  },
  { additionalProperties: false },
);
export type Segment = Static<typeof SegmentSchema>;

/** The file `programme/1`: ramps and holds, in order. */
export const ProgrammeSchema = Type.Object(
  {
    format: Type.Literal(PROGRAMME_FORMAT),
    name: Name("What she calls it."),
    segments: Type.Array(SegmentSchema, { minItems: 1, maxItems: 100 }),
    cone: Type.Optional(Type.String({ maxLength: 12, description: "The cone it is meant to reach." })),
    kind: Type.Optional(
      Type.Union([Type.Literal("bisque"), Type.Literal("glaze"), Type.Literal("once-fired"), Type.Literal("lustre")]),
    ),
  },
  { additionalProperties: false, title: "Firing programme", description: "Ramps and holds for a kiln's controller." },
);
export type ProgrammeFile = Static<typeof ProgrammeSchema>;

export interface Programme {
  readonly format: typeof PROGRAMME_FORMAT;
  readonly name: string;
  readonly segments: readonly Segment[];
  readonly cone?: string | undefined;
  readonly kind?: "bisque" | "glaze" | "once-fired" | "lustre" | undefined;
}

/**
 * Checks a programme read from JSON. Whether it is a good one is the question of `checkProgramme`.
 *
 * @throws BadInput naming the field, what was found and what would do
 */
export function readProgramme(json: unknown): Programme {
  refuseNegativeRates(json);
  const file = readBySchema(ProgrammeSchema, json);
  file.segments.forEach((segment, i) => {
    const before = i === 0 ? null : (file.segments[i - 1] as Segment).targetC;
    if (before === segment.targetC && segment.holdMin === 0) {
      throw new BadInput({
        code: "does-nothing",
        path: `segments[${i}].targetC`,
        found: `${segment.targetC} °C, where the segment before ends, and no hold`,
        expected: "another target, a hold, or no such segment",
      });
    }
  });
  return file;
}

/** A rate below zero is a cooling written another way: worth its own sentence. */
function refuseNegativeRates(json: unknown): void {
  const segments = (json as { segments?: unknown } | null)?.segments;
  if (!Array.isArray(segments)) return;
  segments.forEach((segment: unknown, i) => {
    const rate = (segment as { rateCPerHour?: unknown } | null)?.rateCPerHour;
    if (typeof rate !== "number" || rate > 0) return;
    throw new BadInput({
      code: "out-of-range",
      path: `segments[${i}].rateCPerHour`,
      found: String(rate),
      expected: "a rate above 0 °C/h (a target below the one before cools), or null for as fast as the kiln can",
    });
  });
}

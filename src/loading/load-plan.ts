import { type Static, Type } from "typebox";
import { AngleDeg, Count, LengthMm, Name, PlaceMm } from "../measures/schema.ts";

export const LOAD_PLAN_FORMAT = "load-plan/1";

export const PlacedPostSchema = Type.Object(
  {
    xMm: PlaceMm("Its axis."),
    yMm: PlaceMm("Its axis."),
    turnDeg: AngleDeg("How a square post is turned."),
    heightsMm: Type.Array(LengthMm("One post of the stack."), {
      minItems: 1,
      maxItems: 2,
      description: "The posts stacked here, lowest first.",
    }),
  },
  { additionalProperties: false },
);
export type PlacedPost = Static<typeof PlacedPostSchema>;

export const PlacementSchema = Type.Object(
  {
    ware: Name("The kind of piece, as in the request."),
    xMm: PlaceMm("The piece's axis."),
    yMm: PlaceMm("The piece's axis."),
    turnDeg: AngleDeg("How the piece is turned."),
  },
  { additionalProperties: false },
);
export type Placement = Static<typeof PlacementSchema>;

export const LevelSchema = Type.Object(
  {
    shelf: Name("The kind of shelf, as in the request."),
    topMm: LengthMm("The face that ware stands on, above the floor."),
    xMm: PlaceMm("The shelf's middle."),
    yMm: PlaceMm("The shelf's middle."),
    turnDeg: AngleDeg("How the shelf is turned."),
    posts: Type.Array(PlacedPostSchema, {
      maxItems: 12,
      description: "The posts under this shelf; there should be three.",
    }),
    placements: Type.Array(PlacementSchema, { maxItems: 2000 }),
  },
  { additionalProperties: false },
);
export type Level = Static<typeof LevelSchema>;

export const LeftOutSchema = Type.Object(
  { ware: Name("The kind of piece."), count: Count("How many stay out."), reason: Type.String({ maxLength: 500 }) },
  { additionalProperties: false },
);
export type LeftOut = Static<typeof LeftOutSchema>;

/** The file `load-plan/1`: where everything goes, levels from the floor up. */
export const LoadPlanSchema = Type.Object(
  {
    format: Type.Literal(LOAD_PLAN_FORMAT),
    levels: Type.Array(LevelSchema, { maxItems: 50 }),
    left: Type.Array(LeftOutSchema, { maxItems: 2000 }),
    figures: Type.Optional(Type.Object({}, { description: "Whatever the tool that made the plan reports." })),
  },
  { additionalProperties: false, title: "Load plan", description: "Where everything goes." },
);
export type LoadPlanFile = Static<typeof LoadPlanSchema>;

/** What the planner reports about its plan. Other tools' plans may carry other figures. */
export interface PlanFigures {
  /** Sum of the placed pieces' values. */
  readonly value: number;
  readonly pieces: number;
  /** Waiting pieces, placed or not. */
  readonly waiting: number;
  /** For each level, the share of its shelf that ware stands on, seen from above. */
  readonly fillByLevel: readonly number[];
  /** No load of this request in this kiln can be worth more than this. */
  readonly valueBound: number;
  /** (bound − value) / bound. */
  readonly gapToBound: number;
  readonly seconds: number;
  readonly seed: number;
}

/** A plan: levels from the floor up, what stays out and why, and figures. */
export interface LoadPlan {
  readonly format: typeof LOAD_PLAN_FORMAT;
  readonly levels: readonly Level[];
  readonly left: readonly LeftOut[];
  readonly figures: Readonly<Record<string, unknown>>;
}

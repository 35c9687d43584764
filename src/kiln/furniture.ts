import { type Static, Type } from "typebox";
import { Count, LengthMm, Name } from "../measures/schema.ts";

const shelfFields = {
  name: Name("What she calls it."),
  thicknessMm: LengthMm("How thick it is."),
  count: Count("How many she has.", 0),
};

export const DiscShelf = Type.Object(
  { shape: Type.Literal("disc"), diameterMm: LengthMm("Across."), ...shelfFields },
  { additionalProperties: false },
);
export const HalfDiscShelf = Type.Object(
  { shape: Type.Literal("half-disc"), diameterMm: LengthMm("Along the straight side."), ...shelfFields },
  { additionalProperties: false, description: "Straight side through its own x axis, body toward +y." },
);
export const PolygonShelf = Type.Object(
  {
    shape: Type.Literal("polygon"),
    sides: Type.Integer({ minimum: 3, maximum: 24, description: "How many edges." }),
    acrossFlatsMm: LengthMm("Twice the distance from its middle to an edge."),
    ...shelfFields,
  },
  { additionalProperties: false, description: "A regular polygon; an edge's middle at angle 0." },
);
export const RectangleShelf = Type.Object(
  {
    shape: Type.Literal("rectangle"),
    widthMm: LengthMm("Along its own x axis."),
    lengthMm: LengthMm("Along its own y axis."),
    ...shelfFields,
  },
  { additionalProperties: false },
);

/** A kiln shelf: a flat slab, its plan shape about its own middle. */
export const ShelfSchema = Type.Union([DiscShelf, HalfDiscShelf, PolygonShelf, RectangleShelf]);
export type Shelf = Static<typeof ShelfSchema>;

/** A post: what stands between a shelf and the floor or shelf beneath. */
export const PostSchema = Type.Object(
  {
    heightMm: LengthMm("How tall it stands."),
    widthMm: LengthMm("Side of a square post, diameter of a round one."),
    shape: Type.Union([Type.Literal("square"), Type.Literal("round")]),
    count: Count("How many she has.", 0),
  },
  { additionalProperties: false },
);
export type Post = Static<typeof PostSchema>;

export const FurnitureSchema = Type.Object(
  {
    shelves: Type.Array(ShelfSchema, { minItems: 1, maxItems: 50 }),
    posts: Type.Array(PostSchema, { minItems: 1, maxItems: 100 }),
  },
  { additionalProperties: false },
);
export type Furniture = Static<typeof FurnitureSchema>;

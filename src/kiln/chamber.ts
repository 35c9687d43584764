import { type Static, Type } from "typebox";
import { LengthMm } from "../measures/schema.ts";

const depth = { depthMm: LengthMm("Floor to lid, inside.") };

export const PolygonChamber = Type.Object(
  {
    shape: Type.Literal("polygon"),
    sides: Type.Integer({ minimum: 3, maximum: 24, description: "How many flat walls." }),
    acrossFlatsMm: LengthMm("From one flat to the opposite one; twice the distance from the axis to a flat's middle."),
    ...depth,
  },
  { additionalProperties: false, description: "A regular polygon; a flat's middle at angle 0." },
);
export const RoundChamber = Type.Object(
  { shape: Type.Literal("round"), diameterMm: LengthMm("Across the inside."), ...depth },
  { additionalProperties: false },
);
export const RectangleChamber = Type.Object(
  {
    shape: Type.Literal("rectangle"),
    widthMm: LengthMm("Along x, inside."),
    lengthMm: LengthMm("Along y, inside."),
    ...depth,
  },
  { additionalProperties: false },
);

/** The inside of the kiln: a plan shape about the axis x = y = 0, and its depth. */
export const ChamberSchema = Type.Union([PolygonChamber, RoundChamber, RectangleChamber]);
export type Chamber = Static<typeof ChamberSchema>;

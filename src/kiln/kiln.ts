import { type Static, Type } from "typebox";
import { AngleDeg, ClearanceMm, LengthMm, Name } from "../measures/schema.ts";
import { type KilnBuild, KilnBuildSchema } from "./build.ts";
import { ChamberSchema } from "./chamber.ts";

/** A thermocouple or pyrometer tube that sticks in from the wall, toward the axis. */
export const ProbeSchema = Type.Object(
  {
    name: Name("What she calls it."),
    angleDeg: AngleDeg("Where on the wall, seen from the axis."),
    heightMm: ClearanceMm("Above the chamber floor."),
    reachMm: LengthMm("How far it sticks in from the wall."),
  },
  { additionalProperties: false },
);
export type Probe = Static<typeof ProbeSchema>;

/** A hole in the wall to look at the cones through. */
export const SpyholeSchema = Type.Object(
  {
    name: Name("What she calls it."),
    angleDeg: AngleDeg("Where on the wall, seen from the axis."),
    heightMm: ClearanceMm("Its middle, above the chamber floor."),
    diameterMm: LengthMm("Across the hole."),
    open: Type.Boolean({ description: "True where it is unplugged while firing." }),
  },
  { additionalProperties: false },
);
export type Spyhole = Static<typeof SpyholeSchema>;

export const KilnSchema = Type.Object(
  {
    name: Name("What she calls it."),
    chamber: ChamberSchema,
    probes: Type.Optional(Type.Array(ProbeSchema, { maxItems: 20 })),
    spyholes: Type.Optional(Type.Array(SpyholeSchema, { maxItems: 20 })),
    build: Type.Optional(KilnBuildSchema),
  },
  { additionalProperties: false },
);
export type KilnFile = Static<typeof KilnSchema>;

/** A kiln with nothing left out. */
export interface Kiln {
  readonly name: string;
  readonly chamber: KilnFile["chamber"];
  readonly probes: readonly Probe[];
  readonly spyholes: readonly Spyhole[];
  readonly build?: KilnBuild | undefined;
}

import { type Static, Type } from "typebox";
import { LengthMm } from "../measures/schema.ts";

/** What a kiln is built of and heated by: for predicting a firing. All of it may be left out; a usual small kiln is assumed. */
export const KilnBuildSchema = Type.Object(
  {
    wall: Type.Optional(
      Type.Array(
        Type.Object(
          {
            material: Type.Union([Type.Literal("brick 23"), Type.Literal("brick 26"), Type.Literal("fibre")], {
              description: "Insulating fire brick by its class, or ceramic fibre.",
            }),
            thicknessMm: LengthMm("How thick this layer is."),
          },
          { additionalProperties: false },
        ),
        { minItems: 1, maxItems: 5, description: "The wall's layers from the inside out." },
      ),
    ),
    powerW: Type.Optional(
      Type.Number({
        exclusiveMinimum: 0,
        maximum: 200000,
        description: "What the elements give when new, at their rated volts.",
      }),
    ),
    ratedVolts: Type.Optional(
      Type.Number({ exclusiveMinimum: 0, maximum: 1000, description: "Volts on the rating plate." }),
    ),
    suppliedVolts: Type.Optional(
      Type.Number({
        exclusiveMinimum: 0,
        maximum: 1000,
        description: "Volts measured while it fires; as rated where left out.",
      }),
    ),
    wornShare: Type.Optional(
      Type.Number({
        minimum: 0,
        maximum: 0.9,
        description: "How much the elements' resistance has risen, as a share of when new.",
      }),
    ),
    bandShares: Type.Optional(
      Type.Array(Type.Number({ minimum: 0, maximum: 1000 }), {
        minItems: 1,
        maxItems: 12,
        description: "How the power is shared by equal bands of height, from the floor up; even where left out.",
      }),
    ),
    leakWattsPerK: Type.Optional(
      Type.Number({
        minimum: 0,
        maximum: 50,
        description: "Heat lost through vent and cracks for each degree above the room.",
      }),
    ),
    wallFactor: Type.Optional(
      Type.Number({
        exclusiveMinimum: 0,
        maximum: 10,
        description: "The wall's conductivity against new brick: what calibration learns.",
      }),
    ),
  },
  { additionalProperties: false },
);
export type KilnBuild = Static<typeof KilnBuildSchema>;

import { type Static, Type } from "typebox";
import { AngleDeg, Count, LengthMm, Name } from "../measures/schema.ts";
import { type FormName, FormSchema } from "./forms.ts";

/** A handle or spout: seen from above, a stadium from the piece's axis out past its side, over the piece's full height. */
export const ProtrusionSchema = Type.Object(
  {
    reachMm: LengthMm("How far its far end stands beyond the piece's half diameter."),
    widthMm: LengthMm("How wide it is; its far end is rounded."),
    angleDeg: AngleDeg("Where it points on the unturned piece."),
  },
  { additionalProperties: false },
);
export type Protrusion = Static<typeof ProtrusionSchema>;

/** A clay disc the piece stands on, to catch a glaze that runs. It lifts the piece by its thickness. */
export const CookieSchema = Type.Object(
  { diameterMm: LengthMm("Across."), thicknessMm: LengthMm("How thick.") },
  { additionalProperties: false },
);
export type Cookie = Static<typeof CookieSchema>;

/** One kind of waiting piece and how many there are. */
export const WareSchema = Type.Object(
  {
    name: Name("What she calls it; no two kinds share a name."),
    count: Count("How many wait."),
    diameterMm: LengthMm("Across its widest place, handle and spout left out."),
    heightMm: LengthMm("Foot to top, cookie left out."),
    handle: Type.Optional(Type.Union([ProtrusionSchema, Type.Null()])),
    spout: Type.Optional(Type.Union([ProtrusionSchema, Type.Null()])),
    profile: Type.Optional(
      Type.Union([
        Type.Array(Type.Tuple([Type.Number({ minimum: 0 }), Type.Number({ minimum: 0 })]), {
          minItems: 2,
          maxItems: 200,
          description: "[height, radius] pairs in millimetres from the foot (height 0) up to the rim.",
        }),
        Type.Null(),
      ]),
    ),
    cookie: Type.Optional(Type.Union([CookieSchema, Type.Null()])),
    value: Type.Optional(
      Type.Number({ minimum: 0, maximum: 1e6, description: "What firing one is worth; 1 where left out." }),
    ),
    mustFire: Type.Optional(Type.Boolean({ description: "True where every one of them has to go in." })),
    form: Type.Optional(FormSchema),
    glaze: Type.Optional(Type.String({ maxLength: 120 })),
    cone: Type.Optional(Type.String({ maxLength: 12 })),
    massKg: Type.Optional(
      Type.Number({
        exclusiveMinimum: 0,
        maximum: 200,
        description: "One piece's mass; estimated from its size where left out.",
      }),
    ),
  },
  { additionalProperties: false },
);
export type WareFile = Static<typeof WareSchema>;

/** A kind of waiting piece with nothing left out. */
export interface Ware {
  readonly name: string;
  readonly count: number;
  readonly diameterMm: number;
  readonly heightMm: number;
  readonly handle: Protrusion | null;
  readonly spout: Protrusion | null;
  readonly profile: readonly (readonly [number, number])[] | null;
  readonly cookie: Cookie | null;
  readonly value: number;
  readonly mustFire: boolean;
  readonly form: FormName | null;
  readonly glaze: string | null;
  readonly cone: string | null;
  readonly massKg: number | null;
}

import { type Static, Type } from "typebox";
import type { Furniture } from "../kiln/furniture.ts";
import { FurnitureSchema } from "../kiln/furniture.ts";
import { type Kiln, KilnSchema } from "../kiln/kiln.ts";
import { type Ware, WareSchema } from "../ware/ware.ts";
import { type ClearanceRules, RulesSchema } from "./clearance-rules.ts";

export const LOAD_REQUEST_FORMAT = "load-request/1";

/** The file `load-request/1`: what there is, and what should go in. */
export const LoadRequestSchema = Type.Object(
  {
    format: Type.Literal(LOAD_REQUEST_FORMAT),
    kiln: KilnSchema,
    furniture: FurnitureSchema,
    ware: Type.Array(WareSchema, { maxItems: 2000 }),
    rules: Type.Optional(RulesSchema),
  },
  { additionalProperties: false, title: "Load request", description: "What there is, and what should go in." },
);
export type LoadRequestFile = Static<typeof LoadRequestSchema>;

/** A load request with nothing left out. */
export interface LoadRequest {
  readonly kiln: Kiln;
  readonly furniture: Furniture;
  readonly ware: readonly Ware[];
  readonly rules: ClearanceRules;
}

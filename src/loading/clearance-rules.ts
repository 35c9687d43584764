import { type Static, Type } from "typebox";
import { ClearanceMm } from "../measures/schema.ts";

/** The clearances she may set for herself. */
export const RulesSchema = Type.Object(
  {
    floorAirMm: Type.Optional(ClearanceMm("Floor to the underside of the lowest shelf.")),
    gapMm: Type.Optional(ClearanceMm("Ware to ware, to posts and to the chamber wall.")),
    headroomMm: Type.Optional(ClearanceMm("Top of ware to the shelf above it.")),
    lidMm: Type.Optional(ClearanceMm("Top of ware to the lid.")),
    probeMm: Type.Optional(ClearanceMm("Ware, shelf or post to a probe's whole length.")),
    spyholeMm: Type.Optional(ClearanceMm("Ware to the mouth of an open spyhole.")),
    shelfWallMm: Type.Optional(ClearanceMm("Shelf to wall.")),
    postAlignMm: Type.Optional(ClearanceMm("How far a post may stand off the axis of the post beneath it.")),
  },
  { additionalProperties: false },
);
export type ClearanceRules = Readonly<Required<Static<typeof RulesSchema>>>;

/** The defaults for glaze ware. All common practice, no source; each rule's own file gives its reason. */
export const GLAZE_WARE_RULES: ClearanceRules = {
  floorAirMm: 25,
  gapMm: 6,
  headroomMm: 6,
  lidMm: 25,
  probeMm: 50,
  spyholeMm: 50,
  shelfWallMm: 6,
  postAlignMm: 3,
};

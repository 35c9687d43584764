import type { ClearanceRules } from "../../loading/clearance-rules.ts";

/** A clearance as the kiln's page speaks of it: what it is, and what it is for, in one sentence. */
export interface RuleWords {
  readonly rule: keyof ClearanceRules;
  readonly label: string;
  readonly words: string;
}

// The reasons are the rules' own (src/loading/rules), shortened. Common practice, no source.
export const RULE_WORDS: readonly RuleWords[] = [
  {
    rule: "gapMm",
    label: "Between pieces",
    words:
      "Also from a piece to posts and to the wall: glaze swells as it melts and pots lean, and closer they may fuse.",
  },
  {
    rule: "headroomMm",
    label: "Over ware, under a shelf",
    words: "Shelves sag, and a rim that touches lifts or sticks.",
  },
  {
    rule: "lidMm",
    label: "Over ware, under the lid",
    words: "The lid sheds grit, and close under it a pot fires unevenly.",
  },
  { rule: "floorAirMm", label: "Under the lowest shelf", words: "Heat has to go round beneath it." },
  { rule: "shelfWallMm", label: "Shelf to wall", words: "Hot air has to pass, and a shelf against brick chips it." },
  {
    rule: "probeMm",
    label: "Round the probe",
    words: "With something close beside it the probe reads that thing and not the kiln.",
  },
  {
    rule: "spyholeMm",
    label: "Round an open spyhole",
    words: "Cold air comes in there: a pot close to it may crack, and it hides the cones.",
  },
  {
    rule: "postAlignMm",
    label: "Post above post, off by at most",
    words: "A post that stands between the posts beneath bends the shelf under it.",
  },
];

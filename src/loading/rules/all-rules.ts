import { balance } from "./balance.ts";
import { chamberDepth } from "./chamber-depth.ts";
import { floorAir } from "./floor-air.ts";
import { gap } from "./gap.ts";
import { headroom } from "./headroom.ts";
import { lid } from "./lid.ts";
import { overlap } from "./overlap.ts";
import { postAlign } from "./post-align.ts";
import { postFooting } from "./post-footing.ts";
import { postHead } from "./post-head.ts";
import { postHeights } from "./post-heights.ts";
import { probe } from "./probe.ts";
import type { PieceRule, Rule } from "./rule.ts";
import { shelfEdge } from "./shelf-edge.ts";
import { shelfWall } from "./shelf-wall.ts";
import { spyhole } from "./spyhole.ts";
import { stock } from "./stock.ts";
import { threePosts } from "./three-posts.ts";

/** The rules about single pieces and what is near them. */
export const PIECE_RULES: readonly PieceRule[] = [shelfEdge, gap, headroom, lid, probe, spyhole];

/** Every rule of loading, in the order a person would look: furniture from the floor up, then ware, then the counts. */
export const ALL_RULES: readonly Rule[] = [
  threePosts,
  postHeights,
  postFooting,
  postHead,
  postAlign,
  floorAir,
  shelfWall,
  chamberDepth,
  overlap,
  balance,
  ...PIECE_RULES,
  stock,
];

import type { Chamber } from "../../../kiln/chamber.ts";
import { type Frame, frameOf } from "../../kilns/drawing/frame.ts";

/** Of the kiln's own drawings the wall is half the point; here it only takes room from the level. */
const WALL_SHARE = 0.45;

/** How a level and the kiln from the side are framed: as the kiln's own drawings are, with a thinner wall. */
export function levelFrame(chamber: Chamber): Frame {
  const frame = frameOf(chamber);
  return { ...frame, wall: frame.wall * WALL_SHARE, letter: frame.letter * 0.92 };
}

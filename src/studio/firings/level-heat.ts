import { type ConeName, ladderOf } from "../../firing/cones/cone.ts";
import { bendDeg } from "../../firing/heat-work/bend.ts";
import { degreesBeyond, equivalentC } from "../../firing/heat-work/ladder-position.ts";
import { whereReached } from "../../firing/heat-work/questions.ts";
import type { SeenCone } from "../records/firing-parts.ts";
import type { FiringRecord } from "../records/firing-record.ts";

// A cone bent less than this may have had no heat work at all; bent more than that, any amount (as in calibration).
const UPRIGHT_DEG = 12;
const FLAT_DEG = 88;

/** What one witness cone says of its place. */
export interface ConeSays {
  /** The temperature at which a steady 60 °C/h does the same work, °C. */
  readonly heatC: number;
  /** A cone that still stands has had at most so much, one that lies flat at least. */
  readonly bound: "about" | "at most" | "at least";
}

/** The heat work a cone has had, from how far it bent. */
export function coneSays({ cone, bendDeg: degrees }: Pick<SeenCone, "cone" | "bendDeg">): ConeSays {
  const bend = Math.min(FLAT_DEG, Math.max(UPRIGHT_DEG, degrees));
  const work = whereReached(bendDeg, bend, 0, 1, 1e-7) ?? 1;
  const heatC = equivalentC(ladderOf(cone)) + degreesBeyond(cone, work);
  return { heatC, bound: degrees < UPRIGHT_DEG ? "at most" : degrees > FLAT_DEG ? "at least" : "about" };
}

/** What a level got. */
export interface LevelHeat {
  readonly level: number;
  /** As the temperature at which a steady 60 °C/h does the same work, °C. */
  readonly heatC: number;
  /** Over the cone that was wanted, °C; null where none was. */
  readonly overC: number | null;
  /** Seen by its witness cones, or only foretold. */
  readonly from: "cones" | "foretold";
  readonly bound: ConeSays["bound"];
}

/** The heat work of each level that anything is known of: by its cones where there are, else as it was foretold. */
export function levelHeats({ cones = [], foretold }: Pick<FiringRecord, "cones" | "foretold">): LevelHeat[] {
  const wanted = wantedHeatC(foretold?.cone ?? null);
  const levels = new Set([...cones.map(({ level }) => level), ...(foretold?.levels ?? []).map(({ level }) => level)]);
  return [...levels]
    .sort((a, b) => a - b)
    .map((level): LevelHeat => {
      const seen = seenAt(cones.filter((each) => each.level === level));
      const told = foretold?.levels.find((each) => each.level === level);
      const { heatC, bound } = seen ?? { heatC: equivalentC(told?.ladder ?? 0), bound: "about" as const };
      return { level, heatC, overC: wanted === null ? null : heatC - wanted, from: seen ? "cones" : "foretold", bound };
    });
}

/** Of several cones on one shelf those that bent part of the way say most; else the nearest bound. */
function seenAt(cones: readonly SeenCone[]): ConeSays | null {
  const said = cones.map(coneSays);
  const about = said.filter(({ bound }) => bound === "about");
  if (about.length > 0) {
    return { heatC: about.reduce((sum, { heatC }) => sum + heatC, 0) / about.length, bound: "about" };
  }
  const flat = said.filter(({ bound }) => bound === "at least").map(({ heatC }) => heatC);
  const upright = said.filter(({ bound }) => bound === "at most").map(({ heatC }) => heatC);
  const [least, most] = [Math.max(...flat), Math.min(...upright)];
  if (flat.length > 0 && upright.length > 0) return { heatC: (least + most) / 2, bound: "about" };
  if (flat.length > 0) return { heatC: least, bound: "at least" };
  return upright.length > 0 ? { heatC: most, bound: "at most" } : null;
}

/** The heat work of a cone that has just gone down, °C at 60 °C/h. */
export const wantedHeatC = (cone: ConeName | null): number | null =>
  cone === null ? null : equivalentC(ladderOf(cone));

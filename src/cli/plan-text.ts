import type { LoadPlan } from "../loading/load-plan.ts";
import type { LoadRequest } from "../loading/load-request.ts";
import { formatLength, type LengthUnits } from "../measures/length.ts";

/** A plan as a potter reads it in a terminal: levels from the top of the kiln down, then what stays out. */
export function planText(request: LoadRequest, plan: LoadPlan, units: LengthUnits): string[] {
  const length = (mm: number): string => formatLength(mm, units);
  const placed = plan.levels.reduce((sum, level) => sum + level.placements.length, 0);
  const waiting = request.ware.reduce((sum, ware) => sum + ware.count, 0);
  const lines = [
    `A load for ${request.kiln.name}: ${placed} of ${waiting} pieces on ${counted(plan.levels.length, "level")}.`,
    "",
  ];
  for (const [index, level] of [...plan.levels.entries()].reverse()) {
    const posts = level.posts.map((post) => post.heightsMm.map(length).join(" + "));
    lines.push(
      `  Level ${index + 1}   ${level.shelf}, its face ${length(level.topMm)} above the floor, on posts of ${unlike(posts)}`,
      ...countsByName(level.placements.map((each) => each.ware)).map(([name, count]) => `      ${count} × ${name}`),
    );
  }
  if (plan.left.length > 0) {
    lines.push("", "  Stays out");
    for (const left of plan.left) lines.push(`      ${left.count} × ${left.ware}: ${left.reason}`);
  }
  return [...lines, ...figureLines(plan)];
}

function figureLines(plan: LoadPlan): string[] {
  const { value, valueBound, gapToBound, seconds } = plan.figures;
  const parts: string[] = [];
  if (typeof value === "number") parts.push(`worth ${rounded(value)}`);
  if (typeof valueBound === "number" && typeof gapToBound === "number") {
    parts.push(
      `no load of these pieces can be worth more than ${rounded(valueBound)} (${rounded(gapToBound * 100)} % above)`,
    );
  }
  if (typeof seconds === "number") parts.push(`found in ${rounded(seconds)} s`);
  return parts.length ? ["", `  ${parts.join(" · ")}`] : [];
}

const rounded = (value: number): string => String(Math.round(value * 10) / 10);
const counted = (count: number, thing: string): string => `${count} ${thing}${count === 1 ? "" : "s"}`;

/** `100 mm` for three alike, `100 mm, 100 mm and 50 mm + 50 mm` otherwise. */
function unlike(posts: readonly string[]): string {
  if (posts.length === 0) return "none";
  const kinds = new Set(posts);
  return kinds.size === 1 ? `${[...kinds][0]}` : `${posts.slice(0, -1).join(", ")} and ${posts.at(-1)}`;
}

function countsByName(names: readonly string[]): [string, number][] {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts];
}

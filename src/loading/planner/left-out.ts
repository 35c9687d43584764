import { formatLength } from "../../measures/length.ts";
import type { LeftOut } from "../load-plan.ts";
import type { LoadSnapshot } from "./load-search.ts";
import { acrossMm, tallestPossibleMm, widestShelfMm } from "./reach.ts";
import type { LoadTask } from "./task.ts";

const mm = (length: number): string => formatLength(Math.ceil(length), "metric");

/** What stays out, and why: too wide, too tall, no posts, no level that tall in this load, or no room. */
export function whyLeftOut(task: LoadTask, load: LoadSnapshot | null, placed: readonly number[]): LeftOut[] {
  const left: LeftOut[] = [];
  task.request.ware.forEach((ware, kind) => {
    const count = ware.count - (placed[kind] as number);
    if (count > 0) left.push({ ware: ware.name, count, reason: whyOne(task, load, kind, placed[kind] as number) });
  });
  return left;
}

function whyOne(task: LoadTask, load: LoadSnapshot | null, kind: number, placed: number): string {
  const piece = task.kinds[kind] as LoadTask["kinds"][number];
  const across = acrossMm(piece);
  const widest = widestShelfMm(task);
  if (across > widest) {
    return `wider than any shelf: it needs ${mm(across)} and the widest shelf gives ${mm(widest)}`;
  }
  const tallest = tallestPossibleMm(task, task.heights);
  if (piece.heightMm > tallest.anyPostsMm) {
    return `too tall by ${mm(piece.heightMm - tallest.anyPostsMm)} with the lid clearance, even standing on the lowest shelf alone`;
  }
  if (piece.heightMm > tallest.withStockMm) {
    return `too tall by ${mm(piece.heightMm - tallest.withStockMm)}: no posts low enough to give it a taller level`;
  }
  if (!load) return "nothing was loaded";
  const clear = Math.max(...load.structure.levels.map((level) => level.clearMm));
  if (piece.heightMm > clear) {
    return `no level tall enough in this load: it needs ${mm(piece.heightMm)} and the tallest gives ${mm(Math.floor(clear))}; a load with that level is worth less`;
  }
  const suits = load.structure.levels.filter((level) => level.clearMm >= piece.heightMm).length;
  const levels = suits === 1 ? "the one level tall enough is" : `the ${suits} levels tall enough are`;
  const spent = spentPosts(task, load);
  const note =
    spent.length > 0 && load.structure.levels.length < shelfCount(task)
      ? `; no ${spent.join(" or ")} posts left for another shelf`
      : "";
  return `no room: ${levels} full with what is worth more${placed > 0 ? " or was set down first" : ""}${note}`;
}

const shelfCount = (task: LoadTask): number => task.seats.reduce((sum, seat) => sum + seat.shelf.count, 0);

/** Heights of posts of which fewer than three are left. */
function spentPosts(task: LoadTask, load: LoadSnapshot): string[] {
  const left = task.posts.map((post) => post.count);
  for (const stacks of load.structure.stacks) {
    for (const stack of stacks) for (const part of stack.parts) left[part] = (left[part] as number) - 1;
  }
  return task.posts.filter((post, i) => (left[i] as number) < 3 && post.count >= 3).map((post) => mm(post.heightMm));
}

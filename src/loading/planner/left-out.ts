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
  if (load && !load.frame.shifted) return whyNotAmong(task, load, kind);
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
  const { stands, furniture } = load.frame;
  const clear = Math.max(...stands.map((stand) => stand.clearMm));
  if (piece.heightMm > clear) return `${noneTallEnough(piece.heightMm, clear)}; a load with that level is worth less`;
  const suits = stands.filter((stand) => stand.clearMm >= piece.heightMm).length;
  const levels = suits === 1 ? "the one level tall enough is" : `the ${suits} levels tall enough are`;
  const spent = spentPosts(task, load);
  const note =
    spent.length > 0 && furniture.length < shelfCount(task)
      ? `; no ${spent.join(" or ")} posts left for another shelf`
      : "";
  return `no room: ${levels} full with what is worth more${placed > 0 ? " or was set down first" : ""}${note}`;
}

/** The same where shelves and posts stay as they were given. */
function whyNotAmong(task: LoadTask, load: LoadSnapshot, kind: number): string {
  const { heightMm } = task.kinds[kind] as LoadTask["kinds"][number];
  const clear = Math.max(0, ...load.frame.stands.map((stand) => stand.clearMm));
  if (heightMm > clear) return noneTallEnough(heightMm, clear);
  return "no room: the levels tall enough are full with what stays where it is or is worth more";
}

const noneTallEnough = (heightMm: number, clearMm: number): string =>
  `no level tall enough in this load: it needs ${mm(heightMm)} and the tallest gives ${mm(Math.floor(clearMm))}`;

const shelfCount = (task: LoadTask): number => task.seats.reduce((sum, seat) => sum + seat.shelf.count, 0);

/** Heights of posts of which fewer than three are left. */
function spentPosts(task: LoadTask, load: LoadSnapshot): string[] {
  const left = task.posts.map((post) => post.count);
  for (const heightMm of load.frame.furniture.flatMap(({ posts }) => posts.flatMap((post) => post.heightsMm))) {
    const part = task.posts.findIndex((post) => post.heightMm === heightMm);
    left[part] = (left[part] as number) - 1;
  }
  return task.posts.filter((post, i) => (left[i] as number) < 3 && post.count >= 3).map((post) => mm(post.heightMm));
}

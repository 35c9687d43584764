import type { Post } from "../../kiln/furniture.ts";

/** Posts of one height, whatever rows of the stock they come from; the widest of them is reckoned with. */
export interface PostKind {
  readonly heightMm: number;
  readonly widthMm: number;
  readonly round: boolean;
  readonly count: number;
}

/** One way to reach a height in one column: one post, or two stacked, as indexes into the stock. */
export interface PostStack {
  readonly totalMm: number;
  /** Indexes into the post kinds, lowest post first. */
  readonly parts: readonly number[];
}

/** Heights that can be built, each with its ways, single posts first. */
export interface StackHeight {
  readonly totalMm: number;
  readonly ways: readonly PostStack[];
}

const SAME_HEIGHT_MM = 1e-6;

/** The stock by height. Where two rows share a height, a plan names only the height: the widest footprint is kept. */
export function postKinds(posts: readonly Post[]): PostKind[] {
  const kinds: PostKind[] = [];
  for (const post of [...posts].sort((a, b) => a.heightMm - b.heightMm)) {
    if (post.count === 0) continue;
    const last = kinds.at(-1);
    const round = post.shape === "round";
    if (last && Math.abs(last.heightMm - post.heightMm) < SAME_HEIGHT_MM) {
      // A square as wide as the widest covers round and square alike.
      kinds[kinds.length - 1] = {
        heightMm: last.heightMm,
        widthMm: Math.max(last.widthMm, post.widthMm),
        round: last.round && round,
        count: last.count + post.count,
      };
    } else kinds.push({ heightMm: post.heightMm, widthMm: post.widthMm, round, count: post.count });
  }
  return kinds;
}

/** Every height that one post or two stacked posts reach, lowest first. */
export function stackHeights(kinds: readonly PostKind[]): StackHeight[] {
  const stacks: PostStack[] = kinds.map((kind, index) => ({ totalMm: kind.heightMm, parts: [index] }));
  kinds.forEach((low, i) => {
    kinds.forEach((high, j) => {
      // The wider post goes beneath, and of two alike the taller.
      const beneath = low.widthMm > high.widthMm || (low.widthMm === high.widthMm && i >= j);
      if (!beneath || (i === j && low.count < 2)) return;
      stacks.push({ totalMm: low.heightMm + high.heightMm, parts: [i, j] });
    });
  });
  stacks.sort((a, b) => a.totalMm - b.totalMm || a.parts.length - b.parts.length);
  const heights: { totalMm: number; ways: PostStack[] }[] = [];
  for (const stack of stacks) {
    const last = heights.at(-1);
    if (last && Math.abs(last.totalMm - stack.totalMm) < SAME_HEIGHT_MM) last.ways.push(stack);
    else heights.push({ totalMm: stack.totalMm, ways: [stack] });
  }
  return heights;
}

/**
 * Picks three stacks of each asked height from the stock, or says that it cannot: a small search over the levels.
 *
 * @param stock how many of each kind are left; restored where it fails, drawn down where it succeeds
 * @param heights the heights wanted, one a level
 * @returns for each level its three stacks, or null
 */
export function drawPosts(stock: Int32Array, heights: readonly StackHeight[], level = 0): PostStack[][] | null {
  const height = heights[level];
  if (!height) return [];
  for (const triple of triples(height.ways)) {
    let taken = 0;
    for (; taken < 3 && take(stock, triple[taken] as PostStack); taken++);
    if (taken === 3) {
      const rest = drawPosts(stock, heights, level + 1);
      if (rest) return [triple, ...rest];
    }
    while (taken > 0) giveBack(stock, triple[--taken] as PostStack);
  }
  return null;
}

function* triples(ways: readonly PostStack[]): Generator<PostStack[]> {
  // Few ways are ever useful: the plainest dozen reach what any mix reaches.
  const few = ways.slice(0, 6);
  for (let a = 0; a < few.length; a++) {
    for (let b = a; b < few.length; b++) {
      for (let c = b; c < few.length; c++) yield [few[a] as PostStack, few[b] as PostStack, few[c] as PostStack];
    }
  }
}

function take(stock: Int32Array, stack: PostStack): boolean {
  for (let p = 0; p < stack.parts.length; p++) {
    const part = stack.parts[p] as number;
    if ((stock[part] as number) > 0) stock[part] = (stock[part] as number) - 1;
    else {
      for (let back = 0; back < p; back++) {
        const given = stack.parts[back] as number;
        stock[given] = (stock[given] as number) + 1;
      }
      return false;
    }
  }
  return true;
}

function giveBack(stock: Int32Array, stack: PostStack): void {
  for (const part of stack.parts) stock[part] = (stock[part] as number) + 1;
}

import type { Broken, Place } from "../checker/broken.ts";
import { sameHeight } from "../checker/posts-in-place.ts";
import type { Scene } from "../checker/scene.ts";
import type { Rule } from "./rule.ts";

/**
 * No more shelves, posts and pieces than there are, and every waiting piece accounted for: placed or left. Posts are
 * counted by height: a plan names them by height alone, so kinds of one height are one heap.
 */
export const stock: Rule = {
  name: "stock",
  reason: "She can only load what she has.",
  setting: null,
  defaultMm: null,
  find: (scene) => [...shelvesUsed(scene), ...postsUsed(scene), ...piecesUsed(scene)],
};

function shelvesUsed({ request, shelves }: Scene): Broken[] {
  return request.furniture.shelves.flatMap((kind) => {
    const used = shelves.filter((shelf) => shelf.kind === kind);
    if (used.length <= kind.count) return [];
    const message = `The plan uses ${used.length} of the shelf "${kind.name}"; there ${are(kind.count)}.`;
    return [short(`shelf "${kind.name}"`, message, placesOf(used))];
  });
}

function postsUsed({ request, plan, posts }: Scene): Broken[] {
  const heights = plan.levels.flatMap((level) => level.posts.flatMap((post) => post.heightsMm));
  const unlike = heights.filter((height, i) => heights.findIndex((other) => sameHeight(other, height)) === i);
  return unlike
    .toSorted((a, b) => a - b)
    .flatMap((height) => {
      const used = heights.filter((other) => sameHeight(other, height)).length;
      const has = request.furniture.posts
        .filter((kind) => sameHeight(kind.heightMm, height))
        .reduce((sum, kind) => sum + kind.count, 0);
      if (used <= has) return [];
      const holding = posts.filter(({ heightsMm }) => heightsMm.some((other) => sameHeight(other, height)));
      const message = `The plan uses ${used} post${used === 1 ? "" : "s"} of ${height} mm; there ${are(has)}.`;
      return [short(`${height} mm posts`, message, placesOf(holding))];
    });
}

function piecesUsed({ request, plan, pieces }: Scene): Broken[] {
  return request.ware.flatMap((ware) => {
    const placed = pieces.filter((piece) => piece.ware === ware);
    const left = plan.left.filter((each) => each.ware === ware.name).reduce((sum, each) => sum + each.count, 0);
    if (placed.length + left === ware.count) return [];
    const message =
      placed.length > ware.count
        ? `The plan places ${placed.length} of "${ware.name}"; there ${are(ware.count)}.`
        : `The plan places ${placed.length} of "${ware.name}" and leaves ${left} out, together ${placed.length + left}; there ${are(ware.count)}.`;
    return [short(ware.name, message, placesOf(placed))];
  });
}

const placesOf = (things: readonly { place: Place }[]): Place[] => things.map((thing) => thing.place);
const are = (count: number): string => (count === 0 ? "are none" : count === 1 ? "is 1" : `are ${count}`);

function short(thing: string, message: string, places: readonly Place[]): Broken {
  return { rule: "stock", level: null, things: [thing], foundMm: null, allowedMm: null, message, places };
}

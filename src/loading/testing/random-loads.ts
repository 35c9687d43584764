import fc from "fast-check";
import type { LoadPlan, PlacedPost, Placement } from "../load-plan.ts";
import type { LoadRequest } from "../load-request.ts";
import { readLoadRequest } from "../read-load-request.ts";
import { between } from "./random-solids.ts";

/** An invented eight-sided kiln with a probe and a spyhole, and ware of every shape the format has. */
export const EIGHT_SIDED: LoadRequest = readLoadRequest({
  format: "load-request/1",
  kiln: {
    name: "eight sides",
    chamber: { shape: "polygon", sides: 8, acrossFlatsMm: 430, depthMm: 460 },
    probes: [{ name: "thermocouple", angleDeg: 70, heightMm: 190, reachMm: 40 }],
    spyholes: [
      { name: "lower", angleDeg: 310, heightMm: 90, diameterMm: 20, open: true },
      { name: "upper", angleDeg: 320, heightMm: 300, diameterMm: 24, open: true },
    ],
  },
  furniture: {
    shelves: [
      { name: "full", shape: "disc", diameterMm: 390, thicknessMm: 16, count: 3 },
      { name: "half", shape: "half-disc", diameterMm: 390, thicknessMm: 16, count: 2 },
      { name: "octagon", shape: "polygon", sides: 8, acrossFlatsMm: 380, thicknessMm: 16, count: 1 },
    ],
    posts: [
      { heightMm: 25, widthMm: 35, shape: "square", count: 9 },
      { heightMm: 75, widthMm: 30, shape: "round", count: 3 },
      { heightMm: 100, widthMm: 35, shape: "square", count: 6 },
    ],
  },
  ware: [
    { name: "beaker", count: 8, diameterMm: 78, heightMm: 105 },
    { name: "mug", count: 8, diameterMm: 86, heightMm: 96, handle: { reachMm: 34, widthMm: 18, angleDeg: 0 } },
    {
      name: "jug",
      count: 4,
      diameterMm: 96,
      heightMm: 118,
      handle: { reachMm: 34, widthMm: 18, angleDeg: 0 },
      spout: { reachMm: 12, widthMm: 26, angleDeg: 180 },
    },
    {
      name: "bowl",
      count: 8,
      diameterMm: 128,
      heightMm: 66,
      profile: [
        [0, 28],
        [6, 30],
        [22, 47],
        [45, 60],
        [66, 64],
      ],
    },
    {
      name: "vase",
      count: 4,
      diameterMm: 98,
      heightMm: 172,
      profile: [
        [0, 36],
        [60, 49],
        [103, 44],
        [124, 20],
        [172, 18],
      ],
      cookie: { diameterMm: 84, thicknessMm: 6 },
    },
  ],
});

const round = (radius: number, heightsMm: number[]): fc.Arbitrary<PlacedPost[]> =>
  fc.tuple(between(0, 120), between(-4, 4)).map(([start, off]) =>
    [0, 120, 240].map((step): PlacedPost => {
      const angle = ((start + step) * Math.PI) / 180;
      return {
        xMm: radius * Math.cos(angle) + off,
        yMm: radius * Math.sin(angle),
        turnDeg: start + step,
        heightsMm,
      };
    }),
  );

const anyPlacement: fc.Arbitrary<Placement> = fc.record({
  ware: fc.constantFrom(...EIGHT_SIDED.ware.map((ware) => ware.name)),
  xMm: between(-160, 160),
  yMm: between(-160, 160),
  turnDeg: between(0, 360),
});
const somePlacements = fc.array(anyPlacement, { maxLength: 8 });

/** Loads of that kiln strewn by chance: full shelves, an octagon, half shelves; nearly all of them break many rules. */
export const anyPlan: fc.Arbitrary<LoadPlan> = fc
  .tuple(
    fc.tuple(fc.constantFrom("full", "octagon", "half"), round(140, [25]), somePlacements),
    fc.tuple(fc.constantFrom("full", "half"), round(140, [100]), somePlacements),
    fc.tuple(fc.constantFrom("full", "half"), round(140, [75, 25]), somePlacements),
    between(-10, 10),
  )
  .map(([low, middle, high, off]) => ({
    format: "load-plan/1",
    levels: [low, middle, high].map(([shelf, posts, placements], i) => ({
      shelf,
      topMm: 41 + 116 * i,
      xMm: i === 1 ? off : 0,
      yMm: 0,
      turnDeg: 37 * i,
      posts,
      placements,
    })),
    left: [],
    figures: {},
  }));

import type { Furniture, Post, Shelf } from "./furniture.ts";
import type { KilnFile, Probe, Spyhole } from "./kiln.ts";
import type { ReadyMadeKiln } from "./ready-made.ts";

// Sizes in which small electric studio kilns are usually made, rounded to ten millimetres: nobody's own kiln, only a
// place to start measuring from. Common practice, no source; so are the furniture, the probes and the spyholes.

/** A kit of square posts: so many of each height, enough to build a few levels. */
const posts = (widthMm: number, ...kit: readonly (readonly [heightMm: number, count: number])[]): Post[] =>
  kit.map(([heightMm, count]) => ({ heightMm, widthMm, shape: "square", count }));

const disc = (name: string, diameterMm: number, thicknessMm: number, count: number): Shelf => ({
  name,
  shape: "disc",
  diameterMm,
  thicknessMm,
  count,
});
const halfDisc = (diameterMm: number, thicknessMm: number, count: number): Shelf => ({
  name: "half shelf",
  shape: "half-disc",
  diameterMm,
  thicknessMm,
  count,
});
const polygon = (sides: number, acrossFlatsMm: number, thicknessMm: number, count: number): Shelf => ({
  name: "full shelf",
  shape: "polygon",
  sides,
  acrossFlatsMm,
  thicknessMm,
  count,
});
const slab = (widthMm: number, lengthMm: number, thicknessMm: number, count: number): Shelf => ({
  name: "full shelf",
  shape: "rectangle",
  widthMm,
  lengthMm,
  thicknessMm,
  count,
});

const probe = (angleDeg: number, heightMm: number): Probe => ({ name: "probe", angleDeg, heightMm, reachMm: 25 });
const twoSpyholes = (angleDeg: number, lowMm: number, highMm: number): Spyhole[] => [
  { name: "lower spyhole", angleDeg, heightMm: lowMm, diameterMm: 20, open: false },
  { name: "upper spyhole", angleDeg, heightMm: highMm, diameterMm: 20, open: false },
];

const ready = (
  id: string,
  words: string,
  kiln: Omit<KilnFile, "name">,
  shelves: Shelf[],
  kit: Furniture["posts"],
): ReadyMadeKiln => ({ id, words, kiln: { name: words, ...kiln }, furniture: { shelves, posts: kit } });

/** Generic kilns, the smallest first. */
export const READY_MADE_KILNS: readonly ReadyMadeKiln[] = [
  ready(
    "square-test",
    "Square test kiln",
    {
      chamber: { shape: "rectangle", widthMm: 220, lengthMm: 220, depthMm: 210 },
      probes: [probe(90, 150)],
      spyholes: twoSpyholes(270, 70, 150),
    },
    [slab(190, 190, 12, 2)],
    posts(25, [25, 6], [50, 6], [75, 6]),
  ),
  ready(
    "round-test",
    "Round test kiln",
    {
      chamber: { shape: "round", diameterMm: 280, depthMm: 320 },
      probes: [probe(0, 220)],
      spyholes: twoSpyholes(270, 90, 230),
    },
    [disc("full shelf", 250, 12, 3)],
    posts(25, [25, 6], [50, 6], [75, 6], [100, 6]),
  ),
  ready(
    "six-sided",
    "Six-sided",
    {
      chamber: { shape: "polygon", sides: 6, acrossFlatsMm: 330, depthMm: 340 },
      probes: [probe(0, 240)],
      spyholes: twoSpyholes(300, 90, 240),
    },
    [polygon(6, 300, 12, 3), halfDisc(300, 12, 2)],
    posts(30, [25, 6], [50, 6], [75, 6], [100, 6], [150, 3]),
  ),
  ready(
    "eight-sided",
    "Eight-sided",
    {
      chamber: { shape: "polygon", sides: 8, acrossFlatsMm: 390, depthMm: 450 },
      probes: [probe(0, 310)],
      spyholes: twoSpyholes(270, 110, 330),
    },
    [disc("full shelf", 355, 15, 4), halfDisc(355, 15, 2)],
    posts(35, [25, 6], [50, 6], [75, 6], [100, 6], [125, 6], [150, 3]),
  ),
  ready(
    "square-front",
    "Square front-loader",
    {
      chamber: { shape: "rectangle", widthMm: 450, lengthMm: 450, depthMm: 500 },
      probes: [probe(90, 340)],
      spyholes: twoSpyholes(270, 120, 370),
    },
    [slab(410, 400, 18, 4), { ...slab(200, 400, 18, 4), name: "half shelf" }],
    posts(35, [25, 9], [50, 6], [75, 6], [100, 9], [150, 6], [200, 3]),
  ),
  ready(
    "ten-sided-shallow",
    "Ten-sided, shallow",
    {
      chamber: { shape: "polygon", sides: 10, acrossFlatsMm: 590, depthMm: 460 },
      probes: [probe(0, 310)],
      spyholes: twoSpyholes(288, 110, 340),
    },
    [disc("full shelf", 540, 18, 3), halfDisc(540, 18, 4)],
    posts(38, [25, 9], [50, 6], [75, 9], [100, 9], [125, 6], [150, 6]),
  ),
  ready(
    "ten-sided",
    "Ten-sided",
    {
      chamber: { shape: "polygon", sides: 10, acrossFlatsMm: 590, depthMm: 690 },
      probes: [probe(0, 460)],
      spyholes: twoSpyholes(288, 160, 520),
    },
    [disc("full shelf", 540, 18, 4), halfDisc(540, 18, 6)],
    posts(38, [25, 9], [50, 9], [75, 9], [100, 9], [125, 9], [150, 9], [200, 6]),
  ),
  ready(
    "twelve-sided",
    "Twelve-sided",
    {
      chamber: { shape: "polygon", sides: 12, acrossFlatsMm: 710, depthMm: 690 },
      probes: [probe(0, 460)],
      spyholes: twoSpyholes(270, 160, 520),
    },
    [disc("full shelf", 660, 20, 3), halfDisc(660, 20, 8)],
    posts(38, [25, 12], [50, 9], [75, 12], [100, 12], [125, 9], [150, 12], [200, 6]),
  ),
];

/** The ready-made kiln of an id, or null where there is none. */
export const readyMadeKiln = (id: string): ReadyMadeKiln | null =>
  READY_MADE_KILNS.find((each) => each.id === id) ?? null;

import type { LoadRequest } from "../src/loading/load-request.ts";
import { readLoadRequest } from "../src/loading/read-load-request.ts";
import { type Chance, seededChance } from "../src/measures/seeded-chance.ts";

/** A form on the waiting shelf: how often it turns up, and between which sizes. Invented; common practice, no source. */
interface Form {
  readonly name: string;
  readonly share: number;
  readonly diameterMm: readonly [number, number];
  readonly heightMm: readonly [number, number];
  readonly handle?: boolean;
  readonly spout?: boolean;
  /** What one is worth beside what its size makes it worth. */
  readonly care: number;
}

const FORMS: readonly Form[] = [
  { name: "espresso cup", share: 16, diameterMm: [66, 74], heightMm: [60, 68], handle: true, care: 1 },
  { name: "mug", share: 20, diameterMm: [80, 92], heightMm: [90, 105], handle: true, care: 1.1 },
  { name: "tumbler", share: 12, diameterMm: [70, 84], heightMm: [105, 135], care: 0.9 },
  { name: "small bowl", share: 12, diameterMm: [110, 135], heightMm: [50, 68], care: 0.9 },
  { name: "serving bowl", share: 7, diameterMm: [180, 235], heightMm: [80, 110], care: 1 },
  { name: "plate", share: 10, diameterMm: [180, 255], heightMm: [22, 32], care: 0.9 },
  { name: "platter", share: 2, diameterMm: [290, 310], heightMm: [35, 45], care: 1 },
  { name: "vase", share: 7, diameterMm: [95, 140], heightMm: [160, 260], care: 1.1 },
  { name: "jar", share: 6, diameterMm: [105, 140], heightMm: [110, 160], care: 1.1 },
  { name: "lid", share: 4, diameterMm: [100, 130], heightMm: [30, 45], care: 0.8 },
  { name: "jug", share: 4, diameterMm: [100, 120], heightMm: [150, 210], handle: true, spout: true, care: 1.2 },
];

/**
 * A potter's waiting shelf before a glaze firing, and her eight-sided kiln: 430 mm across flats, 460 mm deep, four 390 mm
 * disc shelves, six square posts of each height, a probe at mid height and an open spyhole. Already at 40 pieces not
 * everything goes in. Pieces of one form come in batches of a size; value goes roughly with size. All invented.
 *
 * @param seed any whole number; the same seed gives the same shelf
 * @param pieces how many wait
 */
export const benchmarkRequest = (seed: number, pieces: number): LoadRequest =>
  readLoadRequest(benchmarkFile(seed, pieces));

/** The same, as it is written in a file. */
export function benchmarkFile(seed: number, pieces: number) {
  const chance = seededChance(seed * 7919 + pieces);
  return {
    format: "load-request/1",
    kiln: {
      name: "benchmark kiln",
      chamber: { shape: "polygon", sides: 8, acrossFlatsMm: 430, depthMm: 460 },
      probes: [{ name: "thermocouple", angleDeg: 60, heightMm: 230, reachMm: 25 }],
      spyholes: [{ name: "top", angleDeg: 330, heightMm: 400, diameterMm: 20, open: true }],
    },
    furniture: {
      shelves: [{ name: "full", shape: "disc", diameterMm: 390, thicknessMm: 16, count: 4 }],
      posts: [25, 50, 75, 100, 125, 150].map((heightMm) => ({ heightMm, widthMm: 35, shape: "square", count: 6 })),
    },
    ware: waiting(chance, pieces),
  };
}

function waiting(chance: Chance, pieces: number): object[] {
  const kinds: object[] = [];
  const batches = new Map<string, number>();
  for (let left = pieces; left > 0; ) {
    const form = someForm(chance);
    const batch = (batches.get(form.name) ?? 0) + 1;
    batches.set(form.name, batch);
    const count = Math.min(left, 1 + chance.below(form.diameterMm[1] > 150 ? 2 : 5));
    const diameterMm = between(chance, form.diameterMm);
    const heightMm = between(chance, form.heightMm);
    kinds.push({
      name: `${form.name}, batch ${batch}`,
      count,
      diameterMm,
      heightMm,
      ...(form.handle ? { handle: { reachMm: Math.round(24 + heightMm * 0.1), widthMm: 16, angleDeg: 0 } } : {}),
      ...(form.spout ? { spout: { reachMm: 12, widthMm: 24, angleDeg: 180 } } : {}),
      value: worth(form, diameterMm, heightMm, chance),
    });
    left -= count;
  }
  return kinds;
}

function someForm(chance: Chance): Form {
  let left = chance.next() * FORMS.reduce((sum, form) => sum + form.share, 0);
  for (const form of FORMS) {
    if (left < form.share) return form;
    left -= form.share;
  }
  return FORMS[0] as Form;
}

/** Roughly what a piece sells for: with the clay's surface, give or take a quarter. Whole numbers, as on a price tag. */
function worth(form: Form, diameterMm: number, heightMm: number, chance: Chance): number {
  const surfaceDm2 = (Math.PI * diameterMm * (diameterMm / 4 + heightMm)) / 10_000;
  return Math.max(1, Math.round(4 + form.care * 5 * surfaceDm2 * (0.75 + 0.5 * chance.next())));
}

const between = (chance: Chance, [from, to]: readonly [number, number]): number => from + chance.below(to - from + 1);

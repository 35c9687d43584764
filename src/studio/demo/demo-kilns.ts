import type { Post } from "../../kiln/furniture.ts";
import type { NewKiln } from "../commands/kiln-commands.ts";

// An invented potter's two kilns, of sizes usual in small studios: about 57 and about 15 litres.

const posts = (
  shape: Post["shape"],
  widthMm: number,
  kit: readonly (readonly [heightMm: number, count: number])[],
): Post[] => kit.map(([heightMm, count]) => ({ heightMm, widthMm, shape, count }));

/** Each kiln by the word the rest of the demo knows it by. */
export const DEMO_KILNS: Readonly<Record<"big" | "small", Omit<NewKiln, "id">>> = {
  big: {
    kiln: {
      name: "the eight-sided one",
      chamber: { shape: "polygon", sides: 8, acrossFlatsMm: 400, depthMm: 430 },
      probes: [{ name: "thermocouple", angleDeg: 45, heightMm: 235, reachMm: 25 }],
      spyholes: [
        { name: "lower spyhole", angleDeg: 270, heightMm: 105, diameterMm: 20, open: false },
        { name: "upper spyhole", angleDeg: 270, heightMm: 320, diameterMm: 20, open: true },
      ],
      build: { powerW: 5200, wall: [{ material: "brick 23", thicknessMm: 64 }] },
    },
    furniture: {
      shelves: [
        { name: "full shelf", shape: "disc", diameterMm: 360, thicknessMm: 14, count: 4 },
        { name: "half shelf", shape: "half-disc", diameterMm: 360, thicknessMm: 14, count: 4 },
      ],
      posts: posts("square", 32, [
        [25, 9],
        [50, 9],
        [75, 9],
        [100, 9],
        [125, 6],
        [150, 6],
        [200, 3],
      ]),
    },
    rules: {},
  },
  small: {
    kiln: {
      name: "the test kiln",
      chamber: { shape: "round", diameterMm: 270, depthMm: 260 },
      probes: [{ name: "thermocouple", angleDeg: 90, heightMm: 205, reachMm: 20 }],
      spyholes: [{ name: "spyhole", angleDeg: 300, heightMm: 130, diameterMm: 18, open: false }],
    },
    furniture: {
      shelves: [{ name: "round shelf", shape: "disc", diameterMm: 240, thicknessMm: 12, count: 3 }],
      posts: posts("round", 25, [
        [25, 6],
        [50, 6],
        [75, 6],
        [100, 3],
      ]),
    },
    rules: { probeMm: 25, floorAirMm: 20 },
  },
};

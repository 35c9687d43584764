import type { LoadPlan } from "../../loading/load-plan.ts";
import type { LoadRequest } from "../../loading/load-request.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";

/** An invented kiln and a plan set by hand: two levels, cookie, handle, spout, profile, stacked posts, names that need escaping. */
export function handMadeLoad(): { request: LoadRequest; plan: LoadPlan } {
  const request = readLoadRequest({
    format: "load-request/1",
    kiln: {
      name: "shed <kiln> & co",
      chamber: { shape: "polygon", sides: 8, acrossFlatsMm: 430, depthMm: 460 },
      probes: [{ name: "thermocouple", angleDeg: 60, heightMm: 120, reachMm: 25 }],
      spyholes: [
        { name: "upper spyhole", angleDeg: 330, heightMm: 300, diameterMm: 20, open: true },
        { name: "lower spyhole", angleDeg: 330, heightMm: 90, diameterMm: 20, open: false },
      ],
    },
    furniture: {
      shelves: [{ name: "full shelf", shape: "disc", diameterMm: 390, thicknessMm: 16, count: 4 }],
      posts: [
        { heightMm: 25, widthMm: 35, shape: "square", count: 6 },
        { heightMm: 50, widthMm: 30, shape: "round", count: 6 },
        { heightMm: 100, widthMm: 35, shape: "square", count: 6 },
      ],
    },
    ware: [
      {
        name: "mug",
        count: 3,
        diameterMm: 86,
        heightMm: 96,
        handle: { reachMm: 34, widthMm: 18, angleDeg: 0 },
        glaze: "oatmeal",
        cone: "6",
      },
      {
        name: "bowl “wide”",
        count: 2,
        diameterMm: 160,
        heightMm: 70,
        profile: [
          [0, 40],
          [70, 80],
        ],
      },
      {
        name: "jug",
        count: 1,
        diameterMm: 96,
        heightMm: 118,
        handle: { reachMm: 34, widthMm: 18, angleDeg: 0 },
        spout: { reachMm: 12, widthMm: 26, angleDeg: 180 },
        cookie: { diameterMm: 104, thicknessMm: 6 },
      },
      { name: "Łódź żółty", count: 1, diameterMm: 60, heightMm: 50 },
      { name: "umbrella jar", count: 1, diameterMm: 190, heightMm: 440 },
    ],
  });
  const ring = (heightsMm: number[]) =>
    [20, 140, 260].map((deg) => ({
      xMm: 170 * Math.cos((deg * Math.PI) / 180),
      yMm: 170 * Math.sin((deg * Math.PI) / 180),
      turnDeg: deg,
      heightsMm,
    }));
  const plan: LoadPlan = {
    format: "load-plan/1",
    levels: [
      {
        shelf: "full shelf",
        topMm: 41,
        xMm: 0,
        yMm: 0,
        turnDeg: 0,
        posts: ring([25]),
        placements: [
          { ware: "mug", xMm: -60, yMm: -90, turnDeg: 90 },
          { ware: "bowl “wide”", xMm: 0, yMm: 90, turnDeg: 0 },
          { ware: "mug", xMm: 100, yMm: -30, turnDeg: 180 },
        ],
      },
      {
        shelf: "full shelf",
        topMm: 207,
        xMm: 0,
        yMm: 0,
        turnDeg: 0,
        posts: ring([100, 50]),
        placements: [
          { ware: "jug", xMm: 0, yMm: 0, turnDeg: 30 },
          { ware: "Łódź żółty", xMm: 120, yMm: 0, turnDeg: 0 },
          { ware: "bowl “wide”", xMm: -100, yMm: -40, turnDeg: 0 },
          { ware: "mug", xMm: 40, yMm: -120, turnDeg: 270 },
        ],
      },
    ],
    left: [{ ware: "umbrella jar", count: 1, reason: "too tall by 46 mm with the lid clearance" }],
    figures: {},
  };
  return { request, plan };
}

/** A plan of many small pieces on one shelf, and a kiln of another shape. */
export function crowdedLoad(
  count: number,
  spacingMm: number,
  diameterMm: number,
): { request: LoadRequest; plan: LoadPlan } {
  const request = readLoadRequest({
    format: "load-request/1",
    kiln: {
      name: "long kiln",
      chamber: { shape: "rectangle", widthMm: 600, lengthMm: 450, depthMm: 300 },
      probes: [{ name: "thermocouple", angleDeg: 0, heightMm: 60, reachMm: 60 }],
    },
    furniture: {
      shelves: [{ name: "slab", shape: "rectangle", widthMm: 560, lengthMm: 410, thicknessMm: 20, count: 1 }],
      posts: [{ heightMm: 25, widthMm: 30, shape: "round", count: 3 }],
    },
    ware: [{ name: "bead", count, diameterMm, heightMm: 20 }],
  });
  const columns = Math.floor(540 / spacingMm);
  const placements = Array.from({ length: count }, (_, i) => ({
    ware: "bead",
    xMm: -270 + spacingMm * ((i % columns) + 0.5),
    yMm: 195 - spacingMm * (Math.floor(i / columns) + 0.5),
    turnDeg: 0,
  }));
  const posts = [
    [-250, 180],
    [250, 180],
    [0, -180],
  ].map(([xMm, yMm]) => ({ xMm: xMm as number, yMm: yMm as number, turnDeg: 0, heightsMm: [25] }));
  const level = { shelf: "slab", topMm: 45, xMm: 0, yMm: 0, turnDeg: 0, posts, placements };
  return { request, plan: { format: "load-plan/1", levels: [level], left: [], figures: {} } };
}

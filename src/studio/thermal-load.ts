import type { ThermalKiln, ThermalLevel, ThermalLoad } from "../firing/thermal/kiln-network.ts";
import type { Chamber } from "../kiln/chamber.ts";
import { chamberFloorMm2 } from "../kiln/chamber-volume.ts";
import { chamberRegion, edgeDistanceMm, regionCorners, shelfRegion } from "../kiln/convex-region.ts";
import type { Post, Shelf } from "../kiln/furniture.ts";
import { shelfMassKg } from "../kiln/shelf-mass.ts";
import type { LoadPlan } from "../loading/load-plan.ts";
import type { LoadRequest } from "../loading/load-request.ts";
import { pieceMassKg } from "../ware/mass.ts";
import type { Ware } from "../ware/ware.ts";

const M = 1e-3;
const M2 = 1e-6;
/** A thrown wall, where nothing is known of the ware. Common practice, no source. */
const WARE_WALL_M = 6 * M;

// A usual small kiln of 50–60 litres: 4.5–6 kW behind 64–76 mm of brick. Common practice, no source (small kiln ratings).
const USUAL = { litres: 57, powerW: 5500, wallMm: 64, leakWattsPerK: 0.5 } as const;

/** The kiln as a heater, and what was taken for granted about it. */
export interface AssumedKiln {
  readonly kiln: ThermalKiln;
  readonly assumed: readonly string[];
}

/** Turns a kiln's description into what the thermal model needs; what it does not say is assumed, and said. */
export function thermalKiln(request: LoadRequest, roomC = 20): AssumedKiln {
  const { chamber, build = {} } = request.kiln;
  const floorAreaM2 = chamberFloorMm2(chamber) * M2;
  const litres = floorAreaM2 * chamber.depthMm;
  const assumed: string[] = [];
  const usualPowerW = Math.round((USUAL.powerW * (litres / USUAL.litres) ** (2 / 3)) / 100) * 100;
  if (build.powerW === undefined) {
    assumed.push(
      `Elements of ${usualPowerW / 1000} kW, usual for ${Math.round(litres)} litres; give kiln.build.powerW to be sure.`,
    );
  }
  if (build.wall === undefined) {
    assumed.push(`Walls of ${USUAL.wallMm} mm insulating brick, class 23; give kiln.build.wall to be sure.`);
  }
  if (build.bandShares === undefined) assumed.push("Elements spread evenly from the floor to the lid.");
  const wall = build.wall ?? [{ material: "brick 23" as const, thicknessMm: USUAL.wallMm }];
  const volts =
    build.suppliedVolts !== undefined && build.ratedVolts !== undefined ? build.suppliedVolts / build.ratedVolts : 1;
  return {
    kiln: {
      floorAreaM2,
      wallRoundM: roundMm(chamber) * M,
      depthM: chamber.depthMm * M,
      wall: wall.map((layer) => ({ material: layer.material, thicknessM: layer.thicknessMm * M })),
      // Power goes with the square of the volts, and falls as the resistance rises.
      powerW: ((build.powerW ?? usualPowerW) * volts ** 2) / (1 + (build.wornShare ?? 0)),
      leakWattsPerK: build.leakWattsPerK ?? USUAL.leakWattsPerK * (litres / USUAL.litres) ** (2 / 3),
      bandShares: build.bandShares ?? [1],
      wallFactor: build.wallFactor ?? 1,
      roomC,
    },
    assumed,
  };
}

/**
 * A planned load as the heat sees it: each level's ware, shelf, posts, and how much of the chamber is left open past the
 * shelf. The one place where loading and firing meet.
 *
 * @param green true for a bisque or once-fired load, whose clay still holds its water
 */
export function thermalLoad(request: LoadRequest, plan: LoadPlan, green: boolean): ThermalLoad {
  const wares = new Map(request.ware.map((ware) => [ware.name, ware]));
  const chamberM2 = chamberFloorMm2(request.kiln.chamber) * M2;
  const levels = [...plan.levels]
    .sort((a, b) => a.topMm - b.topMm)
    .map((level): ThermalLevel => {
      const shelf = request.furniture.shelves.find((each) => each.name === level.shelf) as Shelf;
      const shelfAreaM2 = shelfAreaMm2(shelf) * M2;
      const wareKg = level.placements.reduce((sum, each) => sum + pieceMassKg(wares.get(each.ware) as Ware), 0);
      return {
        shelfTopM: level.topMm * M,
        shelfThicknessM: shelf.thicknessMm * M,
        shelfAreaM2,
        openAreaM2: Math.max(0.002, chamberM2 - shelfAreaM2),
        wareKg,
        wareThicknessM: WARE_WALL_M,
        postsKg: level.posts.reduce((sum, post) => sum + postsKg(request, post.heightsMm), 0),
      };
    });
  return { levels, green, massFactor: 1 };
}

function postsKg(request: LoadRequest, heightsMm: readonly number[]): number {
  return heightsMm.reduce((sum, heightMm) => {
    const post = request.furniture.posts.find((each) => Math.abs(each.heightMm - heightMm) < 1e-6) as Post | undefined;
    if (!post) return sum;
    const foot = post.shape === "round" ? (Math.PI * post.widthMm ** 2) / 4 : post.widthMm ** 2;
    return sum + shelfMassKg(foot, heightMm);
  }, 0);
}

function roundMm(chamber: Chamber): number {
  if (chamber.shape === "round") return Math.PI * chamber.diameterMm;
  if (chamber.shape === "rectangle") return 2 * (chamber.widthMm + chamber.lengthMm);
  const corners = regionCorners(chamberRegion(chamber));
  const side = 2 * edgeDistanceMm(chamberRegion(chamber), 0) * Math.tan(Math.PI / chamber.sides);
  return corners.length * side;
}

function shelfAreaMm2(shelf: Shelf): number {
  if (shelf.shape === "disc") return (Math.PI * shelf.diameterMm ** 2) / 4;
  if (shelf.shape === "half-disc") return (Math.PI * shelf.diameterMm ** 2) / 8;
  if (shelf.shape === "rectangle") return shelf.widthMm * shelf.lengthMm;
  const side = edgeDistanceMm(shelfRegion(shelf), 0) * Math.tan(Math.PI / shelf.sides);
  return shelf.sides * side * (shelf.acrossFlatsMm / 2);
}

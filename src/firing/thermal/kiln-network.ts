import {
  BRICK_23,
  BRICK_26,
  CORDIERITE,
  DRY_WARE_WATER,
  EMISSIVITY,
  FIBRE,
  greenware,
  STONEWARE,
} from "../materials/materials.ts";
import type { Column, Layer, Network, Zone } from "./network.ts";

/** What is known of a kiln as a heater. */
export interface ThermalKiln {
  /** Inside, mm: area of the floor, length round the wall, depth. */
  readonly floorAreaM2: number;
  readonly wallRoundM: number;
  readonly depthM: number;
  /** From the inside out. */
  readonly wall: readonly { readonly material: "brick 23" | "brick 26" | "fibre"; readonly thicknessM: number }[];
  readonly powerW: number;
  /** Watts lost for each degree the chamber is above the room, through vent and cracks. */
  readonly leakWattsPerK: number;
  /** Shares of the power from the floor up, in as many even bands as there are shares. */
  readonly bandShares: readonly number[];
  /** Multiplies the wall's conductivity: what calibration learns. */
  readonly wallFactor: number;
  readonly roomC: number;
}

/** What stands on one level, as the heat sees it. */
export interface ThermalLevel {
  readonly shelfTopM: number;
  readonly shelfThicknessM: number;
  /** Area of the shelf, and of the chamber's cross-section left open past it. */
  readonly shelfAreaM2: number;
  readonly openAreaM2: number;
  readonly wareKg: number;
  readonly wareThicknessM: number;
  readonly postsKg: number;
}

export interface ThermalLoad {
  readonly levels: readonly ThermalLevel[];
  readonly green: boolean;
  /** Free water of greenware as a share of its weight. */
  readonly waterShare?: number;
  /** Multiplies the ware's mass: what calibration learns. */
  readonly massFactor: number;
}

const MATERIALS = { "brick 23": BRICK_23, "brick 26": BRICK_26, fibre: FIBRE } as const;
// Fifteen nodes across a brick wall are within 0.1 K of many (a prototype's study of this same scheme).
const WALL_CELLS = 14;
// Still air on a warm upright or level face, W/m²K. From memory; Incropera gives 2–25 for free convection in gases.
const OUTER_FILM = 7;
// Ware shades itself: of all its surface, inside and out, about this share sees the walls. Common practice, no source.
const SEEN_SHARE = 0.6;

/** Where each level's ware is among the columns, and its zone. */
export interface KilnNetwork {
  readonly network: Network;
  /** For each level of the load: the column of its ware, or of its shelf where it holds none. */
  readonly levelColumns: readonly number[];
  readonly levelZones: readonly number[];
  /** The zone at a height above the floor, in metres. */
  readonly zoneAt: (heightM: number) => number;
}

/** The kiln and its load as columns and zones: one zone under the lowest shelf and one on each level. */
export function kilnNetwork(kiln: ThermalKiln, load: ThermalLoad): KilnNetwork {
  const tops = load.levels.map((level) => level.shelfTopM);
  const edges = [
    0,
    ...load.levels.map((level, i) => Math.max(0.005, (tops[i] as number) - level.shelfThicknessM / 2)),
    kiln.depthM,
  ];
  const zones: Zone[] = [];
  const columns: Column[] = [];
  const wallLayers = layersOf(kiln);
  const thickness = kiln.wall.reduce((sum, layer) => sum + layer.thicknessM, 0);
  // Heat spreads as it leaves a small kiln: a flat wall of the middle's area carries what the round one does.
  const roundM = kiln.wallRoundM * (1 + (thickness * Math.PI) / kiln.wallRoundM);
  const endArea = kiln.floorAreaM2 * (1 + (thickness * kiln.wallRoundM) / (2 * kiln.floorAreaM2));
  for (let z = 0; z + 1 < edges.length; z++) {
    const low = edges[z] as number;
    const high = edges[z + 1] as number;
    zones.push({
      name: z === 0 ? "under the lowest shelf" : `level ${z}`,
      openAboveM2: z < load.levels.length ? (load.levels[z] as ThermalLevel).openAreaM2 : 0,
      leakWattsPerK: (kiln.leakWattsPerK * (high - low)) / kiln.depthM,
      powerShare: bandShare(kiln.bandShares, low / kiln.depthM, high / kiln.depthM),
    });
    columns.push(outward(`wall of zone ${z}`, roundM * (high - low), wallLayers, z, kiln.roomC));
  }
  columns.push(outward("floor", endArea, wallLayers, 0, kiln.roomC));
  columns.push(outward("lid", endArea, wallLayers, zones.length - 1, kiln.roomC));
  const levelColumns: number[] = [];
  load.levels.forEach((level, i) => {
    const shelf = columns.push({
      name: `shelf ${i + 1}`,
      areaM2: level.shelfAreaM2,
      layers: [{ material: CORDIERITE, thicknessM: level.shelfThicknessM, cells: 3 }],
      first: { kind: "zone", zone: i, emissivity: EMISSIVITY.shelf },
      second: { kind: "zone", zone: i + 1, emissivity: EMISSIVITY.shelf },
    });
    if (level.postsKg > 0) {
      columns.push(slab(`posts under level ${i + 1}`, level.postsKg, 0.035, CORDIERITE, i, EMISSIVITY.shelf, 1));
    }
    if (level.wareKg <= 0) {
      levelColumns.push(shelf - 1);
      return;
    }
    const clay = load.green ? greenware(load.waterShare ?? DRY_WARE_WATER) : STONEWARE;
    const kg = level.wareKg * load.massFactor;
    levelColumns.push(
      columns.push(slab(`ware of level ${i + 1}`, kg, level.wareThicknessM, clay, i + 1, EMISSIVITY.ware, SEEN_SHARE)) -
        1,
    );
  });
  return {
    network: { columns, zones, roomC: kiln.roomC },
    levelColumns,
    levelZones: load.levels.map((_, i) => i + 1),
    zoneAt: (heightM) => {
      let zone = 0;
      while (zone + 2 < edges.length && heightM >= (edges[zone + 1] as number)) zone++;
      return zone;
    },
  };
}

function layersOf(kiln: ThermalKiln): Layer[] {
  const whole = kiln.wall.reduce((sum, layer) => sum + layer.thicknessM, 0);
  return kiln.wall.map((layer) => {
    const material = MATERIALS[layer.material];
    const factored = {
      ...material,
      conductivity: material.conductivity.map(([c, k]) => [c, k * kiln.wallFactor] as const),
    };
    return {
      material: kiln.wallFactor === 1 ? material : factored,
      thicknessM: layer.thicknessM,
      cells: Math.max(4, Math.round((WALL_CELLS * layer.thicknessM) / whole)),
    };
  });
}

const outward = (name: string, areaM2: number, layers: readonly Layer[], zone: number, roomC: number): Column => ({
  name,
  areaM2,
  layers,
  first: { kind: "zone", zone, emissivity: EMISSIVITY.brick },
  second: { kind: "air", airC: roomC, wattsPerM2K: OUTER_FILM, emissivity: EMISSIVITY.jacket },
});

/** A thing heated from both its faces: half its thickness, closed in the middle. */
function slab(
  name: string,
  kg: number,
  thicknessM: number,
  material: typeof CORDIERITE,
  zone: number,
  emissivity: number,
  seenShare: number,
): Column {
  return {
    name,
    areaM2: (2 * kg) / (material.densityKgPerM3 * thicknessM),
    layers: [{ material, thicknessM: thicknessM / 2, cells: 3 }],
    first: { kind: "zone", zone, emissivity: emissivity * seenShare },
    second: { kind: "none" },
  };
}

/** The share of the elements between two heights, each a share of the depth: the bands overlapped. */
function bandShare(shares: readonly number[], low: number, high: number): number {
  const whole = shares.reduce((sum, share) => sum + share, 0);
  return shares.reduce((sum, share, i) => {
    const from = i / shares.length;
    const to = (i + 1) / shares.length;
    return sum + (share / whole) * (Math.max(0, Math.min(high, to) - Math.max(low, from)) / (to - from));
  }, 0);
}

// A kiln's firing in the general-purpose integrator odex (extrapolation of order 8 to 10): the yardstick of thermal.ts.
// The same semi-discretised equations, written plainly and apart from the solver: properties straight from the materials'
// points, zones solved at every slope, the controller holding its zone exactly where the programme wants it.

import { createRequire } from "node:module";
import { at, type Material } from "../../src/firing/materials/material.ts";
import type { KilnNetwork } from "../../src/firing/thermal/kiln-network.ts";
import type { Face, Network } from "../../src/firing/thermal/network.ts";

interface OdexSolver {
  absoluteTolerance: number;
  relativeTolerance: number;
  maxSteps: number;
  initialStepSize: number;
  solve(
    slope: (at: number, values: number[]) => number[],
    from: number,
    start: number[],
    to: number,
  ): { readonly y: number[]; readonly nEval: number; readonly outcome: number };
}
const { Solver } = createRequire(import.meta.url)("odex") as { Solver: new (unknowns: number) => OdexSolver };

const STEFAN_BOLTZMANN = 5.670374419e-8;
const KELVIN = 273.15;
const TOLERANCE = 1e-3;

export interface OdexFiring {
  /** Each level's surface at the end, °C. */
  readonly levelC: readonly number[];
  readonly kWh: number;
  /** How often the equations were evaluated. */
  readonly slopes: number;
}

interface Cell {
  readonly material: Material;
  readonly metres: number;
}

/** One column's nodes among all unknowns. */
interface Slab {
  readonly first: number;
  readonly cells: readonly Cell[];
  readonly faces: readonly [Face, Face];
  readonly areaM2: number;
}

function slabsOf(network: Network): { slabs: Slab[]; nodes: number } {
  let nodes = 0;
  const slabs = network.columns.map((column) => {
    const cells = column.layers.flatMap((layer) =>
      Array.from({ length: layer.cells }, () => ({
        material: layer.material,
        metres: layer.thicknessM / layer.cells,
      })),
    );
    const slab = { first: nodes, cells, faces: [column.first, column.second] as const, areaM2: column.areaM2 };
    nodes += cells.length + 1;
    return slab;
  });
  return { slabs, nodes };
}

/** Specific heat by volume at a temperature, J/m³K; conductivity's mean between two, exact for a straight piece. */
const heatAt = (material: Material, tempC: number): number =>
  material.densityKgPerM3 * at(material.specificHeat, tempC);
const conductivityBetween = (material: Material, a: number, b: number): number =>
  at(material.conductivity, (a + b) / 2);

/** The zones' fourth powers (K⁴) that balance: Newton's method for the leak, elimination within. */
class Zones {
  readonly fourth: Float64Array;
  watts = 0;
  private readonly network: Network;
  private readonly gain: Float64Array;
  private readonly fromFaces: Float64Array;

  constructor(network: Network, startC: number) {
    this.network = network;
    this.fourth = new Float64Array(network.zones.length).fill((startC + KELVIN) ** 4);
    this.gain = new Float64Array(network.zones.length);
    this.fromFaces = new Float64Array(network.zones.length);
  }

  clear(): void {
    this.gain.fill(0);
    this.fromFaces.fill(0);
  }

  /** A face of so much area and emissivity, its surface's fourth power in K⁴. */
  see(zone: number, areaM2: number, emissivity: number, fourth: number): void {
    const g = STEFAN_BOLTZMANN * areaM2 * emissivity;
    this.gain[zone] = (this.gain[zone] as number) + g;
    this.fromFaces[zone] = (this.fromFaces[zone] as number) + g * fourth;
  }

  /** Balances, with the power that holds a zone at the wanted fourth power. */
  balance(zone: number, wanted: number): void {
    const { zones, roomC } = this.network;
    const { fourth } = this;
    const count = zones.length;
    for (let round = 0; round < 20; round++) {
      const rows = zones.map((each, z) => {
        const kelvin = Math.sqrt(Math.sqrt(Math.max(1e6, fourth[z] as number)));
        const slope = each.leakWattsPerK / (4 * kelvin ** 3);
        const below = z > 0 ? STEFAN_BOLTZMANN * (zones[z - 1] as (typeof zones)[number]).openAboveM2 : 0;
        const above = z + 1 < count ? STEFAN_BOLTZMANN * each.openAboveM2 : 0;
        return {
          below,
          above,
          diagonal: (this.gain[z] as number) + slope + below + above,
          right:
            (this.fromFaces[z] as number) -
            each.leakWattsPerK * (kelvin - KELVIN - roomC) +
            slope * (fourth[z] as number),
          share: each.powerShare,
        };
      });
      const plain = eliminate(rows, (row) => row.right);
      const perWatt = eliminate(rows, (row) => row.share);
      this.watts = (wanted - (plain[zone] as number)) / (perWatt[zone] as number);
      let largest = 0;
      for (let z = 0; z < count; z++) {
        const next = (plain[z] as number) + this.watts * (perWatt[z] as number);
        largest = Math.max(largest, Math.abs(next / (fourth[z] as number) - 1));
        fourth[z] = next;
      }
      if (largest < 1e-12) return;
    }
  }
}

function eliminate<Row extends { below: number; above: number; diagonal: number }>(
  rows: readonly Row[],
  right: (row: Row) => number,
): number[] {
  const carry: number[] = [];
  const value: number[] = [];
  rows.forEach((row, z) => {
    const pivot = row.diagonal - (z > 0 ? row.below * (carry[z - 1] as number) : 0);
    carry[z] = row.above / pivot;
    value[z] = (right(row) + (z > 0 ? row.below * (value[z - 1] as number) : 0)) / pivot;
  });
  for (let z = rows.length - 2; z >= 0; z--) {
    value[z] = (value[z] as number) + (carry[z] as number) * (value[z + 1] as number);
  }
  return value;
}

/** A programme of ramps, [°C/h, °C]. The kiln must be able to follow it: the power has no limit here. */
export function firedByOdex(
  kiln: KilnNetwork,
  firing: {
    readonly ramps: readonly (readonly [number, number])[];
    readonly probeZone: number;
    readonly startC: number;
  },
): OdexFiring {
  const { network } = kiln;
  const { slabs, nodes } = slabsOf(network);
  const zones = new Zones(network, firing.startC);
  const slopeAt =
    (wantedC: (second: number) => number) =>
    (second: number, trial: number[]): number[] => {
      // A trial step too long runs off to where nothing has a value, and odex never comes back from that: kept within reason
      // it is refused and shortened instead.
      const values = trial.map((each) => (each < 2000 ? Math.max(each, -200) : 2000));
      zones.clear();
      for (const { first, cells, faces, areaM2 } of slabs) {
        faces.forEach((face, side) => {
          if (face.kind !== "zone") return;
          const surface = (values[first + side * cells.length] as number) + KELVIN;
          zones.see(face.zone, areaM2, face.emissivity, surface ** 4);
        });
      }
      zones.balance(firing.probeZone, (wantedC(second) + KELVIN) ** 4);
      const slope = new Array<number>(nodes + 1).fill(0);
      for (const { first, cells, faces } of slabs) {
        const inflow = new Array<number>(cells.length + 1).fill(0);
        const held = new Array<number>(cells.length + 1).fill(0);
        cells.forEach(({ material, metres }, i) => {
          const [a, b] = [values[first + i] as number, values[first + i + 1] as number];
          const flow = (conductivityBetween(material, a, b) * (a - b)) / metres;
          inflow[i] = (inflow[i] as number) - flow;
          inflow[i + 1] = (inflow[i + 1] as number) + flow;
          held[i] = (held[i] as number) + (heatAt(material, a) * metres) / 2;
          held[i + 1] = (held[i + 1] as number) + (heatAt(material, b) * metres) / 2;
        });
        faces.forEach((face, side) => {
          const i = side * cells.length;
          const surfaceC = values[first + i] as number;
          const fourth = (surfaceC + KELVIN) ** 4;
          if (face.kind === "zone") {
            inflow[i] =
              (inflow[i] as number) +
              STEFAN_BOLTZMANN * face.emissivity * ((zones.fourth[face.zone] as number) - fourth);
          }
          if (face.kind === "air") {
            inflow[i] =
              (inflow[i] as number) +
              STEFAN_BOLTZMANN * face.emissivity * ((face.airC + KELVIN) ** 4 - fourth) +
              face.wattsPerM2K * (face.airC - surfaceC);
          }
        });
        inflow.forEach((flow, i) => {
          slope[first + i] = flow / (held[i] as number);
        });
      }
      slope[nodes] = zones.watts / 3.6e6;
      return slope;
    };
  let values = [...new Array<number>(nodes).fill(firing.startC), 0];
  let second = 0;
  let slopes = 0;
  let fromC = firing.startC;
  for (const [rate, targetC] of firing.ramps) {
    const [beginC, begin] = [fromC, second];
    const direction = targetC >= beginC ? rate : -rate;
    const solver = new Solver(nodes + 1);
    solver.absoluteTolerance = TOLERANCE;
    solver.relativeTolerance = 1e-9;
    solver.maxSteps = 1e6;
    solver.initialStepSize = 0.1;
    const end = begin + ((targetC - beginC) / direction) * 3600;
    const solved = solver.solve(
      slopeAt((now) => beginC + (direction * (now - begin)) / 3600),
      begin,
      values,
      end,
    );
    values = solved.y;
    slopes += solved.nEval;
    second = end;
    fromC = targetC;
  }
  return {
    levelC: kiln.levelColumns.map((column) => values[(slabs[column] as Slab).first] as number),
    kWh: values[nodes] as number,
    slopes,
  };
}

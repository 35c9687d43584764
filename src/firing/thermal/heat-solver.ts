import { GRID } from "../materials/material.ts";
import { type FlatNetwork, flatten, type Network } from "./network.ts";

// Stefan and Boltzmann's constant (CODATA 2018), for temperatures in thousands of kelvin: W/m²·kK⁴.
export const SIGMA = 5.670374419e-8 * 1e12;
/** The diagonal of SDIRK2, L-stable and of second order (Alexander, SIAM J. Numer. Anal. 14, 1977). */
const GAMMA = 1 - Math.SQRT1_2;
const NEAR_ENOUGH_K = 1e-3;
const MOST_ROUNDS = 25;
const KELVIN = 273.15;

/** What the kiln is asked for in a step: a probe temperature to hold to, or a power to give. */
export interface Demand {
  /** The zone whose radiation temperature the controller steers, or null to give `watts` as they are. */
  readonly zone: number;
  steer: boolean;
  /** The probe's wanted temperature at the two stages of the step. */
  readonly wantedC: Float64Array;
  watts: number;
  mostWatts: number;
}

/**
 * Steps a network of columns and zones through time: SDIRK2 on the heat in each node, which is exactly what flows in, so
 * that no heat is made or lost; each stage by Newton, every column condensed to its two faces by elimination, the zones
 * solved together. Nothing is allocated while it runs.
 */
export class HeatSolver {
  readonly flat: FlatNetwork;
  readonly tempC: Float64Array;
  /** Heat in each node, J for a square metre of its column. */
  readonly heat: Float64Array;
  /** Each zone's radiation temperature to the fourth power, in thousands of kelvin. */
  readonly radiation: Float64Array;
  /** Totals since the start, joules: given by elements, lost to the room through walls and vent. */
  givenJ = 0;
  lostJ = 0;
  /** Power over the last step's two stages, watts, weighted as the step weights them. */
  watts = 0;
  /** An estimate of the last step's error, kelvin. */
  errorK = 0;
  steps = 0;
  rounds = 0;

  private readonly network: Network;
  private readonly firstKind: Int32Array;
  private readonly secondKind: Int32Array;
  private readonly firstZone: Int32Array;
  private readonly secondZone: Int32Array;
  private readonly faceValue: Float64Array;
  private readonly faceRadiation: Float64Array;
  private readonly base: Float64Array;
  private readonly startHeat: Float64Array;
  private readonly startTemp: Float64Array;
  private readonly stageFlow: Float64Array;
  private readonly slope: Float64Array;
  private readonly alpha: Float64Array;
  private readonly betaFirst: Float64Array;
  private readonly betaSecond: Float64Array;
  private readonly upper: Float64Array;
  private readonly capacity: Float64Array;
  private readonly content: Float64Array;
  private readonly kirchhoff: Float64Array;
  private readonly conductivity: Float64Array;
  private readonly zoneDiagonal: Float64Array;
  private readonly zoneLow: Float64Array;
  private readonly zoneHigh: Float64Array;
  private readonly zoneRest: Float64Array;
  private readonly zoneU: Float64Array;
  private readonly zoneV: Float64Array;
  private readonly zoneWork: Float64Array;
  private readonly exchange: Float64Array;
  private readonly kept: { radiation: Float64Array; given: number; lost: number };

  constructor(network: Network, startC: number) {
    this.network = network;
    this.flat = flatten(network);
    const { nodes } = this.flat;
    const columns = network.columns.length;
    const zones = network.zones.length;
    const array = (size: number): Float64Array => new Float64Array(size);
    this.tempC = array(nodes).fill(startC);
    this.heat = array(nodes);
    this.radiation = array(zones).fill(fourth(startC));
    this.base = array(nodes);
    this.startHeat = array(nodes);
    this.startTemp = array(nodes);
    this.stageFlow = array(nodes);
    this.slope = array(nodes);
    this.alpha = array(nodes);
    this.betaFirst = array(nodes);
    this.betaSecond = array(nodes);
    this.upper = array(nodes);
    this.capacity = array(nodes);
    this.content = array(nodes);
    this.kirchhoff = array(nodes);
    this.conductivity = array(nodes);
    this.zoneDiagonal = array(zones);
    this.zoneLow = array(zones);
    this.zoneHigh = array(zones);
    this.zoneRest = array(zones);
    this.zoneU = array(zones);
    this.zoneV = array(zones);
    this.zoneWork = array(zones);
    this.kept = { radiation: array(zones), given: 0, lost: 0 };
    this.exchange = Float64Array.from(network.zones, (zone) => SIGMA * zone.openAboveM2);
    this.firstKind = new Int32Array(columns);
    this.secondKind = new Int32Array(columns);
    this.firstZone = new Int32Array(columns);
    this.secondZone = new Int32Array(columns);
    this.faceValue = array(columns * 4);
    this.faceRadiation = array(columns * 2);
    network.columns.forEach((column, c) => {
      for (const [side, face] of [column.first, column.second].entries()) {
        const kind = side === 0 ? this.firstKind : this.secondKind;
        const zone = side === 0 ? this.firstZone : this.secondZone;
        kind[c] = KINDS.indexOf(face.kind);
        zone[c] = face.kind === "zone" ? face.zone : -1;
        if (face.kind === "zone" || face.kind === "air") this.faceRadiation[2 * c + side] = SIGMA * face.emissivity;
        if (face.kind === "air") {
          this.faceValue[4 * c + 2 * side] = face.wattsPerM2K;
          this.faceValue[4 * c + 2 * side + 1] = face.airC;
        }
        if (face.kind === "fixed") {
          this.faceValue[4 * c + 2 * side] = face.tempC;
          this.tempC[side === 0 ? (this.flat.start[c] as number) : (this.flat.start[c + 1] as number) - 1] = face.tempC;
        }
        if (face.kind === "flux") this.faceValue[4 * c + 2 * side] = face.wattsPerM2;
      }
    });
    this.lookUp();
    this.heat.set(this.content);
  }

  /** A zone's radiation temperature, °C: what a probe there reads. */
  zoneC(zone: number): number {
    return 1000 * Math.sqrt(Math.sqrt(Math.max(0, this.radiation[zone] as number))) - KELVIN;
  }

  /** All heat held, joules above 0 °C. */
  heldJ(): number {
    let sum = 0;
    for (let c = 0; c < this.network.columns.length; c++) {
      const area = this.flat.area[c] as number;
      for (let i = this.flat.start[c] as number; i < (this.flat.start[c + 1] as number); i++)
        sum += area * (this.heat[i] as number);
    }
    return sum;
  }

  /** Goes on by `seconds`. The demand's `watts` is set to what was given where it steers. */
  step(seconds: number, demand: Demand): void {
    const { heat, startHeat, startTemp, base, stageFlow, tempC } = this;
    const { nodes } = this.flat;
    startHeat.set(heat);
    startTemp.set(tempC);
    this.kept.radiation.set(this.radiation);
    this.kept.given = this.givenJ;
    this.kept.lost = this.lostJ;
    const reach = GAMMA * seconds;
    base.set(startHeat);
    const firstWatts = this.stage(reach, demand, 0);
    this.givenJ += firstWatts * (1 - GAMMA) * seconds;
    this.lostJ += this.stageLoss * (1 - GAMMA) * seconds;
    let error = 0;
    for (let i = 0; i < nodes; i++) {
      stageFlow[i] = ((heat[i] as number) - (startHeat[i] as number)) / reach;
      base[i] = (startHeat[i] as number) + (1 - GAMMA) * seconds * (stageFlow[i] as number);
      // Start the second stage where the first one's pace would bring it.
      const pace = ((tempC[i] as number) - (startTemp[i] as number)) / GAMMA;
      const guess = (startTemp[i] as number) + pace;
      this.slope[i] = guess;
    }
    for (let i = 0; i < nodes; i++) tempC[i] = this.slope[i] as number;
    const secondWatts = this.stage(reach, demand, 1);
    this.givenJ += secondWatts * reach;
    this.lostJ += this.stageLoss * reach;
    for (let i = 0; i < nodes; i++) {
      const later = ((heat[i] as number) - (base[i] as number)) / reach;
      // The difference from the step of first order that the same two stages make.
      const apart = (Math.abs(later - (stageFlow[i] as number)) * GAMMA * seconds * 0.5) / (this.capacity[i] as number);
      if (apart > error) error = apart;
    }
    this.errorK = error;
    this.watts = (1 - GAMMA) * firstWatts + GAMMA * secondWatts;
    this.steps++;
  }

  /** Takes the last step back, to try a shorter one. */
  stepBack(): void {
    this.heat.set(this.startHeat);
    this.tempC.set(this.startTemp);
    this.radiation.set(this.kept.radiation);
    this.givenJ = this.kept.given;
    this.lostJ = this.kept.lost;
  }

  private stageLoss = 0;

  /** Solves one stage: heat = base + reach × inflow. Returns the watts given. */
  private stage(reach: number, demand: Demand, stage: number): number {
    const { tempC, alpha, betaFirst, betaSecond, radiation } = this;
    const zones = this.network.zones.length;
    let watts = demand.watts;
    for (let round = 0; round < MOST_ROUNDS; round++) {
      this.rounds++;
      this.lookUp();
      this.beginZones();
      for (let c = 0; c < this.network.columns.length; c++) this.condense(c, reach);
      watts = this.solveZones(demand, stage);
      let largest = 0;
      for (let c = 0; c < this.network.columns.length; c++) {
        const zoneA = this.firstZone[c] as number;
        const zoneB = this.secondZone[c] as number;
        const byA = zoneA >= 0 ? (this.zoneU[zoneA] as number) : 0;
        const byB = zoneB >= 0 ? (this.zoneU[zoneB] as number) : 0;
        for (let i = this.flat.start[c] as number; i < (this.flat.start[c + 1] as number); i++) {
          const change = (alpha[i] as number) + (betaFirst[i] as number) * byA + (betaSecond[i] as number) * byB;
          alpha[i] = change;
          const size = Math.abs(change);
          if (size > largest) largest = size;
        }
      }
      // The linear solution balances exactly: its heats and flows are the ones kept.
      const done = largest < NEAR_ENOUGH_K || round === MOST_ROUNDS - 1;
      if (done) this.keep();
      // Far from the answer a full step may overshoot: never more than 150 K at once.
      const share = largest > 150 ? 150 / largest : 1;
      for (let i = 0; i < this.flat.nodes; i++) tempC[i] = (tempC[i] as number) + share * (alpha[i] as number);
      for (let z = 0; z < zones; z++) {
        radiation[z] = Math.max(1e-4, (radiation[z] as number) + share * (this.zoneU[z] as number));
      }
      if (done) break;
    }
    return watts;
  }

  /** Contents, capacities and conductivities at the present temperatures. */
  private lookUp(): void {
    const { flat, tempC, content, capacity, kirchhoff, conductivity } = this;
    const { stepC, lowestC, size } = GRID;
    for (let i = 0; i < flat.nodes; i++) {
      const place = ((tempC[i] as number) - lowestC) / stepC;
      const cell = place < 0 ? 0 : place >= size - 2 ? size - 2 : Math.floor(place);
      const over = (tempC[i] as number) - (lowestC + cell * stepC);
      const low = flat.tables[flat.lowMaterial[i] as number] as FlatNetwork["tables"][number];
      const metres = flat.lowMetres[i] as number;
      const lowSlope = low.heatSlope[cell] as number;
      let held = metres * ((low.enthalpy[cell] as number) + over * lowSlope);
      let slope = metres * lowSlope;
      const highMetres = flat.highMetres[i] as number;
      if (flat.highMaterial[i] === flat.lowMaterial[i]) {
        held += highMetres * ((low.enthalpy[cell] as number) + over * lowSlope);
        slope += highMetres * lowSlope;
      } else {
        const high = flat.tables[flat.highMaterial[i] as number] as FlatNetwork["tables"][number];
        held += highMetres * ((high.enthalpy[cell] as number) + over * (high.heatSlope[cell] as number));
        slope += highMetres * (high.heatSlope[cell] as number);
      }
      content[i] = held;
      capacity[i] = slope;
      kirchhoff[i] = (low.kirchhoff[cell] as number) + over * (low.conductivity[cell] as number);
      conductivity[i] = low.conductivity[cell] as number;
    }
  }

  /** Conductivity integral at a node for another material than its low side's: where layers meet. */
  private kirchhoffOf(node: number, material: number, slope: boolean): number {
    const table = this.flat.tables[material] as FlatNetwork["tables"][number];
    const place = ((this.tempC[node] as number) - GRID.lowestC) / GRID.stepC;
    const cell = place < 0 ? 0 : place >= GRID.size - 2 ? GRID.size - 2 : Math.floor(place);
    if (slope) return table.conductivity[cell] as number;
    const over = (this.tempC[node] as number) - (GRID.lowestC + cell * GRID.stepC);
    return (table.kirchhoff[cell] as number) + over * (table.conductivity[cell] as number);
  }

  /**
   * One column's stage equations linearised and eliminated: each node's change as alpha + betaFirst · (change of the first
   * face's zone) + betaSecond · (change of the second's). Adds what its faces mean to the zones.
   */
  private condense(c: number, reach: number): void {
    const { flat, alpha, betaFirst, betaSecond, upper, capacity, content, base, conductivity, kirchhoff } = this;
    const from = flat.start[c] as number;
    const to = flat.start[c + 1] as number;
    let flowIn = 0;
    let slopeLow = 0;
    for (let i = from; i < to; i++) {
      let diagonal = capacity[i] as number;
      let rest = (base[i] as number) - (content[i] as number) + reach * flowIn;
      const lower = -reach * slopeLow;
      // The heat that enters node i from node i − 1 rises with that node's temperature and falls with its own.
      let ownLow = 0;
      if (i > from) {
        const cell = i - 1;
        ownLow = (this.slopeAt(i, cell) as number) / (flat.cellMetres[cell] as number);
        diagonal += reach * ownLow;
      }
      let toFirst = 0;
      let toSecond = 0;
      if (i < to - 1) {
        const metres = flat.cellMetres[i] as number;
        const material = flat.cellMaterial[i] as number;
        const here = flat.lowMaterial[i] === material ? (kirchhoff[i] as number) : this.kirchhoffOf(i, material, false);
        const hereSlope =
          flat.lowMaterial[i] === material ? (conductivity[i] as number) : this.kirchhoffOf(i, material, true);
        const next = kirchhoff[i + 1] as number;
        const flow = (here - next) / metres;
        rest -= reach * flow;
        diagonal += (reach * hereSlope) / metres;
        upper[i] = (-reach * (conductivity[i + 1] as number)) / metres;
        flowIn = flow;
        slopeLow = hereSlope / metres;
      }
      if (i === from) {
        const slope = this.faceIn(c, 0, i);
        rest += reach * this.faceFlow;
        diagonal -= reach * slope;
        toFirst = reach * this.faceByZone;
        if (this.faceHeld) {
          diagonal = 1;
          rest = 0;
          if (to - 1 > from) upper[i] = 0;
        }
      }
      let held = i === from && this.faceHeld;
      if (i === to - 1) {
        const slope = this.faceIn(c, 1, i);
        rest += reach * this.faceFlow;
        diagonal -= reach * slope;
        toSecond = reach * this.faceByZone;
        held = this.faceHeld;
        if (held) {
          diagonal = 1;
          rest = 0;
        }
      }
      if (i > from && !held) {
        // lower · (previous row) eliminated
        const factor = lower;
        diagonal -= factor * (upper[i - 1] as number);
        rest -= factor * (alpha[i - 1] as number);
        toFirst -= factor * (betaFirst[i - 1] as number);
        toSecond -= factor * (betaSecond[i - 1] as number);
      }
      upper[i] = i < to - 1 ? (upper[i] as number) / diagonal : 0;
      alpha[i] = rest / diagonal;
      betaFirst[i] = toFirst / diagonal;
      betaSecond[i] = toSecond / diagonal;
    }
    for (let i = to - 2; i >= from; i--) {
      const above = upper[i] as number;
      alpha[i] = (alpha[i] as number) - above * (alpha[i + 1] as number);
      betaFirst[i] = (betaFirst[i] as number) - above * (betaFirst[i + 1] as number);
      betaSecond[i] = (betaSecond[i] as number) - above * (betaSecond[i + 1] as number);
    }
    this.addToZones(c, from, to - 1);
  }

  private slopeAt(node: number, cell: number): number {
    return this.flat.lowMaterial[node] === this.flat.cellMaterial[cell]
      ? (this.conductivity[node] as number)
      : this.kirchhoffOf(node, this.flat.cellMaterial[cell] as number, true);
  }

  private faceFlow = 0;
  private faceByZone = 0;
  private faceHeld = false;

  /** The flow into a face, W/m²; returns its slope by the surface's own temperature. */
  private faceIn(c: number, side: 0 | 1, node: number): number {
    const kind = side === 0 ? (this.firstKind[c] as number) : (this.secondKind[c] as number);
    this.faceFlow = 0;
    this.faceByZone = 0;
    this.faceHeld = false;
    if (kind === ZONE || kind === AIR) {
      const g = this.faceRadiation[2 * c + side] as number;
      const kilokelvin = ((this.tempC[node] as number) + KELVIN) / 1000;
      const cube = kilokelvin * kilokelvin * kilokelvin;
      if (kind === ZONE) {
        const zone = side === 0 ? (this.firstZone[c] as number) : (this.secondZone[c] as number);
        this.faceFlow = g * ((this.radiation[zone] as number) - cube * kilokelvin);
        this.faceByZone = g;
        return -4e-3 * g * cube;
      }
      const film = this.faceValue[4 * c + 2 * side] as number;
      const air = this.faceValue[4 * c + 2 * side + 1] as number;
      this.faceFlow = g * (fourth(air) - cube * kilokelvin) + film * (air - (this.tempC[node] as number));
      return -4e-3 * g * cube - film;
    }
    if (kind === FLUX) this.faceFlow = this.faceValue[4 * c + 2 * side] as number;
    this.faceHeld = kind === FIXED;
    return 0;
  }

  private beginZones(): void {
    const { zoneDiagonal, zoneLow, zoneHigh, zoneRest, radiation, exchange } = this;
    const zones = this.network.zones.length;
    this.stageLoss = 0;
    for (let z = 0; z < zones; z++) {
      const here = radiation[z] as number;
      const kilokelvin = Math.sqrt(Math.sqrt(here));
      const leak = (this.network.zones[z] as Network["zones"][number]).leakWattsPerK;
      const lost = leak * (1000 * kilokelvin - KELVIN - this.network.roomC);
      zoneDiagonal[z] = (leak * 1000) / (4 * kilokelvin * kilokelvin * kilokelvin);
      zoneRest[z] = -lost;
      zoneLow[z] = 0;
      zoneHigh[z] = 0;
    }
    for (let z = 0; z + 1 < zones; z++) {
      const g = exchange[z] as number;
      const up = g * ((radiation[z] as number) - (radiation[z + 1] as number));
      zoneRest[z] = (zoneRest[z] as number) - up;
      zoneRest[z + 1] = (zoneRest[z + 1] as number) + up;
      zoneDiagonal[z] = (zoneDiagonal[z] as number) + g;
      zoneDiagonal[z + 1] = (zoneDiagonal[z + 1] as number) + g;
      zoneHigh[z] = (zoneHigh[z] as number) - g;
      zoneLow[z + 1] = (zoneLow[z + 1] as number) - g;
    }
  }

  /** What flows from the zones into a column's faces, as it will be after the change. */
  private addToZones(c: number, first: number, last: number): void {
    const area = this.flat.area[c] as number;
    for (let side = 0; side < 2; side++) {
      const zone = side === 0 ? (this.firstZone[c] as number) : (this.secondZone[c] as number);
      if (zone < 0) continue;
      const node = side === 0 ? first : last;
      const slope = this.faceIn(c, side as 0 | 1, node);
      const g = this.faceByZone;
      const other = side === 0 ? (this.secondZone[c] as number) : (this.firstZone[c] as number);
      const own = side === 0 ? (this.betaFirst[node] as number) : (this.betaSecond[node] as number);
      const cross = side === 0 ? (this.betaSecond[node] as number) : (this.betaFirst[node] as number);
      this.zoneRest[zone] =
        (this.zoneRest[zone] as number) - area * (this.faceFlow + slope * (this.alpha[node] as number));
      this.zoneDiagonal[zone] = (this.zoneDiagonal[zone] as number) + area * (g + slope * own);
      if (other < 0) continue;
      // A shelf joins the zone beneath it with the one above.
      if (other === zone) this.zoneDiagonal[zone] = (this.zoneDiagonal[zone] as number) + area * slope * cross;
      else if (other > zone) this.zoneHigh[zone] = (this.zoneHigh[zone] as number) + area * slope * cross;
      else this.zoneLow[zone] = (this.zoneLow[zone] as number) + area * slope * cross;
    }
  }

  /** Solves for the zones' changes (into zoneU) and the watts: those demanded, or those that bring the probe where it is wanted. */
  private solveZones(demand: Demand, stage: number): number {
    const { zoneDiagonal, zoneLow, zoneHigh, zoneRest, zoneU, zoneV, zoneWork, radiation } = this;
    const zones = this.network.zones.length;
    if (zones === 0) return 0;
    for (let z = 0; z < zones; z++) {
      const low = z > 0 ? (zoneLow[z] as number) : 0;
      const diagonal = (zoneDiagonal[z] as number) - (z > 0 ? low * (zoneWork[z - 1] as number) : 0);
      zoneWork[z] = (zoneHigh[z] as number) / diagonal;
      zoneU[z] = ((zoneRest[z] as number) - (z > 0 ? low * (zoneU[z - 1] as number) : 0)) / diagonal;
      const share = (this.network.zones[z] as Network["zones"][number]).powerShare;
      zoneV[z] = (share - (z > 0 ? low * (zoneV[z - 1] as number) : 0)) / diagonal;
    }
    for (let z = zones - 2; z >= 0; z--) {
      zoneU[z] = (zoneU[z] as number) - (zoneWork[z] as number) * (zoneU[z + 1] as number);
      zoneV[z] = (zoneV[z] as number) - (zoneWork[z] as number) * (zoneV[z + 1] as number);
    }
    let watts = demand.watts;
    if (demand.steer) {
      const wanted = fourth(demand.wantedC[stage] as number) - (radiation[demand.zone] as number);
      watts = (wanted - (zoneU[demand.zone] as number)) / (zoneV[demand.zone] as number);
      watts = Math.min(demand.mostWatts, Math.max(0, watts));
    }
    for (let z = 0; z < zones; z++) zoneU[z] = (zoneU[z] as number) + watts * (zoneV[z] as number);
    return watts;
  }

  /** Keeps the linear solution's heats, and its losses to the room. */
  private keep(): void {
    const { flat, heat, content, capacity, alpha } = this;
    for (let i = 0; i < flat.nodes; i++)
      heat[i] = (content[i] as number) + (capacity[i] as number) * (alpha[i] as number);
    let loss = 0;
    this.network.zones.forEach((zone, z) => {
      const kilokelvin = Math.sqrt(Math.sqrt(this.radiation[z] as number));
      const slope = (zone.leakWattsPerK * 1000) / (4 * kilokelvin ** 3);
      loss +=
        zone.leakWattsPerK * (1000 * kilokelvin - KELVIN - this.network.roomC) + slope * (this.zoneU[z] as number);
    });
    for (let c = 0; c < this.network.columns.length; c++) {
      for (let side = 0; side < 2; side++) {
        const kind = side === 0 ? (this.firstKind[c] as number) : (this.secondKind[c] as number);
        if (kind !== AIR && kind !== FLUX) continue;
        const node = side === 0 ? (flat.start[c] as number) : (flat.start[c + 1] as number) - 1;
        const slope = this.faceIn(c, side as 0 | 1, node);
        loss -= (flat.area[c] as number) * (this.faceFlow + slope * (alpha[node] as number));
      }
    }
    this.stageLoss = loss;
  }
}

const KINDS = ["zone", "air", "fixed", "flux", "none"];
const ZONE = 0;
const AIR = 1;
const FIXED = 2;
const FLUX = 3;

/** A temperature in °C to the fourth power, in thousands of kelvin. */
function fourth(tempC: number): number {
  const kilokelvin = (tempC + KELVIN) / 1000;
  return kilokelvin * kilokelvin * kilokelvin * kilokelvin;
}

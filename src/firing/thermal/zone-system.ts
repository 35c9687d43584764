import type { ColumnElimination } from "./column-elimination.ts";
import type { Demand } from "./demand.ts";
import type { Faces } from "./faces.ts";
import type { Network } from "./network.ts";
import { fourthPower, KELVIN, SIGMA } from "./radiation.ts";

/**
 * The zones' heat balances, which hold at every instant: elements in; walls, shelves, ware, neighbours and the vent out. One
 * row a zone, each joined to the zone above and the zone beneath; solved for the change of each zone's radiation.
 */
export class ZoneSystem {
  /** The change of each zone's radiation, kK⁴, after `solve`. */
  readonly change: Float64Array;
  private readonly diagonal: Float64Array;
  private readonly low: Float64Array;
  private readonly high: Float64Array;
  private readonly rest: Float64Array;
  private readonly perWatt: Float64Array;
  private readonly carry: Float64Array;
  private readonly exchange: Float64Array;
  private readonly leak: Float64Array;
  private readonly leakLoss: Float64Array;
  private readonly leakSlope: Float64Array;
  private readonly powerShare: Float64Array;
  private readonly roomC: number;
  private readonly count: number;

  constructor(network: Network) {
    refuseJumps(network);
    this.count = network.zones.length;
    const array = (): Float64Array => new Float64Array(this.count);
    this.change = array();
    this.diagonal = array();
    this.low = array();
    this.high = array();
    this.rest = array();
    this.perWatt = array();
    this.carry = array();
    this.leakLoss = array();
    this.leakSlope = array();
    this.exchange = Float64Array.from(network.zones, (zone) => SIGMA * zone.openAboveM2);
    this.leak = Float64Array.from(network.zones, (zone) => zone.leakWattsPerK);
    this.powerShare = Float64Array.from(network.zones, (zone) => zone.powerShare);
    this.roomC = network.roomC;
  }

  /** Begins the balances with the vent and what passes between neighbours. */
  begin(radiation: Float64Array): void {
    const { diagonal, low, high, rest, exchange, leak, leakLoss, leakSlope } = this;
    for (let z = 0; z < this.count; z++) {
      const kilokelvin = Math.sqrt(Math.sqrt(radiation[z] as number));
      leakLoss[z] = (leak[z] as number) * (1000 * kilokelvin - KELVIN - this.roomC);
      leakSlope[z] = ((leak[z] as number) * 1000) / (4 * kilokelvin * kilokelvin * kilokelvin);
      diagonal[z] = leakSlope[z] as number;
      rest[z] = -(leakLoss[z] as number);
      low[z] = 0;
      high[z] = 0;
    }
    for (let z = 0; z + 1 < this.count; z++) {
      const g = exchange[z] as number;
      const up = g * ((radiation[z] as number) - (radiation[z + 1] as number));
      rest[z] = (rest[z] as number) - up;
      rest[z + 1] = (rest[z + 1] as number) + up;
      diagonal[z] = (diagonal[z] as number) + g;
      diagonal[z + 1] = (diagonal[z + 1] as number) + g;
      high[z] = (high[z] as number) - g;
      low[z + 1] = (low[z + 1] as number) - g;
    }
  }

  /** Adds what the zones give to the faces they see, as it will be after the change. */
  addFaces(faces: Faces, columns: ColumnElimination): void {
    const { diagonal, low, high, rest } = this;
    for (let f = 0; f < faces.count; f++) {
      const zone = faces.zone[f] as number;
      if (zone < 0) continue;
      const node = faces.node[f] as number;
      const area = faces.area[f] as number;
      const slope = faces.slope[f] as number;
      const other = faces.zone[f ^ 1] as number;
      const isFirst = (f & 1) === 0;
      const own = (isFirst ? columns.byFirst[node] : columns.bySecond[node]) as number;
      rest[zone] =
        (rest[zone] as number) - area * ((faces.flow[f] as number) + slope * (columns.alpha[node] as number));
      diagonal[zone] = (diagonal[zone] as number) + area * ((faces.byZone[f] as number) + slope * own);
      if (other < 0) continue;
      // A shelf joins the zone beneath it with the one above.
      const cross = area * slope * ((isFirst ? columns.bySecond[node] : columns.byFirst[node]) as number);
      if (other === zone) diagonal[zone] = (diagonal[zone] as number) + cross;
      else if (other > zone) high[zone] = (high[zone] as number) + cross;
      else low[zone] = (low[zone] as number) + cross;
    }
  }

  /** Solves for the changes; returns the watts: those demanded, or those that bring the probe where it is wanted. */
  solve(demand: Demand, stage: number, radiation: Float64Array): number {
    const { diagonal, low, high, rest, change, perWatt, carry, powerShare } = this;
    if (this.count === 0) return 0;
    for (let z = 0; z < this.count; z++) {
      const beneath = z > 0 ? (low[z] as number) : 0;
      const pivot = (diagonal[z] as number) - (z > 0 ? beneath * (carry[z - 1] as number) : 0);
      carry[z] = (high[z] as number) / pivot;
      change[z] = ((rest[z] as number) - (z > 0 ? beneath * (change[z - 1] as number) : 0)) / pivot;
      perWatt[z] = ((powerShare[z] as number) - (z > 0 ? beneath * (perWatt[z - 1] as number) : 0)) / pivot;
    }
    for (let z = this.count - 2; z >= 0; z--) {
      change[z] = (change[z] as number) - (carry[z] as number) * (change[z + 1] as number);
      perWatt[z] = (perWatt[z] as number) - (carry[z] as number) * (perWatt[z + 1] as number);
    }
    let watts = demand.watts;
    if (demand.steer) {
      const wanted = fourthPower(demand.wantedC[stage] as number) - (radiation[demand.zone] as number);
      watts = (wanted - (change[demand.zone] as number)) / (perWatt[demand.zone] as number);
      watts = Math.min(demand.mostWatts, Math.max(0, watts));
    }
    for (let z = 0; z < this.count; z++) change[z] = (change[z] as number) + watts * (perWatt[z] as number);
    return watts;
  }

  /** Watts that leave by the vent once the change is made. */
  ventWatts(): number {
    let watts = 0;
    for (let z = 0; z < this.count; z++) {
      watts += (this.leakLoss[z] as number) + (this.leakSlope[z] as number) * (this.change[z] as number);
    }
    return watts;
  }
}

/** A column may join a zone to itself or a neighbour: the system solved has three diagonals. */
function refuseJumps(network: Network): void {
  for (const { name, first, second } of network.columns) {
    if (first.kind === "zone" && second.kind === "zone" && Math.abs(first.zone - second.zone) > 1) {
      throw new RangeError(`${name} joins zones ${first.zone} and ${second.zone}, which are not neighbours`);
    }
  }
}

import type { Face, FlatNetwork, Network } from "./network.ts";
import { fourthPower, KELVIN, SIGMA } from "./radiation.ts";

/**
 * The two faces of every column: what flows in at the present temperatures. Face 2c is the first of column c, face 2c + 1
 * its second.
 */
export class Faces {
  readonly count: number;
  readonly node: Int32Array;
  readonly area: Float64Array;
  /** The zone a face looks at, or −1. */
  readonly zone: Int32Array;
  /** 1 where the face is held at its temperature. */
  readonly held: Uint8Array;
  /** 1 where the face passes heat out of or into the whole: to air, or a given flux. */
  readonly outside: Uint8Array;
  /** How the inflow rises with its zone's radiation: W/m² for a kK⁴; 0 where it sees no zone. */
  readonly byZone: Float64Array;
  /** Flow into the face, W/m², and its slope by the surface's own temperature, W/m²·K. */
  readonly flow: Float64Array;
  readonly slope: Float64Array;
  private readonly gain: Float64Array;
  private readonly film: Float64Array;
  private readonly airC: Float64Array;
  private readonly airFourth: Float64Array;

  constructor(network: Network, flat: FlatNetwork) {
    this.count = 2 * network.columns.length;
    const array = (): Float64Array => new Float64Array(this.count);
    this.node = new Int32Array(this.count);
    this.area = array();
    this.zone = new Int32Array(this.count).fill(-1);
    this.held = new Uint8Array(this.count);
    this.outside = new Uint8Array(this.count);
    this.byZone = array();
    this.flow = array();
    this.slope = array();
    this.gain = array();
    this.film = array();
    this.airC = array();
    this.airFourth = array();
    network.columns.forEach((column, c) => {
      this.node[2 * c] = flat.start[c] as number;
      this.node[2 * c + 1] = (flat.start[c + 1] as number) - 1;
      this.area[2 * c] = column.areaM2;
      this.area[2 * c + 1] = column.areaM2;
      this.set(2 * c, column.first);
      this.set(2 * c + 1, column.second);
    });
  }

  private set(f: number, face: Face): void {
    if (face.kind === "fixed") this.held[f] = 1;
    // A given flux never changes: it is written here and left.
    if (face.kind === "flux") this.flow[f] = face.wattsPerM2;
    if (face.kind === "flux" || face.kind === "air") this.outside[f] = 1;
    if (face.kind === "zone" || face.kind === "air") this.gain[f] = SIGMA * face.emissivity;
    if (face.kind === "zone") {
      this.zone[f] = face.zone;
      this.byZone[f] = SIGMA * face.emissivity;
    }
    if (face.kind === "air") {
      this.film[f] = face.wattsPerM2K;
      this.airC[f] = face.airC;
      this.airFourth[f] = fourthPower(face.airC);
    }
  }

  /** Reckons every face's inflow at these surfaces (°C) and zones (fourth powers, kK⁴). */
  evaluate(tempC: Float64Array, radiation: Float64Array): void {
    const { flow, slope, gain, zone, outside, film, airC, airFourth } = this;
    for (let f = 0; f < this.count; f++) {
      const inside = (zone[f] as number) >= 0;
      if (!inside && (outside[f] === 0 || ((gain[f] as number) === 0 && (film[f] as number) === 0))) continue;
      const surfaceC = tempC[this.node[f] as number] as number;
      const kilokelvin = (surfaceC + KELVIN) / 1000;
      const cube = kilokelvin * kilokelvin * kilokelvin;
      const g = gain[f] as number;
      const seen = inside ? (radiation[zone[f] as number] as number) : (airFourth[f] as number);
      flow[f] = g * (seen - cube * kilokelvin) + (film[f] as number) * ((airC[f] as number) - surfaceC);
      slope[f] = -4e-3 * g * cube - (film[f] as number);
    }
  }
}

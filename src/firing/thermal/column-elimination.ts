import type { Faces } from "./faces.ts";
import type { FlatNetwork } from "./network.ts";
import type { NodeProperties } from "./node-properties.ts";

/**
 * Each column's stage equations, linearised and eliminated: every node's change of temperature as
 * alpha + byFirst · (change of the zone its first face sees) + bySecond · (change of the second's).
 */
export class ColumnElimination {
  readonly alpha: Float64Array;
  readonly byFirst: Float64Array;
  readonly bySecond: Float64Array;
  private readonly upper: Float64Array;
  private readonly perMetre: Float64Array;
  private readonly flat: FlatNetwork;
  private readonly properties: NodeProperties;
  private readonly faces: Faces;

  constructor(flat: FlatNetwork, properties: NodeProperties, faces: Faces) {
    this.flat = flat;
    this.properties = properties;
    this.faces = faces;
    this.alpha = new Float64Array(flat.nodes);
    this.byFirst = new Float64Array(flat.nodes);
    this.bySecond = new Float64Array(flat.nodes);
    this.upper = new Float64Array(flat.nodes);
    this.perMetre = flat.cellMetres.map((metres) => (metres > 0 ? 1 / metres : 0));
  }

  /**
   * Column c at the present properties and face flows, where heat = base + reach × inflow.
   *
   * @param base J/m² of each node at the start of the stage
   * @param reach seconds
   */
  condense(c: number, base: Float64Array, reach: number): void {
    const { flat, faces, alpha, byFirst, bySecond, upper, perMetre } = this;
    const { content, capacity, lowKirchhoff, lowConductivity, highKirchhoff, highConductivity } = this.properties;
    const from = flat.start[c] as number;
    const last = (flat.start[c + 1] as number) - 1;
    const first = 2 * c;
    const second = first + 1;
    let flowIn = faces.flow[first] as number;
    let ownIn = -(faces.slope[first] as number);
    let lower = 0;
    for (let i = from; i <= last; i++) {
      let diagonal = (capacity[i] as number) + reach * ownIn;
      let rest = (base[i] as number) - (content[i] as number) + reach * flowIn;
      let toFirst = i === from ? reach * (faces.byZone[first] as number) : 0;
      let toSecond = 0;
      let above = 0;
      let nextLower = 0;
      if (i < last) {
        const per = perMetre[i] as number;
        const flow = ((highKirchhoff[i] as number) - (lowKirchhoff[i + 1] as number)) * per;
        const leaving = (highConductivity[i] as number) * per;
        rest -= reach * flow;
        diagonal += reach * leaving;
        ownIn = (lowConductivity[i + 1] as number) * per;
        above = -reach * ownIn;
        nextLower = -reach * leaving;
        flowIn = flow;
      } else {
        rest += reach * (faces.flow[second] as number);
        diagonal -= reach * (faces.slope[second] as number);
        toSecond = reach * (faces.byZone[second] as number);
      }
      if ((i === from && faces.held[first] === 1) || (i === last && faces.held[second] === 1)) {
        upper[i] = 0;
        alpha[i] = 0;
        byFirst[i] = 0;
        bySecond[i] = 0;
        lower = nextLower;
        continue;
      }
      if (i > from) {
        diagonal -= lower * (upper[i - 1] as number);
        rest -= lower * (alpha[i - 1] as number);
        toFirst -= lower * (byFirst[i - 1] as number);
      }
      const inverse = 1 / diagonal;
      upper[i] = above * inverse;
      alpha[i] = rest * inverse;
      byFirst[i] = toFirst * inverse;
      bySecond[i] = toSecond * inverse;
      lower = nextLower;
    }
    for (let i = last - 1; i >= from; i--) {
      const above = upper[i] as number;
      alpha[i] = (alpha[i] as number) - above * (alpha[i + 1] as number);
      byFirst[i] = (byFirst[i] as number) - above * (byFirst[i + 1] as number);
    }
    // Only shelves have a zone behind their second face; elsewhere bySecond is nought throughout.
    if ((faces.byZone[second] as number) === 0) return;
    for (let i = last - 1; i >= from; i--) {
      bySecond[i] = (bySecond[i] as number) - (upper[i] as number) * (bySecond[i + 1] as number);
    }
  }
}

import { ColumnElimination } from "./column-elimination.ts";
import type { Demand } from "./demand.ts";
import { Faces } from "./faces.ts";
import { type FlatNetwork, flatten, type Network } from "./network.ts";
import { NodeProperties } from "./node-properties.ts";
import { celsiusOf, fourthPower } from "./radiation.ts";
import { ZoneSystem } from "./zone-system.ts";

export type { Demand } from "./demand.ts";

/** The diagonal of SDIRK2, L-stable and of second order (Alexander, SIAM J. Numer. Anal. 14, 1977). */
const GAMMA = 1 - Math.SQRT1_2;
const NEAR_ENOUGH_K = 1e-3;
const MOST_ROUNDS = 25;
/** Far from the answer a full step of Newton's may overshoot: never more than this at once. */
const MOST_CHANGE_K = 150;

/**
 * Steps a network of columns and zones through time: SDIRK2 on the heat in each node, which is exactly what flows in, so
 * that no heat is made or lost; each stage by Newton, every column condensed to its two faces by elimination, the zones
 * solved together. Nothing is allocated while it runs. Heat that passes a face held at a temperature is not in the totals.
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
  /** Rounds of Newton's method in all. */
  rounds = 0;

  private readonly properties: NodeProperties;
  private readonly faces: Faces;
  private readonly columns: ColumnElimination;
  private readonly zones: ZoneSystem;
  private readonly base: Float64Array;
  private readonly stageFlow: Float64Array;
  private stageLoss = 0;
  private readonly before: { heat: Float64Array; tempC: Float64Array; radiation: Float64Array };
  private givenBefore = 0;
  private lostBefore = 0;

  /**
   * @param startC everything's temperature at the start, °C; faces held at a temperature start at theirs
   * @throws RangeError where a column joins zones that are not neighbours
   */
  constructor(network: Network, startC: number) {
    this.flat = flatten(network);
    const { nodes } = this.flat;
    const zones = network.zones.length;
    this.tempC = new Float64Array(nodes).fill(startC);
    this.heat = new Float64Array(nodes);
    this.radiation = new Float64Array(zones).fill(fourthPower(startC));
    this.base = new Float64Array(nodes);
    this.stageFlow = new Float64Array(nodes);
    this.before = {
      heat: new Float64Array(nodes),
      tempC: new Float64Array(nodes),
      radiation: new Float64Array(zones),
    };
    this.properties = new NodeProperties(this.flat);
    this.faces = new Faces(network, this.flat);
    this.columns = new ColumnElimination(this.flat, this.properties, this.faces);
    this.zones = new ZoneSystem(network);
    network.columns.forEach(({ first, second }, c) => {
      if (first.kind === "fixed") this.tempC[this.faces.node[2 * c] as number] = first.tempC;
      if (second.kind === "fixed") this.tempC[this.faces.node[2 * c + 1] as number] = second.tempC;
    });
    this.properties.lookUp(this.tempC);
    this.heat.set(this.properties.content);
  }

  /** Becomes as another kiln of the same network is now: its heat, its totals, what of its clay is fired. */
  takeStateOf(other: HeatSolver): void {
    this.heat.set(other.heat);
    this.tempC.set(other.tempC);
    this.radiation.set(other.radiation);
    this.flat.lowMaterial.set(other.flat.lowMaterial);
    this.flat.highMaterial.set(other.flat.highMaterial);
    this.flat.cellMaterial.set(other.flat.cellMaterial);
    this.givenJ = other.givenJ;
    this.lostJ = other.lostJ;
    this.keptForGoodJ = other.keptForGoodJ;
  }

  /** A zone's radiation temperature, °C: what a probe there reads. */
  zoneC(zone: number): number {
    return celsiusOf(this.radiation[zone] as number);
  }

  /** All heat held, joules, from where the tables begin: differences have a meaning. */
  heldJ(): number {
    let sum = this.keptForGoodJ;
    for (let c = 0; c < this.flat.area.length; c++) {
      const area = this.flat.area[c] as number;
      for (let i = this.flat.start[c] as number; i < (this.flat.start[c + 1] as number); i++)
        sum += area * (this.heat[i] as number);
    }
    return sum;
  }

  /**
   * Turns what has been fired right through into what it is from then on: clay that has lost its water does not take it
   * up again as it cools. The heat that went into that stays counted.
   */
  settleFired(): void {
    const { flat, properties, heat, tempC } = this;
    for (let c = 0; c < flat.area.length; c++) {
      const from = flat.start[c] as number;
      const to = flat.start[c + 1] as number;
      const raw = flat.lowMaterial[from] as number;
      const fired = flat.firedAs[raw] as number;
      if (fired < 0) continue;
      let through = true;
      for (let i = from; i < to; i++) {
        if (flat.lowMaterial[i] !== raw || (tempC[i] as number) < (flat.firedAboveC[raw] as number)) through = false;
      }
      if (!through) continue;
      properties.lookUp(tempC);
      const before = properties.content.slice(from, to);
      flat.lowMaterial.fill(fired, from, to);
      flat.highMaterial.fill(fired, from, to);
      flat.cellMaterial.fill(fired, from, to - 1);
      properties.lookUp(tempC);
      for (let i = from; i < to; i++) {
        const taken = (before[i - from] as number) - (properties.content[i] as number);
        heat[i] = (heat[i] as number) - taken;
        this.keptForGoodJ += taken * (flat.area[c] as number);
      }
    }
  }

  /** Heat that changed clay for good, joules. */
  private keptForGoodJ = 0;

  /** Goes on by `seconds`, giving what the demand asks; what was given is in `watts` and `givenJ`. */
  step(seconds: number, demand: Demand): void {
    const { heat, base, stageFlow, tempC, before, properties } = this;
    const { nodes } = this.flat;
    before.heat.set(heat);
    before.tempC.set(tempC);
    before.radiation.set(this.radiation);
    this.givenBefore = this.givenJ;
    this.lostBefore = this.lostJ;
    const reach = GAMMA * seconds;
    base.set(heat);
    const firstWatts = this.stage(reach, demand, 0);
    this.givenJ += firstWatts * (1 - GAMMA) * seconds;
    this.lostJ += this.stageLoss * (1 - GAMMA) * seconds;
    for (let i = 0; i < nodes; i++) {
      const start = before.heat[i] as number;
      stageFlow[i] = ((heat[i] as number) - start) / reach;
      base[i] = start + (1 - GAMMA) * seconds * (stageFlow[i] as number);
      // Start the second stage where the first one's pace would bring it.
      const startC = before.tempC[i] as number;
      tempC[i] = startC + ((tempC[i] as number) - startC) / GAMMA;
    }
    const secondWatts = this.stage(reach, demand, 1);
    this.givenJ += secondWatts * reach;
    this.lostJ += this.stageLoss * reach;
    let error = 0;
    for (let i = 0; i < nodes; i++) {
      const later = ((heat[i] as number) - (base[i] as number)) / reach;
      // The difference from the step of first order that the same two stages make.
      const apart = (Math.abs(later - (stageFlow[i] as number)) * reach * 0.5) / (properties.capacity[i] as number);
      if (apart > error) error = apart;
    }
    this.errorK = error;
    this.watts = (1 - GAMMA) * firstWatts + GAMMA * secondWatts;
    this.steps++;
  }

  /** Takes the last step back, to try a shorter one. */
  stepBack(): void {
    this.heat.set(this.before.heat);
    this.tempC.set(this.before.tempC);
    this.radiation.set(this.before.radiation);
    this.givenJ = this.givenBefore;
    this.lostJ = this.lostBefore;
  }

  /** Solves one stage: heat = base + reach × inflow. Returns the watts given. */
  private stage(reach: number, demand: Demand, stage: number): number {
    const { tempC, radiation, properties, faces, columns, zones, base } = this;
    for (let round = 1; ; round++) {
      this.rounds++;
      properties.lookUp(tempC);
      faces.evaluate(tempC, radiation);
      for (let c = 0; c < this.flat.area.length; c++) columns.condense(c, base, reach);
      zones.begin(radiation);
      zones.addFaces(faces, columns);
      const watts = zones.solve(demand, stage, radiation);
      const largest = this.change();
      const done = largest < NEAR_ENOUGH_K || round === MOST_ROUNDS;
      // The linear solution balances exactly: its heats and flows are the ones kept.
      if (done) this.keep();
      this.move(largest > MOST_CHANGE_K ? MOST_CHANGE_K / largest : 1);
      if (done) return watts;
    }
  }

  /** Every node's change, from its zones', into alpha; returns the largest, K. */
  private change(): number {
    const { faces, flat, zones } = this;
    const { alpha, byFirst, bySecond } = this.columns;
    let largest = 0;
    for (let c = 0; c < flat.area.length; c++) {
      const first = faces.zone[2 * c] as number;
      const second = faces.zone[2 * c + 1] as number;
      const ofFirst = first >= 0 ? (zones.change[first] as number) : 0;
      const ofSecond = second >= 0 ? (zones.change[second] as number) : 0;
      for (let i = flat.start[c] as number; i < (flat.start[c + 1] as number); i++) {
        const change = (alpha[i] as number) + (byFirst[i] as number) * ofFirst + (bySecond[i] as number) * ofSecond;
        alpha[i] = change;
        const size = Math.abs(change);
        if (size > largest) largest = size;
      }
    }
    return largest;
  }

  private move(share: number): void {
    const { tempC, radiation, zones } = this;
    const { alpha } = this.columns;
    for (let i = 0; i < tempC.length; i++) tempC[i] = (tempC[i] as number) + share * (alpha[i] as number);
    for (let z = 0; z < radiation.length; z++) {
      radiation[z] = Math.max(1e-4, (radiation[z] as number) + share * (zones.change[z] as number));
    }
  }

  /** Keeps the linear solution's heats, and its losses to the room. */
  private keep(): void {
    const { heat, faces } = this;
    const { content, capacity } = this.properties;
    const { alpha } = this.columns;
    for (let i = 0; i < heat.length; i++) {
      heat[i] = (content[i] as number) + (capacity[i] as number) * (alpha[i] as number);
    }
    let loss = this.zones.ventWatts();
    for (let f = 0; f < faces.count; f++) {
      if (faces.outside[f] === 0) continue;
      const change = alpha[faces.node[f] as number] as number;
      loss -= (faces.area[f] as number) * ((faces.flow[f] as number) + (faces.slope[f] as number) * change);
    }
    this.stageLoss = loss;
  }
}

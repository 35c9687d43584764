import { shelfMassKg } from "../../kiln/shelf-mass.ts";
import type { Chance } from "../../measures/seeded-chance.ts";
import { Crowding } from "../packing/crowding.ts";
import { QUICK, Separation } from "../packing/separation.ts";
import { insideTriangle } from "./balance.ts";
import type { LoadSnapshot } from "./load-search.ts";
import { standingRoom } from "./standing-room.ts";
import type { LoadTask } from "./task.ts";

// How often two pieces of a level are tried in each other's places. More changes little.
const TRIES_FOR_A_PIECE = 3;

/** What a level would rather not be: tall ware at the edge, mass to one side. Zero is best; about one is a poor level. */
function unevenness(task: LoadTask, kinds: Int32Array, places: Float64Array, count: number, radiusMm: number): number {
  let tallOut = 0;
  let heights = 0;
  let mass = 0;
  let momentX = 0;
  let momentY = 0;
  for (let i = 0; i < count; i++) {
    const kind = task.kinds[kinds[i] as number] as LoadTask["kinds"][number];
    const x = places[3 * i] as number;
    const y = places[3 * i + 1] as number;
    tallOut += kind.heightMm * kind.heightMm * Math.hypot(x, y);
    heights += kind.heightMm * kind.heightMm;
    mass += kind.massKg;
    momentX += kind.massKg * x;
    momentY += kind.massKg * y;
  }
  return tallOut / (heights * radiusMm) + Math.hypot(momentX, momentY) / (mass * radiusMm);
}

/**
 * Soft wishes, after value: tall ware toward the middle of its shelf, mass even about the axis. Pieces of a level change
 * places where all can still be parted; no piece is ever lost to it.
 */
export function settleEvenly(task: LoadTask, load: LoadSnapshot, chance: Chance): LoadSnapshot {
  const levels = load.levels.map((level, index) => {
    const count = level.kindOf.length;
    if (count < 2) return level;
    const { seat } = load.structure.levels[index] as LoadSnapshot["structure"]["levels"][number];
    const radius = Math.sqrt(seat.areaMm2 / Math.PI);
    const room = standingRoom(task, load.structure, load.columns, index);
    const separation = new Separation(new Crowding(room, task.kinds, count));
    const places = level.places.slice();
    const trial = places.slice();
    let least = unevenness(task, level.kindOf, places, count, radius);
    for (let tries = 0; tries < count * TRIES_FOR_A_PIECE; tries++) {
      const a = chance.below(count);
      const b = chance.below(count);
      if (level.kindOf[a] === level.kindOf[b]) continue;
      trial.set(places);
      for (let k = 0; k < 2; k++) {
        trial[3 * a + k] = places[3 * b + k] as number;
        trial[3 * b + k] = places[3 * a + k] as number;
      }
      // A change that would not help even if nothing had to give way is not tried.
      if (unevenness(task, level.kindOf, trial, count, radius) >= least - 1e-3) continue;
      if (!separation.part(level.kindOf, count, 0, trial, QUICK, chance, radius)) continue;
      const after = unevenness(task, level.kindOf, trial, count, radius);
      if (after >= least || !carried(task, load, index, level.kindOf, trial)) continue;
      least = after;
      places.set(trial);
    }
    return { ...level, places };
  });
  return { ...load, levels };
}

function carried(task: LoadTask, load: LoadSnapshot, index: number, kinds: Int32Array, places: Float64Array): boolean {
  const { seat } = load.structure.levels[index] as LoadSnapshot["structure"]["levels"][number];
  let mass = shelfMassKg(seat.areaMm2, seat.shelf.thicknessMm);
  let x = 0;
  let y = 0;
  kinds.forEach((kind, i) => {
    const { massKg } = task.kinds[kind] as LoadTask["kinds"][number];
    mass += massKg;
    x += massKg * (places[3 * i] as number);
    y += massKg * (places[3 * i + 1] as number);
  });
  return insideTriangle(load.columns, x / mass, y / mass);
}

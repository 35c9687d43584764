import type { Chance } from "../../measures/seeded-chance.ts";
import { Crowding } from "../packing/crowding.ts";
import { QUICK, Separation } from "../packing/separation.ts";
import { insideByMm, MARGIN_MM } from "./balance.ts";
import type { LoadSnapshot } from "./load-search.ts";
import type { Stand } from "./stand.ts";
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
 * places where all can still be parted; no piece is ever lost to it, and what is held stays.
 */
export function settleEvenly(task: LoadTask, load: LoadSnapshot, chance: Chance): LoadSnapshot {
  const levels = load.levels.map((level, index) => {
    const stand = load.frame.stands[index] as Stand;
    const count = level.kindOf.length;
    const held = stand.held.kindOf.length;
    const free = count - held;
    if (free < 2) return level;
    const radius = Math.sqrt(stand.areaMm2 / Math.PI);
    const separation = new Separation(new Crowding(stand.space, task.kinds, count, held));
    const places = level.places.slice();
    const trial = places.slice();
    let least = unevenness(task, level.kindOf, places, count, radius);
    for (let tries = 0; tries < free * TRIES_FOR_A_PIECE; tries++) {
      const a = held + chance.below(free);
      const b = held + chance.below(free);
      if (level.kindOf[a] === level.kindOf[b]) continue;
      trial.set(places);
      for (let k = 0; k < 2; k++) {
        trial[3 * a + k] = places[3 * b + k] as number;
        trial[3 * b + k] = places[3 * a + k] as number;
      }
      // A change that would not help even if nothing had to give way is not tried.
      if (unevenness(task, level.kindOf, trial, count, radius) >= least - 1e-3) continue;
      if (!separation.part(level.kindOf, count, trial, QUICK, chance, radius)) continue;
      const after = unevenness(task, level.kindOf, trial, count, radius);
      if (after >= least) continue;
      const before = insideByMm(task, stand.footing, level.kindOf, count, places);
      if (insideByMm(task, stand.footing, level.kindOf, count, trial) < Math.min(MARGIN_MM, before)) continue;
      least = after;
      places.set(trial);
    }
    return { ...level, places };
  });
  return { ...load, levels };
}

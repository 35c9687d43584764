/** A reading this far off its neighbours, and come by this fast, was never in the kiln: °C and °C/h. */
const SPIKE_C = 40;
const SPIKE_C_PER_HOUR = 2500;
/** As many readings in a row may be part of one spike. */
const LONGEST_SPIKE = 3;

/**
 * Readings of one probe that jump away from the curve and back again faster than any kiln heats or cools: a broken
 * contact, a switched relay. A kiln opened hot stays low, and is no spike.
 *
 * @param tempC °C, NaN where there is no reading
 * @returns places of the readings to leave out
 */
export function spikes(minutes: Float64Array, tempC: Float64Array): number[] {
  const found: number[] = [];
  const read = Array.from(tempC.keys()).filter((place) => Number.isFinite(tempC[place]));
  for (let i = 1; i < read.length; i++) {
    const before = read[i - 1] as number;
    const away = jump(minutes, tempC, before, read[i] as number);
    if (away === 0) continue;
    for (let length = 1; length <= LONGEST_SPIKE && i + length < read.length; length++) {
      const after = read[i + length] as number;
      const back = jump(minutes, tempC, read[i + length - 1] as number, after);
      const apart = Math.abs((tempC[after] as number) - (tempC[before] as number));
      const height = Math.abs((tempC[read[i] as number] as number) - (tempC[before] as number));
      if (back !== -away || apart > height / 2) continue;
      found.push(...read.splice(i, length));
      i--;
      break;
    }
  }
  return found;
}

/** 1 for a jump up that no kiln makes, −1 for one down, 0 for what may well be. */
function jump(minutes: Float64Array, tempC: Float64Array, from: number, to: number): -1 | 0 | 1 {
  const climb = (tempC[to] as number) - (tempC[from] as number);
  const hours = ((minutes[to] as number) - (minutes[from] as number)) / 60;
  if (Math.abs(climb) < SPIKE_C || Math.abs(climb) < SPIKE_C_PER_HOUR * hours) return 0;
  return climb > 0 ? 1 : -1;
}

/** A repeatable source of chance: the same seed gives the same run on every machine. */
export interface Chance {
  /** A number from 0 up to, not including, 1. */
  next(): number;
  /** A whole number from 0 up to, not including, `below`. */
  below(below: number): number;
}

/**
 * Chance from a seed: the xoshiro128** generator of Blackman and Vigna (Scrambled linear pseudorandom number
 * generators, ACM TOMS 47, 2021), its state filled by splitmix32.
 *
 * @param seed any whole number
 */
export function seededChance(seed: number): Chance {
  let fill = seed | 0;
  const splitmix = (): number => {
    fill = (fill + 0x9e3779b9) | 0;
    let t = fill ^ (fill >>> 16);
    t = Math.imul(t, 0x21f0aaad);
    t ^= t >>> 15;
    t = Math.imul(t, 0x735a2d97);
    return (t ^ (t >>> 15)) | 0;
  };
  let a = splitmix();
  let b = splitmix();
  let c = splitmix();
  let d = splitmix() | 1;
  const bits = (): number => {
    const product = Math.imul(b, 5);
    const result = Math.imul((product << 7) | (product >>> 25), 9);
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    return result >>> 0;
  };
  return {
    next: () => bits() / 4294967296,
    below: (below) => Math.floor((bits() / 4294967296) * below),
  };
}

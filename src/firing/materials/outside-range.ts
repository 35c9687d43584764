import type { Material } from "./material.ts";

/** A temperature for which a material has no data. */
export interface OutsideRange {
  readonly material: string;
  readonly tempC: number;
  /** Where its data hold, °C. */
  readonly validC: readonly [number, number];
  readonly message: string;
}

/**
 * Says so where a material is used beyond its data: the solver carries its values on, and whoever shows the result
 * must not keep quiet about it.
 *
 * @param tempC the hottest or coldest that the material gets, °C
 * @returns null where the data reach
 */
export function outsideRange(material: Material, tempC: number): OutsideRange | null {
  const [low, high] = material.validC;
  if (tempC >= low && tempC <= high) return null;
  const side = tempC > high ? "above" : "below";
  return {
    material: material.name,
    tempC,
    validC: material.validC,
    message: `${material.name}: the data hold from ${low} to ${high} °C; ${Math.round(tempC)} °C is ${side} them, and what is reckoned there is only carried on.`,
  };
}

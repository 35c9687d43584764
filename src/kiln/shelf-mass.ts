// Cordierite, the usual shelf of a small electric kiln: 1800–2400 kg/m³ (abref.in technical page; the middle is taken).
const CORDIERITE_KG_PER_MM3 = 2.1e-6;

/** A shelf's mass in kilograms, from the area it covers and its thickness, as cordierite. */
export const shelfMassKg = (areaMm2: number, thicknessMm: number): number =>
  areaMm2 * thicknessMm * CORDIERITE_KG_PER_MM3;

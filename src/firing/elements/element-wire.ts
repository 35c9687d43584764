/** Iron-chromium-aluminium wire, 22 % Cr and 5.8 % Al: what most kiln elements are wound from. */
export const ELEMENT_WIRE = {
  hottestC: 1400,
  /** [°C, resistance as a multiple of that when cold]. */
  resistanceFactor: [
    [20, 1],
    [400, 1],
    [500, 1.01],
    [600, 1.02],
    [700, 1.02],
    [800, 1.03],
    [900, 1.03],
    [1000, 1.04],
    [1300, 1.04],
    [1400, 1.05],
  ] as readonly (readonly [celsius: number, factor: number])[],
  source: "a wire maker's data sheet for 22Cr-5.8Al (Kanthal A-1), resistance factor Ct",
} as const;

/** How many times its cold resistance hot wire has; level below 20 and above 1400 °C, where the wire itself ends. */
export function resistanceFactor(celsius: number): number {
  const table = ELEMENT_WIRE.resistanceFactor;
  for (let i = 1; i < table.length; i++) {
    const [upperC, upper] = table[i] as readonly [number, number];
    if (celsius > upperC) continue;
    const [lowerC, lower] = table[i - 1] as readonly [number, number];
    return lower + Math.max(0, (celsius - lowerC) / (upperC - lowerC)) * (upper - lower);
  }
  return (table.at(-1) as readonly [number, number])[1];
}

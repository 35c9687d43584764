import { planeWall } from "./exact-solutions.ts";
import type { HandbookResult } from "./handbook-result.ts";
import { after, column, evenLayer, settled, steadyMaterial } from "./through-solver.ts";

const MOST_PERCENT = 0.05;
const percent = (found: number, exact: number, whole = exact): number => Math.abs((100 * (found - exact)) / whole);

/** A wall shut at its middle or back, in air on the other side: middle, surface, flux and mean against the series. */
function wallInAir(
  id: string,
  wall: {
    halfM: number;
    k: number;
    diffusivity: number;
    film: number;
    startC: number;
    airC: number;
    seconds: number;
    /** Where the book asks: 0 at the shut side, 1 at the surface. */
    askedAt: 0 | 1;
  },
): HandbookResult {
  const { halfM, k, diffusivity, film, startC, airC, seconds, askedAt } = wall;
  const cells = 100;
  const layer = evenLayer(steadyMaterial(k, k / diffusivity), halfM, cells);
  const solver = after(seconds, startC, [
    column([layer], { kind: "none" }, { kind: "air", airC, wattsPerM2K: film, emissivity: 0 }),
  ]);
  const series = planeWall((film * halfM) / k, (diffusivity * seconds) / (halfM * halfM));
  const difference = startC - airC;
  const errors = Array.from(solver.tempC, (tempC, i) =>
    percent(tempC, airC + difference * series.at(i / cells), difference),
  );
  const flux = film * ((solver.tempC[cells] as number) - airC);
  errors.push(percent(flux, film * difference * series.at(1)));
  // All heat taken up: what a wall of this thickness gains until it is as warm as the air, less what is left.
  errors.push(percent(-solver.lostJ, (k / diffusivity) * halfM * -difference * (1 - series.mean)));
  return {
    id,
    exact: airC + difference * series.at(askedAt),
    found: solver.tempC[askedAt * cells] as number,
    unit: "°C",
    error: Math.max(...errors),
    errorUnit: "%",
    most: MOST_PERCENT,
  };
}

/** Two layers and a film in series, settled. */
function composite(): HandbookResult {
  const layers = [evenLayer(steadyMaterial(0.2, 525000), 0.076, 14), evenLayer(steadyMaterial(0.1, 145000), 0.025, 5)];
  const { tempC } = settled(25, [
    column(layers, { kind: "fixed", tempC: 1200 }, { kind: "air", airC: 25, wattsPerM2K: 15, emissivity: 0 }),
  ]);
  const exact = (1200 - 25) / (0.076 / 0.2 + 0.025 / 0.1 + 1 / 15);
  const found = 15 * ((tempC.at(-1) as number) - 25);
  const joint = 1200 - exact * (0.076 / 0.2);
  const error = Math.max(percent(found, exact), percent(tempC[14] as number, joint, 1175));
  return { id: "composite", exact, found, unit: "W/m²", error, errorUnit: "%", most: MOST_PERCENT };
}

/** k = k0 (1 + bT): the conductivity integral makes the flux exact and the temperature a root. */
function changingConductivity(): HandbookResult {
  const [k0, b, thicknessM, hotC, coldC] = [0.1, 0.0012, 0.076, 1220, 80];
  const k = (tempC: number): number => k0 * (1 + b * tempC);
  const cells = 14;
  const material = {
    ...steadyMaterial(k0, 525000),
    conductivity: [
      [-100, k(-100)],
      [1600, k(1600)],
    ] as const,
  };
  const layer = evenLayer(material, thicknessM, cells);
  const { tempC } = settled(80, [column([layer], { kind: "fixed", tempC: hotC }, { kind: "fixed", tempC: coldC })]);
  const integral = (each: number): number => k0 * (each + (b / 2) * each * each);
  const exact = (integral(hotC) - integral(coldC)) / thicknessM;
  const tempAt = (share: number): number => {
    const target = integral(hotC) - share * (integral(hotC) - integral(coldC));
    return (Math.sqrt(1 + (2 * b * target) / k0) - 1) / b;
  };
  const errors = Array.from(tempC, (each, i) => percent(each, tempAt(i / cells), hotC - coldC));
  // The flux between the two nodes at the middle, by the mean conductivity, which is exact for a straight k.
  const [left, right] = [tempC[6] as number, tempC[7] as number];
  const found = (k((left + right) / 2) * (left - right)) / (thicknessM / cells);
  errors.push(percent(found, exact));
  return { id: "kT_slab", exact, found, unit: "W/m²", error: Math.max(...errors), errorUnit: "%", most: MOST_PERCENT };
}

export function slabs(): HandbookResult[] {
  return [
    wallInAir("plane_wall", {
      halfM: 0.04,
      k: 63.9,
      diffusivity: 18.8e-6,
      film: 500,
      startC: -20,
      airC: 60,
      seconds: 480,
      askedAt: 0,
    }),
    wallInAir("plane_wall_brass", {
      halfM: 0.02,
      k: 110,
      diffusivity: 33.9e-6,
      film: 120,
      startC: 20,
      airC: 500,
      seconds: 420,
      askedAt: 1,
    }),
    composite(),
    changingConductivity(),
  ];
}

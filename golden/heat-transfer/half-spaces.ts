import type { Face } from "../../src/firing/thermal/network.ts";
import { crossing, givenFlux, heldFace, throughFilm } from "./exact-solutions.ts";
import type { HandbookResult } from "./handbook-result.ts";
import { after, column, evenLayer, steadyMaterial } from "./through-solver.ts";

interface HalfSpace {
  readonly id: string;
  readonly k: number;
  readonly heatPerM3: number;
  readonly startC: number;
  readonly seconds: number;
  readonly face: Face;
  readonly exact: (depthM: number, reachM: number) => number;
  /** What the book asks for, from the temperature at a depth. */
  readonly asked: (tempC: (depthM: number) => number) => number;
  readonly unit: string;
}

const CASES: readonly HalfSpace[] = [
  {
    id: "semi_inf_T",
    k: 0.52,
    heatPerM3: 2050 * 1840,
    startC: 20,
    seconds: 60 * 86400,
    face: { kind: "fixed", tempC: -15 },
    exact: (depthM, reachM) => heldFace(-15, 20, depthM, reachM),
    asked: (tempC) => crossing(tempC, 0, 3),
    unit: "m",
  },
  {
    id: "semi_inf_T_2",
    k: 0.4,
    heatPerM3: 0.4 / 0.15e-6,
    startC: 15,
    seconds: 90 * 86400,
    face: { kind: "fixed", tempC: -10 },
    exact: (depthM, reachM) => heldFace(-10, 15, depthM, reachM),
    asked: (tempC) => crossing(tempC, 0, 3),
    unit: "m",
  },
  {
    id: "semi_inf_q",
    k: 0.25,
    heatPerM3: 500 * 1050,
    startC: 20,
    seconds: 3600,
    face: { kind: "flux", wattsPerM2: 2000 },
    exact: (depthM, reachM) => givenFlux(20, 2000, 0.25, depthM, reachM),
    asked: (tempC) => tempC(0),
    unit: "°C",
  },
  {
    id: "semi_inf_q_al",
    k: 237,
    heatPerM3: 237 / 9.71e-5,
    startC: 20,
    seconds: 1200,
    face: { kind: "flux", wattsPerM2: 1250 },
    exact: (depthM, reachM) => givenFlux(20, 1250, 237, depthM, reachM),
    asked: (tempC) => tempC(0),
    unit: "°C",
  },
  {
    id: "semi_inf_h",
    k: 0.2,
    heatPerM3: 525000,
    startC: 20,
    seconds: 1800,
    face: { kind: "air", airC: 1000, wattsPerM2K: 100, emissivity: 0 },
    exact: (depthM, reachM) => throughFilm(20, 1000, 100 / 0.2, depthM, reachM),
    asked: (tempC) => tempC(0.02),
    unit: "°C",
  },
];

/** A half-space is a slab ten reaches deep, shut at its back: what comes back from there is under 1e-11 of the whole. */
const REACHES = 10;
const CELLS = 1000;

/** Every half-space of the handbooks: the worst error anywhere in it, kelvin. */
export function halfSpaces(): HandbookResult[] {
  return CASES.map(({ id, k, heatPerM3, startC, seconds, face, exact, asked, unit }) => {
    const reachM = Math.sqrt((k / heatPerM3) * seconds);
    const depthM = REACHES * reachM;
    const layer = evenLayer(steadyMaterial(k, heatPerM3), depthM, CELLS);
    const { tempC } = after(seconds, startC, [column([layer], face, { kind: "none" })]);
    const worst = tempC.reduce(
      (most, each, i) => Math.max(most, Math.abs(each - exact((i * depthM) / CELLS, reachM))),
      0,
    );
    const between = (at: number): number => {
      const place = (at / depthM) * CELLS;
      const i = Math.min(CELLS - 1, Math.floor(place));
      return (tempC[i] as number) + (place - i) * ((tempC[i + 1] as number) - (tempC[i] as number));
    };
    return {
      id,
      exact: asked((at) => exact(at, reachM)),
      found: asked(between),
      unit,
      error: worst,
      errorUnit: "K",
      most: 0.01,
    };
  });
}

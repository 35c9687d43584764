import type { Zone } from "../../src/firing/thermal/network.ts";
import { SIGMA } from "../../src/firing/thermal/radiation.ts";
import { crossing, radiatingSeconds, STEFAN_BOLTZMANN } from "./exact-solutions.ts";
import type { HandbookResult } from "./handbook-result.ts";
import { after, column, evenLayer, settled, steadyMaterial } from "./through-solver.ts";

const MOST_PERCENT = 0.05;
const KELVIN = 273.15;
const percent = (found: number, exact: number, whole = exact): number => Math.abs((100 * (found - exact)) / whole);

/** A lump cooling by radiation alone: a slab of one cell that conducts so well that it is of one temperature. */
function lump(): HandbookResult {
  const [emissivity, heatPerArea, fromK, wallsK] = [0.8, 2100 * 0.0035 * 1100, 1500, 300];
  const layer = evenLayer(steadyMaterial(1e5, 2100 * 1100), 0.0035, 1);
  const face = { kind: "air", airC: wallsK - KELVIN, wattsPerM2K: 0, emissivity } as const;
  const errors: number[] = [];
  let [exact, found] = [0, 0];
  for (const seconds of [60, 600, 1800, 3600]) {
    exact = crossing(
      (kelvin) => radiatingSeconds(emissivity, heatPerArea, fromK, kelvin, wallsK) - seconds,
      300.001,
      1500,
    );
    found = (after(seconds, fromK - KELVIN, [column([layer], face, { kind: "none" })]).tempC[0] as number) + KELVIN;
    errors.push(percent(found, exact));
  }
  return { id: "lumped_rad", exact, found, unit: "K", error: Math.max(...errors), errorUnit: "%", most: MOST_PERCENT };
}

/**
 * A thermocouple's bead in hot gas between hotter walls: two outer faces of one cell, one for the film and one for the
 * radiation, each of the bead's whole surface. Until within a degree of where it settles; fourth-order Runge and Kutta beside it.
 */
function bead(): HandbookResult[] {
  // Incropera Example 5.1 gives the bead: 8500 kg/m³, 400 J/kgK, diameter 0.706 mm (6e edition, from memory).
  const [film, gasC, wallsC, emissivity, heatPerArea] = [400, 200, 400, 0.9, (8500 * 400 * 7.06e-4) / 6];
  const inflow = (tempC: number): number =>
    film * (gasC - tempC) + emissivity * STEFAN_BOLTZMANN * ((wallsC + KELVIN) ** 4 - (tempC + KELVIN) ** 4);
  const layer = evenLayer(steadyMaterial(1e5, 8500 * 400), 7.06e-4 / 6, 1);
  const slab = column(
    [layer],
    { kind: "air", airC: gasC, wattsPerM2K: film, emissivity: 0 },
    { kind: "air", airC: wallsC, wattsPerM2K: 0, emissivity },
  );
  const settledC = crossing(inflow, 0, 400);
  const steady = settled(25, [slab]).tempC[0] as number;
  let tempC = 25;
  const step = 1e-4;
  for (let n = 0; n < 4.9 / step - 0.5; n++) {
    const a = inflow(tempC) / heatPerArea;
    const b = inflow(tempC + (a * step) / 2) / heatPerArea;
    const c = inflow(tempC + (b * step) / 2) / heatPerArea;
    const d = inflow(tempC + c * step) / heatPerArea;
    tempC += (step * (a + 2 * b + 2 * c + d)) / 6;
  }
  const found = after(4.9, 25, [slab]).tempC[0] as number;
  return [
    {
      id: "lumped_rad_conv",
      exact: settledC,
      found: steady,
      unit: "°C",
      error: percent(steady, settledC),
      errorUnit: "%",
      most: MOST_PERCENT,
    },
    {
      id: "lumped_rad_conv_time",
      exact: tempC,
      found,
      unit: "°C",
      error: percent(found, tempC),
      errorUnit: "%",
      most: MOST_PERCENT,
    },
  ];
}

const zone: Zone = { name: "gap", openAboveM2: 0, leakWattsPerK: 0, powerShare: 0 };
/**
 * A zone is one node between what faces it. Two plates see each other through (1 − ε)/ε at each and 1 between them, so half
 * of that 1 lies on either side of the node: each face passes 1 / (1/ε − 1/2).
 */
const toMiddle = (emissivity: number): number => 1 / (1 / emissivity - 0.5);
const sheet = evenLayer(steadyMaterial(1e4, 1e6), 0.001, 1);
const hot = column(
  [sheet],
  { kind: "fixed", tempC: 800 - KELVIN },
  { kind: "zone", zone: 0, emissivity: toMiddle(0.2) },
);
const cold = (seenZone: number) =>
  column([sheet], { kind: "zone", zone: seenZone, emissivity: toMiddle(0.7) }, { kind: "fixed", tempC: 500 - KELVIN });

/** What leaves the hot plate: by its surface and its zone. */
function leaving(tempC: number, radiation: number): number {
  return SIGMA * toMiddle(0.2) * (((tempC + KELVIN) / 1000) ** 4 - radiation);
}

function plates(): HandbookResult[] {
  const drive = STEFAN_BOLTZMANN * (800 ** 4 - 500 ** 4);
  const bare = settled(400, [hot, cold(0)], [zone]);
  const exact = drive / (1 / 0.2 + 1 / 0.7 - 1);
  const found = leaving(bare.tempC[1] as number, bare.radiation[0] as number);
  // A shield between, seen from both sides: a column that joins two zones, as a kiln shelf does.
  const shield = column(
    [sheet],
    { kind: "zone", zone: 0, emissivity: toMiddle(0.1) },
    { kind: "zone", zone: 1, emissivity: toMiddle(0.1) },
  );
  const shielded = settled(400, [hot, shield, cold(1)], [zone, zone]);
  const exactShielded = drive / (1 / 0.2 + 1 / 0.7 - 1 + (1 / 0.1 + 1 / 0.1 - 1));
  const foundShielded = leaving(shielded.tempC[1] as number, shielded.radiation[0] as number);
  const row = (id: string, exactFlux: number, flux: number): HandbookResult => ({
    id,
    exact: exactFlux,
    found: flux,
    unit: "W/m²",
    error: percent(flux, exactFlux),
    errorUnit: "%",
    most: MOST_PERCENT,
  });
  return [row("plates", exact, found), row("plates_shield", exactShielded, foundShielded)];
}

export function radiating(): HandbookResult[] {
  return [lump(), ...bead(), ...plates()];
}

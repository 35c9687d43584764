import type { Material } from "./material.ts";

/** Celsius of a formula in kelvin, at a few points: straight lines between them are closer than the data are. */
const inKelvin = (formula: (kelvin: number) => number, points: readonly number[]): [number, number][] =>
  points.map((celsius) => [celsius, formula(celsius + 273.15)]);

export const BRICK_23: Material = {
  name: "insulating fire brick, class 23",
  source:
    "k = 0.12 + 1.65e-4 T[K] and 500 kg/m³: a prototype's default, within 0.015 W/mK of the list values of a 604 kg/m³ brick (building-hardware.com 2011) and consistent with two metered firings under an assumed 18 kg load; cp 1050 from a data sheet, from memory",
  validC: [0, 1260],
  densityKgPerM3: 500,
  conductivity: inKelvin((kelvin) => 0.12 + 1.65e-4 * kelvin, [-100, 1600]),
  specificHeat: [[20, 1050]],
};

export const BRICK_26: Material = {
  name: "insulating fire brick, class 26",
  source:
    "k and cp from a data sheet, from memory; density a distributor's table to ASTM C155-97 (ciccorp), its middle",
  validC: [0, 1430],
  densityKgPerM3: 800,
  conductivity: [
    [400, 0.25],
    [600, 0.27],
    [800, 0.3],
    [1000, 0.33],
  ],
  specificHeat: [[20, 1100]],
};

export const FIBRE: Material = {
  name: "ceramic fibre blanket, 128 kg/m³, 1260 grade",
  source: "from memory",
  validC: [0, 1260],
  densityKgPerM3: 128,
  conductivity: [
    [20, 0.04],
    [400, 0.1],
    [600, 0.16],
    [800, 0.23],
    [1000, 0.31],
    [1260, 0.41],
  ],
  specificHeat: [[20, 1130]],
};

export const CORDIERITE: Material = {
  name: "cordierite shelf",
  source:
    "density 1800–2400 kg/m³: abref.in technical page, its middle; k 1.0–2.0 and cp 800–1200, from memory, their middles",
  validC: [0, 1300],
  densityKgPerM3: 2100,
  conductivity: [[20, 1.5]],
  specificHeat: [
    [20, 800],
    [1200, 1200],
  ],
};

/** Michot, Smith, Degot, Lecomte-Nana, J. Eur. Ceram. Soc. 31 (2011) 1377: 1128 + 0.102 T − 36e6/T² J/kgK, T in K, 313–1373 K. */
const firedClayHeat = inKelvin(
  (kelvin) => 1128 + 0.102 * kelvin - 36e6 / (kelvin * kelvin),
  [40, 60, 80, 100, 150, 200, 300, 400, 600, 800, 1100],
);

export const STONEWARE: Material = {
  name: "fired clay",
  source:
    "cp: Michot et al., J. Eur. Ceram. Soc. 31 (2011) 1377 (dehydroxylated kaolin); density and k of vitrified stoneware from memory",
  validC: [40, 1100],
  densityKgPerM3: 2300,
  conductivity: [[20, 1.5]],
  specificHeat: firedClayHeat,
};

/** Free water left in ware that is called dry: a common allowance. Common practice, no source. */
export const DRY_WARE_WATER = 0.01;

const QUARTZ = { name: "quartz", fromC: 565, toC: 581, joulesPerKg: 0.25 * 10e3 } as const;

/** Greenware once it is fired: its water is gone for good; quartz turns, and gives its heat back, every time. */
export const FIRED_GREENWARE: Material = {
  name: "greenware, fired",
  source:
    "as greenware, its water gone; quartz 0.25 of the body, 573 °C, 10 kJ/kg (6–15, from memory), reversible (Dodd & Murfin, Dictionary of Ceramics)",
  validC: [40, 1100],
  densityKgPerM3: 1850,
  conductivity: [[20, 0.6]],
  specificHeat: firedClayHeat,
  reactions: [QUARTZ],
};

/**
 * Greenware: the clay's own heat, the water left in it driven off below and at boiling, the water of the clay minerals
 * between 450 and 650 °C, and quartz turning at 573 °C.
 *
 * @param waterShare free water as a share of the dry weight, 0 to 0.3
 */
export function greenware(waterShare: number): Material {
  return {
    ...FIRED_GREENWARE,
    name: "greenware",
    source:
      "density and k of dry clay from memory; water 2.26 MJ/kg (steam tables); kaolinite 0.5 of the body, 450–650 °C, 550 kJ/kg (middle of 450–650, from memory); quartz as fired",
    reactions: [
      { name: "drying", fromC: 80, toC: 110, joulesPerKg: waterShare * 2.26e6 },
      { name: "chemical water", fromC: 450, toC: 650, joulesPerKg: 0.5 * 550e3 },
      QUARTZ,
    ],
    fired: { aboveC: 650, as: FIRED_GREENWARE },
  };
}

/** Share of radiation taken up. From memory. */
export const EMISSIVITY = { brick: 0.75, shelf: 0.8, ware: 0.85, jacket: 0.35 } as const;

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { at, type Material } from "../../src/firing/materials/material.ts";
import * as rows from "../../src/firing/materials/materials.ts";

interface Range {
  readonly material: string;
  readonly of: "conductivity" | "density" | "specificHeat";
  readonly tempC?: readonly [number, number];
  readonly points?: readonly (readonly [number, number])[];
  readonly lowest: number;
  readonly highest: number;
}
const file = JSON.parse(readFileSync(join(import.meta.dirname, "materials-ranges.json"), "utf8")) as {
  ranges: Range[];
  clayHeat: { tempK: [number, number] };
  reactions: { name: string; fromC?: number; toC?: number; nearC?: number; kiloJoulesPerKg: [number, number] }[];
  emissivity: { name: keyof typeof rows.EMISSIVITY; value: number }[];
};
const green = rows.greenware(rows.DRY_WARE_WATER);
const isMaterial = (each: unknown): each is Material => typeof each === "object" && each !== null && "validC" in each;
const ALL: Material[] = [...Object.values(rows).filter(isMaterial), green];

test("every row of the materials is held to a range, in each of its properties", () => {
  for (const { name } of ALL) {
    const held = file.ranges.filter((range) => range.material === name).map((range) => range.of);
    // Clay's specific heat has its own check, against the paper's formula.
    const clay = name === "fired clay" || name.startsWith("greenware");
    expect(held.sort(), name).toEqual(clay ? ["conductivity", "density"] : ["conductivity", "density", "specificHeat"]);
  }
  expect(new Set(file.ranges.map((range) => range.material)).size).toBe(ALL.length);
});

for (const range of file.ranges) {
  test(`${range.material}: ${range.of} lies where its sources put it`, () => {
    const material = ALL.find((each) => each.name === range.material) as Material;
    if (range.of === "density") {
      expect(material.densityKgPerM3).toBeGreaterThanOrEqual(range.lowest);
      expect(material.densityKgPerM3).toBeLessThanOrEqual(range.highest);
      return;
    }
    const [from, to] = range.tempC as [number, number];
    for (let tempC = from; tempC <= to; tempC += 5) {
      const value = at(material[range.of], tempC);
      expect(value, `${tempC} °C`).toBeGreaterThanOrEqual(range.lowest);
      expect(value, `${tempC} °C`).toBeLessThanOrEqual(range.highest);
    }
    for (const [tempC, value] of range.points ?? []) expect(at(material[range.of], tempC)).toBe(value);
  });
}

test("clay's specific heat follows the paper's formula within a half per cent over its range", () => {
  let worst = 0;
  for (let kelvin = file.clayHeat.tempK[0] + 1; kelvin <= file.clayHeat.tempK[1]; kelvin++) {
    const formula = 1128 + 0.102 * kelvin - 36e6 / kelvin ** 2;
    worst = Math.max(worst, Math.abs(at(rows.STONEWARE.specificHeat, kelvin - 273.15) / formula - 1));
  }
  console.log(`clay's specific heat between its points: worst ${(100 * worst).toFixed(2)} %`);
  expect(worst).toBeLessThan(0.005);
  expect(green.specificHeat).toBe(rows.STONEWARE.specificHeat);
});

test("brick of class 23 is within 0.015 W/mK of a heavier brick's list values, as its source says", () => {
  for (const [tempC, k] of [
    [300, 0.2],
    [750, 0.28],
    [1000, 0.32],
  ] as const) {
    const apart = at(rows.BRICK_23.conductivity, tempC) - k;
    console.log(`class 23 at ${tempC} °C: ${apart.toFixed(4)} W/mK from the 604 kg/m³ brick`);
    expect(Math.abs(apart)).toBeLessThanOrEqual(0.015);
  }
});

test("heats of reaction and emissivities are those of the sources", () => {
  const shares: Record<string, number> = { "chemical water": 0.5, quartz: 0.25, drying: rows.DRY_WARE_WATER };
  for (const known of file.reactions) {
    const reaction = green.reactions?.find((each) => each.name === known.name);
    if (reaction === undefined) throw new Error(`greenware has no ${known.name}`);
    const ofPure = reaction.joulesPerKg / 1000 / (shares[known.name] as number);
    expect(ofPure).toBeGreaterThanOrEqual(known.kiloJoulesPerKg[0]);
    expect(ofPure).toBeLessThanOrEqual(known.kiloJoulesPerKg[1]);
    if (known.fromC !== undefined) expect([reaction.fromC, reaction.toC]).toEqual([known.fromC, known.toC]);
    if (known.nearC !== undefined) expect((reaction.fromC + reaction.toC) / 2).toBe(known.nearC);
  }
  for (const { name, value } of file.emissivity) expect(rows.EMISSIVITY[name]).toBe(value);
});

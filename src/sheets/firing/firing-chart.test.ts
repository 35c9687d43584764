import { describe, expect, test } from "vitest";
import { group, svgText } from "../svg-writer.ts";
import { findAll, findTexts, type ReadElement, readSvg } from "../testing/read-svg.ts";
import { type FiringChart, firingChart } from "./firing-chart.ts";
import { handMadeFiring } from "./testing/firing-case.ts";

const WIDTH = 180;
const HEIGHT = 96;
const { chart } = handMadeFiring();
const drawn = (given: FiringChart = chart, units: "C" | "F" = "C"): ReadElement =>
  readSvg(svgText(group(firingChart(given, WIDTH, HEIGHT, units).marks)));
const numbersOf = (path: ReadElement): [number, number][] =>
  [...(path.attributes.d ?? "").matchAll(/[ML] (\S+) (\S+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
const lines = (root: ReadElement): ReadElement[] =>
  findAll(root, ({ name, attributes }) => name === "path" && attributes.fill === "none");
/** Where an axis label stands, by the label. */
const labelAt = (root: ReadElement, text: string): { x: number; y: number } => {
  const found = findTexts(root).find((each) => each.text === text);
  if (!found) throw new Error(`no label ${text}`);
  return found;
};

test("draws the programme, the probe and every level, all within its box", () => {
  const root = drawn();
  expect(lines(root)).toHaveLength(1 + 1 + chart.levels.length);
  for (const path of findAll(root, ({ name }) => name === "path")) {
    for (const [x, y] of numbersOf(path)) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(WIDTH);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(HEIGHT);
    }
  }
});

test("a point of a curve lies where the axes say: 700 °C after 4 h, read off the labels by straight lines", () => {
  const root = drawn();
  const [zero, six] = [labelAt(root, "0"), labelAt(root, "600")];
  const hourZero = findTexts(root)
    .filter(({ text }) => text === "0")
    .at(-1) as { x: number };
  const hourFour = labelAt(root, "4");
  const probe = lines(root).at(-1) as ReadElement;
  const [x, y] = numbersOf(probe)[2] as [number, number];
  expect(x).toBeCloseTo(hourFour.x, 2);
  expect(hourFour.x).toBeGreaterThan(hourZero.x);
  // Labels stand 1 mm under their lines, all alike.
  expect(y + 1).toBeCloseTo(zero.y + ((six.y - zero.y) * 700) / 600, 2);
});

test("names every cone that falls, side by side, each with a dot on the curve", () => {
  const root = drawn();
  const labels = chart.cones.map(({ cone }) =>
    findTexts(root).find(({ text, element }) => text === cone && element.attributes["font-weight"] === "bold"),
  );
  const places = labels.map((label) => label?.x as number);
  for (let i = 1; i < places.length; i++) {
    expect((places[i] as number) - (places[i - 1] as number)).toBeGreaterThanOrEqual(6.9);
  }
  expect(findAll(root, ({ name }) => name === "circle")).toHaveLength(chart.cones.length);
});

describe("the power beneath", () => {
  test("says full power and never rises above its strip", () => {
    const root = drawn();
    expect(findTexts(root).some(({ text }) => text === "power, of 5.5 kW")).toBe(true);
    const area = findAll(
      root,
      ({ name, attributes }) => name === "path" && attributes.fill !== "none",
    )[0] as ReadElement;
    const heights = numbersOf(area).map(([, y]) => y);
    const foot = heights[0] as number;
    expect(Math.max(...heights)).toBe(foot);
    // 20 mm of strip, less 5 of air for its name.
    expect(foot - Math.min(...heights)).toBeCloseTo(15, 2);
  });

  test("is left out where it is not known", () => {
    const root = drawn({ ...chart, power: null });
    expect(findTexts(root).some(({ text }) => text.startsWith("power"))).toBe(false);
  });
});

test("in °F the axis counts in 500 °F, and the same point stays where it is", () => {
  const root = drawn(chart, "F");
  const [zero, two] = [labelAt(root, "500"), labelAt(root, "2000")];
  const [, y] = numbersOf(lines(root).at(-1) as ReadElement)[2] as [number, number];
  // 700 °C is 1292 °F.
  expect(y + 1).toBeCloseTo(zero.y + ((two.y - zero.y) * (1292 - 500)) / 1500, 1);
});

test("what comes after the chart's end is not drawn beyond it", () => {
  const root = drawn({ ...chart, untilMin: 300 });
  for (const path of lines(root)) {
    for (const [x] of numbersOf(path)) expect(x).toBeLessThanOrEqual(WIDTH - 4 + 1e-6);
  }
});

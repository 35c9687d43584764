import { describe, expect, test } from "vitest";
import { curveThrough } from "../../../firing/heat-work/curve.ts";
import { heatWork } from "../../../firing/heat-work/heat-work.ts";
import { type ChartSeries, heatWorkSeries } from "./chart-series.ts";
import { hoursWords, momentRows, temperatureAt } from "./chart-words.ts";
import { coneTicks, degreeTicks, hourTicks } from "./cone-scale.ts";

const line = (name: string, look: ChartSeries["look"], corners: [number, number][]): ChartSeries => ({
  name,
  look,
  ...curveThrough(corners),
});
const up = line("foretold", "foretold", [
  [0, 20],
  [600, 1220],
  [660, 1000],
]);

describe("the chart in words", () => {
  test("minutes as she would say them", () => {
    expect([0, 45, 60, 365.4, 1440].map(hoursWords)).toEqual([
      "0 min",
      "45 min",
      "1 h 00 min",
      "6 h 05 min",
      "24 h 00 min",
    ]);
  });

  test("a line is read straight between its points, and nowhere beyond them or in a gap", () => {
    expect(temperatureAt(up, 300)).toBeCloseTo(620);
    expect(temperatureAt(up, 630)).toBeCloseTo(1110);
    expect(temperatureAt(up, 661)).toBeNull();
    expect(temperatureAt({ ...up, tempC: [20, Number.NaN, 1000] }, 300)).toBeNull();
  });

  test("its moments stand in order of time, each with what every line shows, in her degrees", () => {
    const rows = momentRows([up], [{ what: "cone 6 down", atMin: 598, tempC: 1216, short: "6" }], "F");
    expect(rows.map(({ what }) => what)).toEqual(["start", "cone 6 down", "foretold: highest"]);
    // 1220 °C is 2228 °F.
    expect(rows.map(({ shown }) => shown[0])).toEqual(["68 °F", "2221 °F", "2228 °F"]);
  });
});

describe("heat work on the scale of cones", () => {
  test("a steady 60 °C/h lays each cone down where the second scale names it", () => {
    const climb = curveThrough([
      [0, 20],
      [1230, 1250],
    ]);
    const series = heatWorkSeries(heatWork(climb), "heat work", 1300);
    const whole = coneTicks(500, 1240, 0);
    for (const { tempC } of whole) {
      const at = Array.from(series.tempC).findIndex((each) => Math.abs(each - tempC) < 1e-6);
      expect(at).toBeGreaterThanOrEqual(0);
      // The curve climbs a degree a minute, so the minute tells its temperature; the model keeps the table to a few degrees.
      expect(Math.abs((series.minutes[at] as number) + 20 - tempC)).toBeLessThan(5);
    }
    expect(Array.from(series.minutes).at(-1)).toBe(1300);
  });

  test("what is not fired has no line", () => {
    expect(
      heatWorkSeries(
        heatWork(
          curveThrough([
            [0, 20],
            [60, 80],
          ]),
        ),
        "w",
        60,
      ).minutes,
    ).toEqual([]);
  });
});

describe("the scales", () => {
  test("the hottest cone that shows is always named, and no two stand too close", () => {
    // Cone 6 falls at 1222 °C and cone 7 at 1239 at 60 °C/h (the published table of cones).
    const ticks = coneTicks(0, 1230, 40);
    expect(ticks.at(-1)?.cone).toBe("6");
    ticks.slice(1).forEach(({ tempC }, i) => {
      expect(tempC - (ticks[i]?.tempC ?? 0)).toBeGreaterThanOrEqual(40);
    });
  });

  test("degrees and hours come in round steps, no more than there is room for", () => {
    expect(degreeTicks(32, 2300, 6)).toEqual([500, 1000, 1500, 2000]);
    expect(degreeTicks(0, 1300, 7)).toEqual([0, 200, 400, 600, 800, 1000, 1200]);
    expect(hourTicks(0, 600, 5)).toEqual([0, 120, 240, 360, 480, 600]);
    expect(hourTicks(50, 100, 4)).toEqual([60, 75, 90]);
  });
});

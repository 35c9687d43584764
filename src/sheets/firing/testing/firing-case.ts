import type { FiringSheet } from "../firing-pages.ts";

/** An invented firing's sheet, set by hand: names that need escaping, one segment at full power, a level without a cone. */
export function handMadeFiring(): FiringSheet {
  const minutes = [0, 60, 240, 480, 500, 800];
  const probe = [20, 100, 700, 1200, 1200, 600];
  return {
    kiln: "shed <kiln> & co",
    programmeName: "slow & “even”",
    keyIn: [
      { segment: 1, rate: 80, target: 120, holdMin: 20, stage: "drying", reason: "" },
      { segment: 2, rate: null, target: 1100, holdMin: 0, stage: "climb", reason: "As fast as the kiln <can>." },
      {
        segment: 3,
        rate: 60,
        target: 1215,
        holdMin: 10,
        stage: "last hundred",
        reason: "The rate cones are made for.",
      },
    ],
    chart: {
      programme: { name: "programme", minutes: [0, 75, 320, 440], tempC: [20, 120, 1100, 1215] },
      probe: { name: "probe", minutes, tempC: probe },
      levels: [
        { name: "level 1", minutes, tempC: probe.map((each) => each - 10) },
        { name: "level 2", minutes, tempC: probe.map((each) => each + 5) },
      ],
      power: { minutes, powerW: [0, 2000, 5000, 5500, 3000, 0], fullW: 5500 },
      cones: [
        { cone: "4", downAtMin: 470, tempC: 1180 },
        { cone: "5", downAtMin: 480, tempC: 1200 },
        { cone: "6", downAtMin: 498, tempC: 1200 },
      ],
      untilMin: 900,
    },
    hours: 8.3333,
    kWh: 31.24,
    cost: "8.12 EUR by its tariff",
    peakC: 1215,
    levels: [
      { level: 0, peakC: 1204, cone: "cone 5 down, 60 % of the way to cone 6", offsetC: -11 },
      { level: 1, peakC: 1219, cone: "no cone down", offsetC: 0.2 },
    ],
    coolHours: [
      { tempC: 200, hours: 15.5, means: "Plugs may come out; the lid stays shut." },
      { tempC: 50, hours: null, means: "Unload with bare hands." },
    ],
    looks: [
      { minutes: 455, what: "the cones should still stand." },
      { minutes: 500, what: "see that it has shut off. Stay until it has." },
    ],
    troubles: ["From about 1020 °C the kiln falls behind segment 2."],
    advice: ["Level 1 runs cool: 11 °C of heat work less than level 2.", "Give the lowest third 20 % more power."],
    notes: ["Elements of 5.5 kW, usual for 57 litres."],
  };
}

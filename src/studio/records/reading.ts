import { BadInput, shown } from "../../measures/bad-input.ts";
import { checkKeepable, checkMoment } from "./fields.ts";

/** One temperature, from one probe, at one moment. */
export interface Reading {
  readonly at: string;
  readonly tempC: number;
}

/** One probe's readings of one firing. */
export interface ReadingSeries {
  readonly firingId: string;
  /** The probe's name, as on its kiln; longest 120 characters. */
  readonly probe: string;
  /** In order of time. */
  readonly readings: readonly Reading[];
}

// Wide: liquid nitrogen to well past what any kiln or thermocouple bears. They catch slips of unit and broken probes.
const COLDEST_C = -200;
const HOTTEST_C = 2500;

/** @throws BadInput for a probe without a name, a moment that is none, or a temperature no probe could have read */
export function checkReadings(probe: string, readings: readonly Reading[], path = "readings"): void {
  if (probe.length < 1 || probe.length > 120) {
    throw new BadInput({
      code: "not-a-name",
      path: `${path}.probe`,
      found: shown(probe),
      expected: "1 to 120 characters",
    });
  }
  checkKeepable(probe, `${path}.probe`);
  readings.forEach(({ at, tempC }, i) => {
    checkMoment(at, `${path}[${i}].at`);
    if (tempC >= COLDEST_C && tempC <= HOTTEST_C) return;
    const expected = `degrees Celsius from ${COLDEST_C} to ${HOTTEST_C}; leave a lost reading out`;
    throw new BadInput({ code: "out-of-range", path: `${path}[${i}].tempC`, found: shown(tempC), expected });
  });
}

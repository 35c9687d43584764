import { AT_REST, type ParameterValues } from "../../firing/calibration/parameters.ts";
import type { Chance } from "../../measures/seeded-chance.ts";

/** What a kiln of the invented year has been fired to. */
export type FiredKind = "bisque" | "glaze";

// Nobody in the invented studio knows any of this. How much the resistance of the bottom, middle and top circuit rises in
// a firing: hot firings wear more, and the bottom works hardest. A set lasts about sixty firings so; common practice, no source.
const RISE: Readonly<Record<FiredKind, readonly number[]>> = {
  bisque: [0.0014, 0.0011, 0.0008],
  glaze: [0.0034, 0.0026, 0.0019],
};
const NEW_OHMS = [30.4, 31.1, 30.6] as const;
/** Of new: where a tenth of the power is gone, a set is done. */
const WORN_OUT = 0.9;

/** The kiln of the invented year as it is in truth: its elements wear, its brick ages, its probe drifts. */
export class WornKiln {
  private readonly rises = [0, 0, 0];
  private firings = 0;

  /** One firing's wear. */
  wear(kind: FiredKind): void {
    RISE[kind].forEach((rise, circuit) => {
      this.rises[circuit] = (this.rises[circuit] as number) + rise;
    });
    this.firings += 1;
  }

  /** What its circuits give of the power they gave when new, as a share; at a fixed voltage power goes with 1/R. */
  powerLeft(): number {
    return powerOf(this.rises);
  }

  /**
   * What it is, against its description, before the next firing: the mains stand higher than the plate's volts, the walls
   * and the lid are a little worse than their class. The ware is a little heavier or lighter than weighed.
   */
  truth(chance: Chance): ParameterValues {
    const [bottom = 0, , top = 0] = this.rises;
    return {
      ...AT_REST,
      wallFactor: 1.05 + 0.001 * this.firings,
      leakFactor: 1.15 * 1.004 ** this.firings,
      powerFactor: 1.1 * this.powerLeft(),
      wareMassFactor: 1 + 0.06 * (2 * chance.next() - 1),
      probeOffsetC: 4 - 0.1 * this.firings,
      tilt: 0.05 + (bottom - top) / 2,
      middleShare: 0.03,
    };
  }

  /** Its circuits by an ohmmeter that reads to a tenth and errs by as much. */
  ohms(chance: Chance): number[] {
    return NEW_OHMS.map((ohms, circuit) => {
      const read = ohms * (1 + (this.rises[circuit] as number)) + 0.1 * (2 * chance.next() - 1);
      return Math.round(10 * read) / 10;
    });
  }

  /** How many more firings, bisque and glaze in turn, until a tenth of the power is gone. */
  firingsLeft(): number {
    const rises = [...this.rises];
    let left = 0;
    while (powerOf(rises) > WORN_OUT) {
      const kind: FiredKind = left % 2 === 0 ? "bisque" : "glaze";
      RISE[kind].forEach((rise, circuit) => {
        rises[circuit] = (rises[circuit] as number) + rise;
      });
      left += 1;
    }
    return left;
  }
}

function powerOf(rises: readonly number[]): number {
  const given = (worn: boolean): number =>
    NEW_OHMS.reduce((sum, ohms, circuit) => sum + 1 / (ohms * (1 + (worn ? (rises[circuit] as number) : 0))), 0);
  return given(true) / given(false);
}

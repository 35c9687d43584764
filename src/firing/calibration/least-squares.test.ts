import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { information, inverse, leastSquares, spread } from "./least-squares.ts";

describe("least squares with a prior", () => {
  it("is the closed form where the model is straight: one quantity measured n times", () => {
    // The mean of n readings of sigma 1 with a prior of 0 ± 1 is sum / (n + 1), its variance 1 / (n + 1).
    const readings = Float64Array.of(1.2, 0.7, 1.1);
    const found = leastSquares((point) => readings.map((each) => (point[0] as number) - each), 1);
    expect(found.point[0]).toBeCloseTo(3 / 4, 5);
    const covariance = inverse(information([found.jacobian], 1));
    expect(covariance[0]?.[0]).toBeCloseTo(1 / 4, 9);
    expect(spread(found.jacobian, covariance)[0]).toBeCloseTo(1 / 2, 9);
  });

  it("finds its way round a bent valley", () => {
    // Rosenbrock's function (Computer Journal 3, 1960), as residuals. Along its valley y = x² the prior pulls by
    // x² + x⁴ against 10⁴ (1 − x)², which sets the least at x = 1 − 3·10⁻⁴.
    const found = leastSquares((point) => {
      const [x, y] = point as unknown as [number, number];
      return Float64Array.of(1000 * (y - x * x), 100 * (1 - x));
    }, 2);
    expect(found.settled).toBe(true);
    expect(found.point[0]).toBeCloseTo(1 - 3e-4, 4);
    expect(found.point[1]).toBeCloseTo(1 - 6e-4, 4);
  });

  it("turns any such matrix round", () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: 4, maxLength: 4 }), {
          minLength: 3,
          maxLength: 3,
        }),
        (rows) => {
          const matrix = information([rows.map((row) => Float64Array.from(row))], 3);
          const turned = inverse(matrix);
          matrix.forEach((row, i) => {
            turned.forEach((_, j) => {
              const product = row.reduce((sum, each, k) => sum + each * ((turned[k] as Float64Array)[j] as number), 0);
              expect(product).toBeCloseTo(i === j ? 1 : 0, 8);
            });
          });
        },
      ),
    );
  });
});

import fc from "fast-check";
import { expect, test } from "vitest";
import { CONES, conePlace } from "./cone.ts";
import { coneRange, formatConeRange, isInRange, parseConeRange, sharedRange } from "./cone-range.ts";
import { FIRING_KINDS, USUAL_RANGES, usualCones } from "./firing-kind.ts";
import { canShareFiring, conesFor, type FiringNeed, whyNotAt } from "./share-firing.ts";

const celadon: FiringNeed = {
  name: "tea bowl",
  kind: "glaze",
  glaze: { name: "celadon", cones: coneRange("9", "10") },
};
const satin: FiringNeed = {
  name: "mug",
  kind: "glaze",
  glaze: { name: "satin white", cones: coneRange("5", "6") },
  body: { name: "buff stoneware", cones: coneRange("5", "6") },
};
const blue: FiringNeed = { name: "plate", kind: "glaze", glaze: { name: "rutile blue", cones: coneRange("6", "7") } };
const greenware: FiringNeed = { name: "new vase", kind: "bisque" };
const gold: FiringNeed = { name: "gold rim cup", kind: "lustre" };

test("pieces whose cones overlap share a firing at the cones they have in common", () => {
  expect(canShareFiring(satin, blue)).toEqual({ can: true, cones: coneRange("6"), notes: [] });
});

test("pieces whose cones do not overlap are told apart, and why", () => {
  expect(canShareFiring(celadon, satin)).toEqual({
    can: false,
    why: "tea bowl needs cones 9 to 10 (celadon), mug cones 5 to 6 (satin white on buff stoneware).",
  });
  expect(canShareFiring(greenware, satin).can).toBe(false);
  expect(canShareFiring(gold, greenware).can).toBe(false);
});

test("a body holds its piece below the cone it bears", () => {
  const onEarthenware = { ...satin, body: { name: "red earthenware", cones: coneRange("06", "02") } };
  expect(conesFor(onEarthenware)).toBeNull();
  expect(canShareFiring(onEarthenware, blue)).toMatchObject({ can: false, why: /hotter than red earthenware bears/ });
  expect(whyNotAt(onEarthenware, "5")).toMatch(/No firing suits both/);
});

test("raw and glazed ware may share, with a note; raw ware and lustre may not", () => {
  const lowGlaze: FiringNeed = { name: "dish", kind: "glaze", glaze: { name: "clear", cones: coneRange("06", "04") } };
  const shared = canShareFiring(greenware, lowGlaze);
  expect(shared).toMatchObject({ can: true, cones: coneRange("06", "04") });
  expect(shared.can && shared.notes[0]).toMatch(/new vase is raw/);
  const rawLow: FiringNeed = {
    name: "bead",
    kind: "once-fired",
    glaze: { name: "frit", cones: coneRange("016", "015") },
  };
  expect(canShareFiring(gold, rawLow)).toMatchObject({ can: false, why: /raw clay/ });
});

test("says why a piece cannot go at a cone", () => {
  expect(whyNotAt(satin, "6")).toBeNull();
  expect(whyNotAt(satin, "10")).toMatch(/cone 10 is too hot/);
  expect(whyNotAt(satin, "04")).toMatch(/cone 04 is too cool/);
});

test("ranges are read in either order and shared as sets of cones are", () => {
  expect(parseConeRange("06-04")).toEqual(coneRange("06", "04"));
  expect(parseConeRange("cone 10 to 8")).toEqual(coneRange("8", "10"));
  expect(parseConeRange("Δ5½")).toEqual(coneRange("5.5"));
  expect(() => parseConeRange("5-6-7")).toThrow(/one cone or two/);
  const cone = fc.constantFrom(...CONES);
  fc.assert(
    fc.property(cone, cone, cone, cone, (a, b, c, d) => {
      const [one, other] = [coneRange(a, b), coneRange(c, d)];
      const shared = sharedRange(one, other);
      expect(sharedRange(other, one)).toEqual(shared);
      const both = CONES.filter((each) => isInRange(each, one) && isInRange(each, other));
      expect(shared ? CONES.filter((each) => isInRange(each, shared)) : []).toEqual(both);
      expect(parseConeRange(formatConeRange(one).replace(/^cones? /, ""))).toEqual(one);
    }),
  );
});

test("every kind of firing has a usual range with a source", () => {
  for (const kind of FIRING_KINDS)
    expect(conePlace(usualCones(kind).coolest)).toBeLessThan(conePlace(usualCones(kind).hottest));
  for (const range of USUAL_RANGES) expect(range.source).not.toBe("");
});

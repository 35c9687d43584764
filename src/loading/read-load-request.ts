import { chamberRegion, edgeDistanceMm } from "../kiln/convex-region.ts";
import type { KilnFile } from "../kiln/kiln.ts";
import { BadInput } from "../measures/bad-input.ts";
import { readBySchema } from "../measures/read-schema.ts";
import type { Protrusion, Ware, WareFile } from "../ware/ware.ts";
import { GLAZE_WARE_RULES } from "./clearance-rules.ts";
import { type LoadRequest, LoadRequestSchema } from "./load-request.ts";

/** One load's worth of choosing: more pieces than any small kiln's waiting shelf, few enough to plan in one go. */
export const MOST_PIECES = 2000;
const PROFILE_SLACK_MM = 0.01;

/**
 * Checks a load request read from JSON and fills in what was left out.
 *
 * @throws BadInput naming the field, what was found and what would do
 */
export function readLoadRequest(json: unknown): LoadRequest {
  const file = readBySchema(LoadRequestSchema, json);
  file.ware.forEach((ware, i) => {
    checkProfile(ware, `ware[${i}]`);
    checkProtrusion(ware, ware.handle, `ware[${i}].handle`);
    checkProtrusion(ware, ware.spout, `ware[${i}].spout`);
  });
  unlike(file.ware, "ware");
  unlike(file.furniture.shelves, "furniture.shelves");
  const pieces = file.ware.reduce((sum, ware) => sum + ware.count, 0);
  if (pieces > MOST_PIECES) {
    throw new BadInput({
      code: "too-many-pieces",
      path: "ware",
      found: `${pieces} pieces`,
      expected: `at most ${MOST_PIECES} for one load; leave those of another cone or a later firing out`,
    });
  }
  checkFittings(file.kiln);
  return {
    kiln: { ...file.kiln, probes: file.kiln.probes ?? [], spyholes: file.kiln.spyholes ?? [] },
    furniture: file.furniture,
    ware: file.ware.map(wholeWare),
    rules: { ...GLAZE_WARE_RULES, ...file.rules },
  };
}

/** Fills in what a kind of ware left out. */
export function wholeWare(ware: WareFile): Ware {
  return {
    ...ware,
    handle: ware.handle ?? null,
    spout: ware.spout ?? null,
    profile: ware.profile ?? null,
    cookie: ware.cookie ?? null,
    value: ware.value ?? 1,
    mustFire: ware.mustFire ?? false,
    form: ware.form ?? null,
    glaze: ware.glaze ?? null,
    cone: ware.cone ?? null,
    massKg: ware.massKg ?? null,
  };
}

function checkProfile(ware: WareFile, path: string): void {
  const profile = ware.profile;
  if (!profile) return;
  const refuse = (at: string, found: string, expected: string): never => {
    throw new BadInput({ code: "wrong-profile", path: `${path}.profile${at}`, found, expected });
  };
  profile.forEach(([height, radius], i) => {
    const before = profile[i - 1];
    if (before && height < before[0]) {
      refuse(`[${i}]`, `a height of ${height} after ${before[0]}`, "heights from the foot upward");
    }
    if (radius > ware.diameterMm / 2 + PROFILE_SLACK_MM) {
      refuse(`[${i}]`, `a radius of ${radius}`, `at most half the diameter, ${ware.diameterMm / 2}`);
    }
  });
  const foot = profile[0]?.[0] ?? Number.NaN;
  if (profile.every(([, radius]) => radius === 0)) refuse("", "radii of 0 all the way up", "a radius above 0");
  const rim = profile.at(-1)?.[0] ?? Number.NaN;
  if (foot !== 0) refuse("[0]", `a first height of ${foot}`, "the foot at height 0");
  if (Math.abs(rim - ware.heightMm) > PROFILE_SLACK_MM) {
    refuse(`[${profile.length - 1}]`, `a last height of ${rim}`, `the rim at the piece's height, ${ware.heightMm}`);
  }
}

/** A handle or spout is a stadium that begins on the axis: its rounded end cannot be wider than it is long. */
function checkProtrusion(ware: WareFile, part: Protrusion | null | undefined, path: string): void {
  const widest = ware.diameterMm + 2 * (part?.reachMm ?? 0);
  if (!part || part.widthMm <= widest) return;
  throw new BadInput({
    code: "out-of-range",
    path: `${path}.widthMm`,
    found: String(part.widthMm),
    expected: `at most ${widest}, the piece's width with its reach to either side`,
  });
}

function checkFittings({ chamber, probes = [], spyholes = [] }: KilnFile): void {
  const region = chamberRegion(chamber);
  probes.forEach((probe, i) => {
    const across = edgeDistanceMm(region, probe.angleDeg) + edgeDistanceMm(region, probe.angleDeg + 180);
    const inside = `a height inside the chamber, at most its depth of ${chamber.depthMm}`;
    atMost(probe.heightMm, chamber.depthMm, `kiln.probes[${i}].heightMm`, inside);
    const reach = `a reach inside the chamber, at most the ${Math.round(across * 10) / 10} to the wall opposite`;
    atMost(probe.reachMm, across, `kiln.probes[${i}].reachMm`, reach);
  });
  spyholes.forEach((hole, i) => {
    const inside = `a height inside the chamber, at most its depth of ${chamber.depthMm}`;
    atMost(hole.heightMm, chamber.depthMm, `kiln.spyholes[${i}].heightMm`, inside);
    const diameter = `a hole in the wall, at most the chamber's depth of ${chamber.depthMm}`;
    atMost(hole.diameterMm, chamber.depthMm, `kiln.spyholes[${i}].diameterMm`, diameter);
  });
}

function unlike(things: readonly { name: string }[], path: string): void {
  const seen = new Set<string>();
  things.forEach((thing, i) => {
    if (seen.has(thing.name)) {
      throw new BadInput({
        code: "name-twice",
        path: `${path}[${i}].name`,
        found: `"${thing.name}" a second time`,
        expected: "a name of its own for each kind",
      });
    }
    seen.add(thing.name);
  });
}

function atMost(found: number, most: number, path: string, expected: string): void {
  if (found > most) throw new BadInput({ code: "out-of-range", path, found: String(found), expected });
}

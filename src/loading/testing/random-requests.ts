import { type Chance, seededChance } from "../../measures/seeded-chance.ts";
import type { LoadRequest } from "../load-request.ts";
import { readLoadRequest } from "../read-load-request.ts";

const MOST_PIECES = 80;
const POST_HEIGHTS_MM = [12, 25, 38, 50, 64, 75, 100, 125, 150, 180, 200];

/**
 * A valid load request of a wildly varied kind: any chamber, shelves of several shapes, scarce or plentiful posts,
 * probes and spyholes anywhere, ware of every outline, rules of her own. Many cannot be loaded well, some not at all.
 *
 * @param seed any whole number; the same seed gives the same request
 */
export function randomRequest(seed: number): LoadRequest {
  const chance = seededChance(seed);
  const acrossMm = whole(chance, 200, 700);
  const lengthMm = whole(chance, acrossMm * 0.6, acrossMm);
  const rectangular = chance.next() < 0.2;
  const depthMm = whole(chance, 160, 700);
  return readLoadRequest({
    format: "load-request/1",
    kiln: {
      name: "any kiln",
      chamber: rectangular
        ? { shape: "rectangle", widthMm: acrossMm, lengthMm, depthMm }
        : roundedChamber(chance, acrossMm, depthMm),
      probes: list(chance.below(3), (i) => ({
        name: `probe ${i + 1}`,
        angleDeg: whole(chance, 0, 359),
        heightMm: whole(chance, 0, depthMm),
        reachMm: whole(chance, 10, 60),
      })),
      spyholes: list(chance.below(4), (i) => ({
        name: `spyhole ${i + 1}`,
        angleDeg: whole(chance, 0, 359),
        heightMm: whole(chance, 0, depthMm),
        diameterMm: whole(chance, 10, 40),
        open: chance.next() < 0.5,
      })),
    },
    furniture: {
      shelves: list(1 + chance.below(3), (i) => shelf(chance, acrossMm, rectangular ? lengthMm : null, i)),
      posts: list(2 + chance.below(5), () => ({
        heightMm: one(chance, POST_HEIGHTS_MM),
        widthMm: whole(chance, 15, 45),
        shape: one(chance, ["square", "round"]),
        count: chance.next() < 0.2 ? chance.below(4) : 3 + chance.below(10),
      })),
    },
    ware: ware(chance, acrossMm, depthMm),
    ...(chance.next() < 0.4 ? { rules: rules(chance) } : {}),
  });
}

function roundedChamber(chance: Chance, acrossMm: number, depthMm: number): object {
  if (chance.next() < 0.3) return { shape: "round", diameterMm: acrossMm, depthMm };
  return { shape: "polygon", sides: 6 + chance.below(7), acrossFlatsMm: acrossMm, depthMm };
}

/** @param lengthMm a rectangular chamber's other side, or null for a rounder chamber */
function shelf(chance: Chance, acrossMm: number, lengthMm: number | null, i: number): object {
  // Mostly as wide as the chamber takes; now and then much smaller, or too wide to go in.
  const share = chance.next() < 0.75 ? 0.82 + 0.12 * chance.next() : 0.4 + 0.65 * chance.next();
  const rest = { name: `shelf ${i + 1}`, thicknessMm: whole(chance, 8, 25), count: shelfCount(chance) };
  const kind = chance.below(8);
  const narrow = Math.round(share * (lengthMm ?? acrossMm));
  if (kind === 0) return { shape: "half-disc", diameterMm: narrow, ...rest };
  if (kind === 1 || (lengthMm !== null && kind < 6)) {
    const within = lengthMm === null ? 0.7 : 1;
    return {
      shape: "rectangle",
      widthMm: Math.round(share * acrossMm * within),
      lengthMm: Math.round(narrow * within),
      ...rest,
    };
  }
  if (kind < 4)
    return { shape: "polygon", sides: 6 + chance.below(7), acrossFlatsMm: Math.round(narrow * 0.94), ...rest };
  return { shape: "disc", diameterMm: narrow, ...rest };
}

const shelfCount = (chance: Chance): number => (chance.next() < 0.05 ? 0 : 1 + chance.below(5));

function ware(chance: Chance, acrossMm: number, depthMm: number): object[] {
  let pieces = 1 + chance.below(MOST_PIECES);
  const kinds = Math.min(pieces, 1 + chance.below(12));
  return list(kinds, (i) => {
    const left = kinds - i - 1;
    const count = left === 0 ? pieces : 1 + chance.below(Math.max(1, Math.floor((pieces - left) / 2)));
    pieces -= count;
    return piece(chance, acrossMm, depthMm, i, count);
  });
}

function piece(chance: Chance, acrossMm: number, depthMm: number, i: number, count: number): object {
  const diameterMm = whole(chance, 30, chance.next() < 0.8 ? Math.min(200, acrossMm * 0.5) : acrossMm);
  const heightMm = whole(chance, 8, chance.next() < 0.85 ? Math.min(200, depthMm * 0.5) : depthMm);
  const arm = (angleDeg: number): object => ({
    reachMm: whole(chance, 5, 45),
    widthMm: whole(chance, 8, 30),
    angleDeg,
  });
  return {
    name: `piece ${i + 1}`,
    count,
    diameterMm,
    heightMm,
    ...(chance.next() < 0.35 ? { handle: arm(whole(chance, 0, 359)) } : {}),
    ...(chance.next() < 0.15 ? { spout: arm(whole(chance, 0, 359)) } : {}),
    ...(chance.next() < 0.35 ? { profile: profile(chance, diameterMm, heightMm) } : {}),
    ...(chance.next() < 0.2
      ? { cookie: { diameterMm: whole(chance, 20, diameterMm * 1.2), thicknessMm: whole(chance, 3, 12) } }
      : {}),
    value: chance.next() < 0.1 ? 0 : Math.round(chance.next() * 400) / 20,
    mustFire: chance.next() < 0.08,
    ...(chance.next() < 0.2 ? { massKg: 0.1 + chance.next() * 3 } : {}),
  };
}

/** A side of 2 to 6 straight pieces, its widest place the whole half diameter. */
function profile(chance: Chance, diameterMm: number, heightMm: number): [number, number][] {
  const corners = 3 + chance.below(5);
  const widest = chance.below(corners);
  return list(corners, (i) => [
    (heightMm * i) / (corners - 1),
    (diameterMm / 2) * (i === widest ? 1 : 0.3 + 0.7 * chance.next()),
  ]);
}

function rules(chance: Chance): object {
  const any = {
    floorAirMm: whole(chance, 0, 40),
    gapMm: one(chance, [0, 0.5, 3, 8, 12]),
    headroomMm: whole(chance, 0, 15),
    lidMm: whole(chance, 0, 40),
    probeMm: whole(chance, 0, 60),
    spyholeMm: whole(chance, 0, 60),
    shelfWallMm: whole(chance, 0, 15),
    postAlignMm: whole(chance, 0, 6),
  };
  return Object.fromEntries(Object.entries(any).filter(() => chance.next() < 0.5));
}

const list = <T>(length: number, make: (i: number) => T): T[] => Array.from({ length }, (_, i) => make(i));
const one = <T>(chance: Chance, of: readonly T[]): T => of[chance.below(of.length)] as T;
/** A whole number from one to another, both counted in. */
const whole = (chance: Chance, from: number, to: number): number => {
  const low = Math.ceil(from);
  return low + chance.below(Math.max(1, Math.floor(to) - low + 1));
};

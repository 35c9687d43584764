import { type ConeName, ladderOf } from "../../firing/cones/cone.ts";
import { equivalentC } from "../../firing/heat-work/ladder-position.ts";
import type { PieceFacts } from "./piece-facts.ts";

// Signs that a firing shows of a cause: a sentence with its numbers where it does, false where what is known speaks
// against it, null where nothing is known. Thresholds: judgement by common practice, no published source, but for the
// turns of quartz and cristobalite.

export type Sign = (facts: PieceFacts) => string | false | null;

/** Half of the distance between two neighbouring cones, roughly: less is within what one shelf differs from itself. */
const NOTABLE_C = 7;
/** Fortuna, Sanitaryware 2000, for thick ware through 573 °C; trade practice for 226 °C (src/firing/programme). */
const GUARDED_C_PER_HOUR = 50;
/** A small kiln falls faster than this by itself at 226 °C only when it is opened or very light. */
const HASTY_C_PER_HOUR = 100;
const CLOSE_MM = 5;
const NEAR_WALL_MM = 30;

const degrees = (celsius: number): string => `${Math.round(Math.abs(celsius))} °C`;
const rate = (cPerHour: number): string => `${Math.round(cPerHour)} °C/h`;
const by = (facts: PieceFacts): string => (facts.heat?.from === "cones" ? "by its witness cones" : "as foretold");
const read = (facts: PieceFacts): string => (facts.paceFrom === "readings" ? "" : ", as foretold");

/** The shelf got more heat work than was wanted, or than the glaze or the clay bears. */
export const tooHot: Sign = (facts) => {
  const { heat, cone } = facts;
  if (heat === null) return null;
  const most = hottestBorne(facts);
  if (most !== null && heat.bound !== "at most" && heat.heatC > heatOf(most.cone) + NOTABLE_C) {
    return `This shelf got ${degrees(heat.heatC - heatOf(most.cone))} more than cone ${most.cone}, the hottest ${most.what} bears, ${by(facts)}.`;
  }
  if (heat.overC === null) return null;
  if (heat.overC > NOTABLE_C && heat.bound !== "at most") {
    return `This shelf ran ${degrees(heat.overC)} hotter than cone ${cone} wants, ${by(facts)}.`;
  }
  return heat.bound === "at least" ? null : false;
};

/** The shelf got less. */
export const tooCool: Sign = (facts) => {
  const { heat, cone } = facts;
  if (facts.brokenOff) return "The firing was broken off before its programme ended.";
  if (heat === null) return null;
  const least = facts.glaze?.cones?.coolest ?? null;
  if (least !== null && heat.bound !== "at least" && heat.heatC < heatOf(least) - NOTABLE_C) {
    return `This shelf got ${degrees(heat.heatC - heatOf(least))} less than cone ${least}, where ${facts.glaze?.name} begins, ${by(facts)}.`;
  }
  if (heat.overC === null) return null;
  if (heat.overC < -NOTABLE_C && heat.bound !== "at least") {
    return `This shelf ran ${degrees(heat.overC)} cooler than cone ${cone} wants, ${by(facts)}.`;
  }
  return heat.bound === "at most" ? null : false;
};

/** It cooled fast through the turn of quartz. */
export const fastThroughQuartz: Sign = (facts) =>
  fell(facts, facts.pace?.quartzCPerHour ?? null, "573 °C, where quartz turns");

/** It cooled fast through the turn of cristobalite, or was opened above it. */
export const fastThroughCristobalite: Sign = (facts) => {
  if (facts.openedAtC !== null && facts.openedAtC > 200) {
    return `It was still ${degrees(facts.openedAtC)} when the firing was called over.`;
  }
  return fell(facts, facts.pace?.cristobaliteCPerHour ?? null, "226 °C, where cristobalite turns");
};

function fell(facts: PieceFacts, cPerHour: number | null, where: string): string | false | null {
  if (cPerHour === null) return null;
  if (cPerHour > HASTY_C_PER_HOUR) return `It cooled at ${rate(cPerHour)} through ${where}${read(facts)}.`;
  if (cPerHour > GUARDED_C_PER_HOUR && isBulky(facts)) {
    return `It cooled at ${rate(cPerHour)} through ${where}${read(facts)}; large or thick ware wants ${GUARDED_C_PER_HOUR} °C/h or less.`;
  }
  return false;
}

/** It was opened while hot. */
export const openedHot: Sign = ({ openedAtC }) =>
  openedAtC === null ? null : openedAtC > 120 && `It was still ${degrees(openedAtC)} when the firing was called over.`;

/** A neighbour stood too near. */
export const neighbourClose: Sign = ({ place }) => {
  if (place === null) return null;
  if (place.neighbourMm === null) return false;
  return (
    place.neighbourMm < CLOSE_MM &&
    `${capital(place.neighbour ?? "a piece")} stood ${Math.max(0, Math.round(place.neighbourMm))} mm away.`
  );
};

/** It stood near the wall, where the elements are. */
export const nearElements: Sign = ({ place }) =>
  place === null
    ? null
    : place.wallMm < NEAR_WALL_MM &&
      `It stood ${Math.max(0, Math.round(place.wallMm))} mm from the wall and its elements.`;

/** It reached its shelf's edge, where heat comes from one side. */
export const atEdge: Sign = ({ place }) =>
  place === null ? null : place.edgeMm < 8 && "It stood at its shelf’s edge.";

/** A glaze known to run stood without a cookie. */
export const runsWithoutCookie: Sign = ({ glaze, place }) => {
  if (glaze === null) return null;
  if (!glaze.runs) return false;
  return place?.ware.cookie ? false : `${capital(glaze.name)} is one that runs, and it stood on no cookie.`;
};

/** It was held long at the top. */
export const longAtTop: Sign = ({ pace, paceFrom }) =>
  pace === null || paceFrom !== "readings"
    ? null
    : pace.topMin > 45 && `It was within 10 °C of its peak for ${Math.round(pace.topMin)} minutes.`;

/** Hardly held at the top. */
export const shortAtTop: Sign = ({ pace, paceFrom }) =>
  pace === null || paceFrom !== "readings"
    ? null
    : pace.topMin < 12 && `It was within 10 °C of its peak for only ${Math.round(pace.topMin)} minutes.`;

/** The climb through a stage was faster than it is usually done. */
const climbed =
  (stage: "dryingCPerHour" | "organicsCPerHour" | "chemicalWaterCPerHour", most: number, where: string): Sign =>
  (facts) => {
    const cPerHour = facts.pace?.[stage] ?? null;
    if (cPerHour === null) return null;
    return cPerHour > most && `It climbed at ${rate(cPerHour)} ${where}${read(facts)}.`;
  };

export const fastDrying = climbed("dryingCPerHour", 80, "while water still boils off");
export const fastOrganics = climbed("organicsCPerHour", 170, "while carbon burns out (250 to 900 °C)");
export const fastChemicalWater = climbed("chemicalWaterCPerHour", 200, "through 450 to 650 °C");

/** It fell fast through where crystals grow. */
export const fastThroughCrystals: Sign = (facts) => {
  const cPerHour = facts.pace?.crystalsCPerHour ?? null;
  if (cPerHour === null) return null;
  return cPerHour > 150 && `It fell at ${rate(cPerHour)} from 1000 to 850 °C${read(facts)}.`;
};

/** A shelf was over it. */
export const underShelf: Sign = ({ place }) => (place === null ? null : place.underShelf && "A shelf stood over it.");

/** It is flat and wide. */
export const isFlat: Sign = ({ place }) =>
  place === null ? null : place.ware.diameterMm > 5 * place.ware.heightMm && "It is flat and wide.";

/** Both of two signs are asked; either is enough. */
export const either =
  (...signs: readonly Sign[]): Sign =>
  (facts) => {
    const found = signs.map((sign) => sign(facts));
    const shown = found.filter((each) => typeof each === "string");
    if (shown.length > 0) return shown.join(" ");
    return found.some((each) => each === null) ? null : false;
  };

const heatOf = (cone: ConeName): number => equivalentC(ladderOf(cone));
const capital = (text: string): string => `${text[0]?.toUpperCase() ?? ""}${text.slice(1)}`;

/** The hottest cone that glaze or clay bears, whichever is less. */
function hottestBorne({ glaze, clay }: PieceFacts): { cone: ConeName; what: string } | null {
  const borne = [glaze, clay].flatMap((each) => (each?.cones ? [{ cone: each.cones.hottest, what: each.name }] : []));
  return borne.sort((a, b) => heatOf(a.cone) - heatOf(b.cone))[0] ?? null;
}

/** Large or wide ware: its walls hide one another from the heat. */
const isBulky = ({ place }: PieceFacts): boolean =>
  place !== null && (place.ware.diameterMm > 220 || place.ware.heightMm > 220 || (place.ware.massKg ?? 0) > 2);

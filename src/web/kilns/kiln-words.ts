import type { Chamber } from "../../kiln/chamber.ts";
import { chamberVolumeLitres } from "../../kiln/chamber-volume.ts";
import type { Furniture, Shelf } from "../../kiln/furniture.ts";
import { formatLength, formatLengthNumber, type LengthUnits } from "../../measures/length.ts";
import { numberWord } from "../../sheets/post-words.ts";
import type { ShelfFit } from "./shelf-fit.ts";

/** A cubic foot: 0.3048³ m³ exactly. */
const LITRES_PER_CUBIC_FOOT = 28.316846592;

/** `57 litres` or `2 cubic feet`. */
export function volumeText(chamber: Chamber, units: LengthUnits): string {
  const litres = chamberVolumeLitres(chamber);
  if (units === "metric") return `${litres < 10 ? litres.toFixed(1) : Math.round(litres)} litres`;
  const feet = Math.round((litres / LITRES_PER_CUBIC_FOOT) * 10) / 10;
  return `${feet} cubic ${feet === 1 ? "foot" : "feet"}`;
}

/** The same, rounded as people say it of a size: `about 200 litres`, `about 7 cubic feet`. */
export function aboutVolumeText(chamber: Chamber, units: LengthUnits): string {
  const litres = chamberVolumeLitres(chamber);
  if (units === "metric") return `about ${litres < 100 ? Math.round(litres) : Math.round(litres / 10) * 10} litres`;
  const feet = litres / LITRES_PER_CUBIC_FOOT;
  const rounded = feet < 3 ? Math.round(feet * 10) / 10 : Math.round(feet * 2) / 2;
  return `about ${rounded} cubic ${rounded === 1 ? "foot" : "feet"}`;
}

/** `Eight-sided, 390 mm across, 450 mm deep`. */
export function chamberText(chamber: Chamber, units: LengthUnits): string {
  const deep = `${formatLength(chamber.depthMm, units)} deep`;
  if (chamber.shape === "round") return `Round, ${formatLength(chamber.diameterMm, units)} across, ${deep}`;
  if (chamber.shape === "polygon") {
    const word = numberWord(chamber.sides);
    const sided = `${word.charAt(0).toUpperCase()}${word.slice(1)}-sided`;
    return `${sided}, ${formatLength(chamber.acrossFlatsMm, units)} across, ${deep}`;
  }
  const across = `${formatLengthNumber(chamber.widthMm, units)} × ${formatLength(chamber.lengthMm, units)}`;
  return `${chamber.widthMm === chamber.lengthMm ? "Square" : "Rectangular"}, ${across}, ${deep}`;
}

/** `4 full shelves, 2 half shelves, 27 posts`. */
export function shelvesText({ shelves, posts }: Furniture): string {
  const sum = (counts: readonly { readonly count: number }[]): number =>
    counts.reduce((all, { count }) => all + count, 0);
  const halves = sum(shelves.filter(({ shape }) => shape === "half-disc"));
  const whole = sum(shelves) - halves;
  const some = (count: number, one: string, many: string): string[] =>
    count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
  const parts = [
    ...some(whole, "shelf", "shelves"),
    ...some(halves, "half shelf", "half shelves"),
    ...some(sum(posts), "post", "posts"),
  ];
  return parts.length === 0 ? "No shelves, no posts" : parts.join(", ");
}

/** Why a kiln stays: `Back room is in use by 2 loads: spring glaze, bowls. Remove them first.` */
export function inUseWords(name: string, loads: readonly { readonly name: string }[]): string {
  const shown = loads.slice(0, 3).map((load) => load.name);
  const more = loads.length > 3 ? ` and ${loads.length - 3} more` : "";
  const [what, them] = loads.length === 1 ? ["a load", "it"] : [`${loads.length} loads`, "them"];
  return `${name} stays: ${what} ${loads.length === 1 ? "is" : "are"} planned for it (${shown.join(", ")}${more}). Remove ${them} first.`;
}

/** What is to be said of a shelf in the chamber, and how it stands with the rule. */
export interface FitWords {
  readonly words: string;
  readonly verdict: "fits" | "near" | "cannot";
}

// Less than this is said as touching: rulers do not read it.
const TOUCH_MM = 0.5;

/** Whether a shelf goes in, in words with the number: `18 mm to the wall`, `Cannot go in: 12 mm too wide`. */
export function fitWords(fit: ShelfFit, shelf: Shelf, shelfWallMm: number, units: LengthUnits): FitWords {
  const pair = shelf.shape === "half-disc";
  if (fit.wallMm < 0) {
    const over = formatLength(Math.max(1, Math.ceil(-2 * fit.wallMm)), units);
    return { verdict: "cannot", words: `Cannot go in: ${over} too wide for the chamber.` };
  }
  const alone = pair && !fit.paired ? "Only one half goes in, off the middle: " : pair ? "As a pair " : "";
  const air = fit.wallMm < TOUCH_MM ? "touches the wall" : `${formatLength(fit.wallMm, units)} to the wall`;
  const said = `${alone}${air}`.replace(/^./, (letter) => letter.toUpperCase());
  if (fit.wallMm < shelfWallMm - 0.01) {
    return {
      verdict: "near",
      words: `${said}. You ask for ${formatLength(shelfWallMm, units)}, so no load can use it.`,
    };
  }
  return { verdict: "fits", words: `${said}.` };
}

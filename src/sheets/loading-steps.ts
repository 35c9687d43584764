import type { PostInPlace } from "../loading/checker/posts-in-place.ts";
import { degrees } from "../measures/angle.ts";
import { formatLength, type LengthUnits } from "../measures/length.ts";
import { clockList, clockText, listText } from "./clock-direction.ts";
import { postsPhrase } from "./post-words.ts";
import { looksIn, type NumberedPiece, postsOnFloor, type SheetLevel, type SheetLoad } from "./sheet-load.ts";
import { shelfDescent } from "./shelf-descent.ts";

/** One thing to do, and what to know while doing it. */
export interface LoadingStep {
  readonly text: string;
  readonly note?: string;
  /** What it sets down, where it sets something down: what a screen marks in its drawing. */
  readonly sets?: "shelf" | "posts" | "pieces";
  /** True where everything is laid out and counted before it goes in. */
  readonly counts?: true;
}

/** Steps that belong together, in their order. */
export interface LoadingStage {
  readonly title: string;
  /** Which of the load's levels it builds, by its place in the plan; null before the first and after the last. */
  readonly level: number | null;
  readonly steps: readonly LoadingStep[];
}

// Posts as far from the middle as each other to within this are said to stand in one ring.
const SAME_RING_MM = 3;

/** The load from the empty kiln to the closed lid. The order itself is common practice, no source. */
export function loadingStages(load: SheetLoad, units: LengthUnits): LoadingStage[] {
  const [first, ...others] = byHeight(load.levels);
  return [
    { title: "Before anything goes in", level: null, steps: beforeSteps(load, units) },
    ...[first, ...others].flatMap((level) => (level ? [levelStage(load, level, units)] : [])),
    { title: "Before the lid comes down", level: null, steps: closingSteps(load, units) },
  ];
}

const byHeight = (levels: readonly SheetLevel[]): SheetLevel[] =>
  [...levels].sort((a, b) => a.shelf.topMm - b.shelf.topMm);

function beforeSteps(load: SheetLoad, units: LengthUnits): LoadingStep[] {
  const steps: LoadingStep[] = [
    {
      text: "Switch the kiln off at its isolator, and let it be cold.",
      note: "Vacuum the floor and the grooves; look along the elements.",
    },
    {
      text: "Lay out the shelves, washed sides up, the posts and the ware, as counted on the first page.",
      note: `Everywhere keep at least ${formatLength(load.request.rules.gapMm, units)} between pieces, and to posts and walls.`,
      counts: true,
    },
  ];
  const floor = postsOnFloor(load);
  if (floor.length > 0) {
    steps.push({ text: `Stand ${postsPhrase(floor, units)} on the floor, ${whereText(floor, units)}.`, sets: "posts" });
  }
  return steps;
}

function levelStage(load: SheetLoad, level: SheetLevel, units: LengthUnits): LoadingStage {
  const { shelf, pieces, postsOn } = level;
  const steps: LoadingStep[] = [{ ...lowerStep(load, level, units), sets: "shelf" }];
  if (postsOn.length > 0) {
    const where = straightAbove(level) ? "straight above the posts beneath" : whereText(postsOn, units);
    steps.push({ text: `Stand ${postsPhrase(postsOn, units)} on it, ${where}.`, sets: "posts" });
  }
  const onCookies = pieces.filter(({ piece }) => piece.ware.cookie);
  if (onCookies.length > 0) steps.push({ text: `Set the cookies down first, for ${numbersText(onCookies)}.` });
  for (const hole of load.request.kiln.spyholes.filter((each) => looksIn(level, each.heightMm))) {
    steps.push({
      text: `Cone pack: if it goes on this level, set it in sight of the ${hole.name}, at ${clockText(hole.angleDeg)}.`,
      note: "The plan keeps no place for it. Look through the hole to see it before ware hides it.",
    });
  }
  if (pieces.length > 0) {
    steps.push({
      text: `Set down ${numbersText(pieces)}, in the order of their numbers: the far side first.`,
      sets: "pieces",
    });
    steps.push({ text: headroomText(load, level, units) });
  }
  return { title: `Level ${level.number}, ${shelf.kind.name}`, level: level.index, steps };
}

function lowerStep(load: SheetLoad, level: SheetLevel, units: LengthUnits): LoadingStep {
  const { shelf } = level;
  const name = `the ${shelf.kind.name}`.replace(/^the the /, "the ");
  const check = `It rests on all three posts without rocking, its face ${formatLength(shelf.topMm, units)} above the floor.`;
  const descent = shelfDescent(load, level);
  if (descent.way === "straight") return { text: `Lower ${name}, level, straight down.`, note: check };
  const probes = load.request.kiln.probes.filter((probe) => descent.past.includes(probe.name));
  const past = listText(probes.map((probe) => `the ${probe.name} at ${clockText(probe.angleDeg)}`));
  if (descent.way === "aside") {
    return {
      text: `Lower ${name}, level, held ${formatLength(descent.byMm, units)} toward ${clockText(descent.towardDeg)} to pass ${past}.`,
      note: check,
    };
  }
  return {
    text: `Lower ${name} tilted past ${past}: level, it would touch.`,
    note: `Touch neither probe nor ware; where it will not pass freely, stop and do not force it. ${check}`,
  };
}

function headroomText(load: SheetLoad, level: SheetLevel, units: LengthUnits): string {
  const { headroomMm, lidMm } = load.request.rules;
  return level.underLid
    ? `Lay a straight edge across the rim of the kiln: ${formatLength(lidMm, units)} of air over everything.`
    : `Lay a straight edge across the posts: ${formatLength(headroomMm, units)} of air over everything.`;
}

function closingSteps(load: SheetLoad, units: LengthUnits): LoadingStep[] {
  const { probeMm, spyholeMm } = load.request.rules;
  const { probes, spyholes } = load.request.kiln;
  const steps: LoadingStep[] = [{ text: `Count: ${load.pieces === 1 ? "one piece" : `${load.pieces} pieces`} in.` }];
  if (probes.length > 0) {
    steps.push({
      text: `Nothing nearer than ${formatLength(probeMm, units)} to ${listText(probes.map(({ name }) => `the ${name}`))}.`,
    });
  }
  const open = spyholes.filter((hole) => hole.open).map(({ name }) => `the ${name}`);
  const plugged = spyholes.filter((hole) => !hole.open).map(({ name }) => `the ${name}`);
  if (open.length > 0) {
    steps.push({
      text: `Leave ${listText(open)} open, no ware within ${formatLength(spyholeMm, units)} of its mouth.`,
    });
  }
  if (plugged.length > 0) steps.push({ text: `Plug ${listText(plugged)}.` });
  steps.push({ text: "See the cone pack through its spyhole once more.", note: "Then the lid, gently." });
  return steps;
}

/** `piece 3`, `pieces 1 to 9`, `pieces 2, 5 and 7`. */
function numbersText(pieces: readonly NumberedPiece[]): string {
  const numbers = pieces.map(({ number }) => number);
  const [low, high] = [numbers[0] as number, numbers.at(-1) as number];
  if (numbers.length === 1) return `piece ${low}`;
  if (numbers.length > 2 && high - low === numbers.length - 1) return `pieces ${low} to ${high}`;
  return `pieces ${listText(numbers.map(String))}`;
}

const angleOf = ({ x, y }: PostInPlace): number => degrees(Math.atan2(y, x));

/** Whether every post on this shelf stands over one beneath it, as near as the eye can tell. */
function straightAbove({ postsOn, postsUnder }: SheetLevel): boolean {
  return postsOn.every((post) => postsUnder.some(({ x, y }) => Math.hypot(post.x - x, post.y - y) <= SAME_RING_MM));
}

/** `at 1, 5 and 9 o'clock, 158 mm from the middle`. */
function whereText(posts: readonly PostInPlace[], units: LengthUnits): string {
  const away = posts.map(({ x, y }) => Math.hypot(x, y));
  const middle = away.reduce((sum, each) => sum + each, 0) / away.length;
  if (away.every((each) => Math.abs(each - middle) <= SAME_RING_MM)) {
    return `at ${clockList(posts.map(angleOf))}, their middles ${formatLength(middle, units)} from the kiln’s middle`;
  }
  const each = posts.map((post, i) => `${clockText(angleOf(post))}, ${formatLength(away[i] as number, units)} out`);
  return `their middles at ${listText(each)} from the kiln’s middle`;
}

import type { FaultName } from "../records/faults.ts";
import * as signs from "./signs.ts";

/** One way a fault comes about. */
export interface CauseEntry {
  readonly fault: FaultName;
  readonly cause: string;
  readonly why: string;
  /** How this firing would show it; left out where nothing Wareboard knows could. */
  readonly sign?: signs.Sign;
  readonly tryNext: string;
  readonly source: string;
}

const COMMON = "common practice, no source";
const DICTIONARY = "Dodd & Murfin, Dictionary of Ceramics; from memory";
const QUARTZ =
  "quartz turns at 573 °C, 0.45 % in length: Dodd & Murfin, Dictionary of Ceramics; 50 °C/h for thick ware: Fortuna, Sanitaryware 2000";
const cause = (
  fault: FaultName,
  named: string,
  why: string,
  tryNext: string,
  sign?: signs.Sign,
  source = COMMON,
): CauseEntry => ({ fault, cause: named, why, tryNext, source, ...(sign === undefined ? {} : { sign }) });

/** Every cause Wareboard knows of, by fault. Trade knowledge; each with its source, or that it has none. */
export const CAUSES: readonly CauseEntry[] = [
  cause(
    "crawling",
    "Glaze too thick, or cracked as it dried",
    "A thick coat shrinks, cracks as it dries, and draws together along the cracks as it melts.",
    "Put it on thinner; rub cracks closed before it is fired.",
    undefined,
    DICTIONARY,
  ),
  cause(
    "crawling",
    "Dust, oil or wax on the bisque",
    "Glaze does not take where something keeps it off.",
    "Wipe bisque with a damp sponge; keep hands off what is glazed.",
  ),
  cause(
    "crawling",
    "Glaze still damp when fired",
    "Steam lifts the coat before it melts.",
    "Let ware dry a night after glazing; hold at 105 °C.",
    signs.fastDrying,
  ),
  cause(
    "crawling",
    "Too cool to heal",
    "A stiff melt stays where it drew back; a little more heat lets it run together.",
    "Move it to a hotter shelf, or hold longer at the top.",
    signs.either(signs.tooCool, signs.shortAtTop),
  ),

  cause(
    "pinholes",
    "Bisque that had not burnt out",
    "Carbon and chemical water still leave through the melting glaze, and the holes freeze in.",
    "Fire the bisque slower from 250 to 900 °C, or half a cone to a cone hotter.",
    signs.fastOrganics,
    DICTIONARY,
  ),
  cause(
    "pinholes",
    "Too short at the top, or too cool",
    "Bubbles rise and heal while the glaze is liquid; without that time their craters stay.",
    "Hold 10 to 20 minutes at the top, or drop 50 °C and hold there.",
    signs.either(signs.tooCool, signs.shortAtTop),
  ),
  cause(
    "pinholes",
    "Too hot for the glaze",
    "Past its range a glaze boils and leaves craters.",
    "Move it to a cooler shelf.",
    signs.tooHot,
  ),
  cause(
    "pinholes",
    "Glaze too thick, or air in it as it went on",
    "Holes in the raw coat become holes in the fired one.",
    "Sieve it, let it stand, rub pinholes closed as it dries.",
  ),

  cause(
    "blisters",
    "Too hot for glaze or clay",
    "Gas from an overfired glaze or a bloating body lifts the melt, and it freezes so.",
    "Move it to a cooler shelf; fire to a cooler cone.",
    signs.tooHot,
    DICTIONARY,
  ),
  cause(
    "blisters",
    "Too long at the top",
    "A hold past what the glaze wants goes on making gas.",
    "Shorten the hold.",
    signs.longAtTop,
  ),
  cause(
    "blisters",
    "Gas shut in by a bisque fired too fast",
    "What had no time to burn out leaves through the melt.",
    "Fire the bisque slower from 250 to 900 °C.",
    signs.fastOrganics,
  ),

  cause(
    "running",
    "The shelf ran hot",
    "Each degree thins the melt: a few too many, and it leaves the pot.",
    "Move it to a cooler shelf, or stop half a cone sooner.",
    signs.tooHot,
  ),
  cause(
    "running",
    "A glaze that runs, without a cookie",
    "What runs should be caught.",
    "Set it on a cookie; leave a finger’s breadth of foot bare.",
    signs.runsWithoutCookie,
  ),
  cause("running", "Held long at the top", "A hold is heat work too.", "Shorten the hold.", signs.longAtTop),
  cause(
    "running",
    "Put on too thick, or two glazes one over the other",
    "More melt is more weight; two glazes melt each other further.",
    "Thinner towards the foot.",
  ),

  cause(
    "crazing",
    "Glaze shrinks more than the clay",
    "Cooling, it is stretched, and cracks like a skin too small. Of the recipe, not of the firing.",
    "Another glaze for this clay, or more silica in it; test before tableware is used.",
    undefined,
    DICTIONARY,
  ),
  cause(
    "crazing",
    "Body underfired",
    "A clay that has not matured takes up water, swells, and stretches its glaze, often weeks later.",
    "Fire to the clay’s own cone.",
    signs.tooCool,
    DICTIONARY,
  ),
  cause(
    "crazing",
    "Opened while hot",
    "A fast last stretch of cooling stretches the glaze before the clay follows.",
    "Leave the lid shut until below 95 °C.",
    signs.openedHot,
  ),

  cause(
    "shivering",
    "Glaze shrinks less than the clay",
    "Pressed too hard, it springs off at rims and edges. Sharp flakes: do not use such ware for food.",
    "Another glaze for this clay, or less silica in it.",
    undefined,
    DICTIONARY,
  ),
  cause(
    "shivering",
    "Much cristobalite in the body",
    "It shrinks suddenly at 226 °C and leaves the glaze behind.",
    "Cool slower from 270 to 200 °C; a shorter stay at the top.",
    signs.fastThroughCristobalite,
    DICTIONARY,
  ),

  cause(
    "under-fired",
    "The shelf ran cool",
    "It got less heat work than the cone wants.",
    "Move it to a hotter shelf, hold longer, or even the load out.",
    signs.tooCool,
  ),
  cause(
    "under-fired",
    "Crowded, or a heavy shelf beside it",
    "Mass takes heat away from what stands beside it.",
    "Spread heavy pieces and full shelves over the load.",
    signs.neighbourClose,
  ),
  cause(
    "over-fired",
    "The shelf ran hot",
    "It got more heat work than the cone wants.",
    "Move it to a cooler shelf, or stop sooner.",
    signs.tooHot,
  ),
  cause(
    "over-fired",
    "Near the elements",
    "Radiation from an element heats its side past the rest.",
    "Keep 30 mm from the wall.",
    signs.nearElements,
  ),

  cause(
    "colour",
    "The shelf ran hotter or cooler than meant",
    "Many colours turn within half a cone.",
    "Set this glaze on the shelf that suits it.",
    signs.either(signs.tooHot, signs.tooCool),
  ),
  cause(
    "colour",
    "Cooled faster or slower than it likes",
    "Mattness, iron reds and crystals grow between about 1000 and 850 °C.",
    "Slow the programme there, or let it fall freely.",
    signs.fastThroughCrystals,
  ),
  cause("colour", "Too thick or too thin", "Thickness is colour.", "Mark thickness on a test tile."),
  cause(
    "colour",
    "Fumes from a neighbour",
    "Chrome and copper move through the kiln: chrome blushes tin glazes pink.",
    "Fire them apart.",
    signs.neighbourClose,
    DICTIONARY,
  ),

  cause(
    "dunting",
    "Cooled too fast through 573 °C",
    "Quartz shrinks there all at once; where one side is ahead of the other the pot parts, with sharp edges through glaze and clay.",
    "Keep plugs and lid shut; ask for 50 °C/h from 600 to 550 °C.",
    signs.fastThroughQuartz,
    QUARTZ,
  ),
  cause(
    "dunting",
    "Cooled too fast through 226 °C, or opened hot",
    "Cristobalite shrinks there all at once.",
    "Leave it shut until below 200 °C.",
    signs.fastThroughCristobalite,
    DICTIONARY,
  ),
  cause(
    "dunting",
    "Heated too fast through 573 °C",
    "The same turn on the way up: then the edges of the crack are rounded by the glaze.",
    "Slow the climb from 550 to 600 °C for large ware.",
    signs.fastChemicalWater,
    QUARTZ,
  ),
  cause(
    "dunting",
    "Glaze and clay pull apart",
    "A glaze only inside, or much thicker there, pulls the pot open.",
    "Glaze both sides alike.",
  ),
  cause(
    "dunting",
    "Uneven heat from one side",
    "At an edge or by the elements one side is ahead of the other.",
    "Set large pieces in the middle.",
    signs.either(signs.nearElements, signs.atEdge),
  ),

  cause(
    "drying crack",
    "Dried unevenly, or joined wet to dry",
    "It was there before the fire, and opened in it; its edges are rough, glaze lies in it.",
    "Dry slowly under plastic, rims and handles covered.",
  ),
  cause(
    "drying crack",
    "Base not compressed",
    "An S-shaped crack in a thrown base: clay pressed less shrinks more.",
    "Compress the base as it is thrown.",
    undefined,
    "common practice; S-cracks are described by many throwers, no source",
  ),
  cause(
    "burst",
    "Water in it as it boiled",
    "Steam at 110 °C presses with 1.4 bar, at 180 °C with ten: faster than it gets out.",
    "Dry until it is not cool to the cheek; hold at 80 to 95 °C.",
    signs.fastDrying,
    "steam pressure by the Antoine equation; drying: common practice",
  ),
  cause(
    "burst",
    "Air or plaster shut in it",
    "A hollow without a hole keeps its steam; plaster swells.",
    "Prick hollow forms; keep plaster out of the clay.",
  ),

  cause(
    "bloating",
    "Too hot for the clay",
    "Past its range a body seals and its own gas blows it up.",
    "Fire to the clay’s cone; a cooler shelf.",
    signs.tooHot,
    DICTIONARY,
  ),
  cause(
    "bloating",
    "Carbon shut in",
    "A dark core still burns as the body seals.",
    "Slower from 250 to 900 °C, with air.",
    signs.fastOrganics,
    DICTIONARY,
  ),
  cause(
    "black core",
    "Carbon had no time to burn out",
    "It needs air and time between about 250 and 900 °C.",
    "Slower there, vent running, ware not stacked tight.",
    signs.fastOrganics,
    DICTIONARY,
  ),
  cause(
    "black core",
    "Stacked tight",
    "Air did not reach between the pieces.",
    "Leave gaps; no foot-to-foot stacks of thick ware.",
    signs.neighbourClose,
  ),

  cause(
    "warping",
    "Too hot for the clay",
    "A body past its cone softens and sags.",
    "A cooler shelf, or a cone less.",
    signs.tooHot,
  ),
  cause(
    "warping",
    "Unevenly heated from one side",
    "The hotter side shrinks more and pulls.",
    "Middle of the shelf for flat ware.",
    signs.either(signs.nearElements, signs.atEdge),
  ),
  cause(
    "warping",
    "A flat form, or a shelf that is not flat",
    "Wide bases follow the shelf and remember how they were dried.",
    "A flat shelf, wadding or a little sand; dry between boards.",
    signs.isFlat,
  ),

  cause(
    "kiln debris",
    "Flakes from the shelf above, or the lid",
    "Wash and brick crumbs fall as the kiln warms.",
    "Brush undersides, wash only tops, vacuum the lid.",
    signs.underShelf,
  ),
  cause(
    "kiln debris",
    "Crumbs from the elements’ grooves",
    "Beside a wall they fall onto what stands there.",
    "Vacuum the grooves before loading.",
    signs.nearElements,
  ),

  cause(
    "stuck",
    "A neighbour too close",
    "Glaze swells as it melts, and two glazes that touch are one.",
    "Leave 6 mm between glazed pieces.",
    signs.neighbourClose,
  ),
  cause(
    "stuck",
    "Ran down to the shelf",
    "A glaze thinned by heat glues the foot.",
    "Cookie, wash, and a cooler shelf.",
    signs.either(signs.tooHot, signs.runsWithoutCookie),
  ),
  cause("stuck", "Glaze on the foot", "What is not wiped off sticks.", "Wax the foot; wipe it."),
  cause("chipped", "Handled hot or hurried", "Ware is weaker while it is hot.", "Unload below 50 °C.", signs.openedHot),
  cause("chipped", "Stuck a little, and pulled", "The shelf keeps what it holds.", "Wash on the shelf, a clean foot."),
  cause(
    "other",
    "Not in this list",
    "Write down what you saw: with cones, place and a photo it may be found later.",
    "A note and a photo now.",
  ),
];

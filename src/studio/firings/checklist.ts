/** One thing to see to before the switch. */
export interface CheckItem {
  /** Its name in records: never changed, only added to. */
  readonly item: string;
  /** As she reads it. */
  readonly text: string;
  readonly why: string;
  readonly source: string;
  /** What to mind while doing it. */
  readonly caution?: string;
}

const COMMON = "common practice, no source";
const MANUAL = "Your kiln’s own manual goes first.";

/**
 * What a potter sees to before she switches a kiln on, in the order of the work: the empty kiln, its furniture, the
 * ware, the witnesses, then the room. Wareboard never switches a kiln: this is for the one who does.
 */
export const CHECKLIST: readonly CheckItem[] = [
  {
    item: "isolated",
    text: "Kiln cut off from its supply while hands are inside",
    why: "Elements are live metal within reach.",
    source: COMMON,
    caution: `Pull the plug or lock off the supply first. ${MANUAL}`,
  },
  {
    item: "vacuumed",
    text: "Chamber and lid vacuumed, element grooves too",
    why: "Crumbs of brick and glaze fall on ware, and glaze in a groove eats the wire.",
    source: COMMON,
    caution:
      "Brick and wash dust hold silica: vacuum with a fine filter or wipe wet, never sweep dry; wear a respirator.",
  },
  {
    item: "elements",
    text: "Elements and grooves looked at: none sagging, broken or crossed",
    why: "A wire out of its groove burns through; a dead one makes the firing long and uneven.",
    source: COMMON,
    caution: "Repairs to wiring are for a licensed electrician.",
  },
  {
    item: "shelves",
    text: "Shelves whole, dry and washed on top only, edges clean",
    why: "Wash lets a drip come off; wash on edges and undersides flakes onto the ware below. A cracked shelf may part when hot.",
    source: COMMON,
  },
  {
    item: "posts",
    text: "Three posts under each shelf, one above the other; nothing rocks",
    why: "Three feet always stand; a post beside the one below bends the shelf until it cracks.",
    source: COMMON,
  },
  {
    item: "feet",
    text: "Every foot wiped clean of glaze; lids waxed where they sit",
    why: "Glaze on a foot is glued to the shelf.",
    source: COMMON,
  },
  {
    item: "cookies",
    text: "Cookies under glazes that run",
    why: "What runs off is caught by clay and not by the shelf.",
    source: COMMON,
  },
  {
    item: "apart",
    text: "Glazed pieces apart, nothing over a shelf’s edge or near the elements",
    why: "Glaze swells as it melts and touches; close to an element one side is overfired.",
    source: COMMON,
  },
  {
    item: "probe",
    text: "Probe clear all round and as far in as it was",
    why: "A probe that touches, or has slipped back, reads wrongly, and the whole firing follows it.",
    source: COMMON,
  },
  {
    item: "cones",
    text: "Witness cones set on every shelf, one in sight of the spyhole",
    why: "They are the only ones that tell what the ware itself got.",
    source: COMMON,
  },
  {
    item: "lid",
    text: "Lid down on its seat, nothing touching it",
    why: "A lid held up lets heat out at one side.",
    source: COMMON,
  },
  {
    item: "plugs",
    text: "Plugs in or out as the programme wants, the top one out while it dries",
    why: "Steam and smoke must leave while the ware gives them off.",
    source: COMMON,
    caution:
      "Stand aside when you pull a plug from a hot kiln; gloves, and infrared-filtering glasses above about 600 °C.",
  },
  {
    item: "vent",
    text: "Vent running, its outlet free, the room aired",
    why: "Wax, paper and clay give carbon monoxide and sulphur dioxide as they burn.",
    source: "EPA Region 7 note on school kilns, as in Wareboard’s cautions",
    caution: "Stay out of the room while it fumes, and have a carbon monoxide alarm there.",
  },
  {
    item: "clearances",
    text: "Nothing against the kiln or over it: walls, shelves, cloths, boxes",
    why: "Sides and lid are hot enough to char wood and burn skin.",
    source: "Uniform Mechanical Code §910.3 (1990s copy), as in Wareboard’s cautions; the kiln’s own label goes first",
    caution: "Unless the kiln’s label says otherwise: 457 mm to walls that cannot burn, 914 mm to anything that can.",
  },
  {
    item: "people",
    text: "Nobody’s things near; children and animals kept out; somebody stays within call",
    why: "A kiln that does not shut off must be shut off by a person.",
    source: COMMON,
    caution: "Wareboard watches and advises. It never switches a kiln: be there when it should shut off.",
  },
  {
    item: "programme",
    text: "Programme on the controller as it stands here, cut-out set",
    why: "One wrong digit is another firing.",
    source: COMMON,
  },
];

/** The items of a firing of some kind; nothing is glazed in a bisque. */
export function checklistFor(kind: "bisque" | "glaze" | "once-fired" | "lustre" | undefined): readonly CheckItem[] {
  return kind === "bisque" ? CHECKLIST.filter(({ item }) => item !== "feet" && item !== "cookies") : CHECKLIST;
}

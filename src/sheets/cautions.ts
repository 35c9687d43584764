import { formatLength, type LengthUnits } from "../measures/length.ts";

/** One caution: what to mind, and who says so. */
export interface Caution {
  readonly title: string;
  readonly text: (units: LengthUnits) => string;
  readonly source: string;
}

/** What stands over every list of cautions. */
export const CAUTIONS_FIRST =
  "Your kiln’s own manual and nameplate, your local codes and a licensed electrician come first. Wareboard plans and advises; it never switches a kiln.";

const both = (mm: number, units: LengthUnits): string => formatLength(mm, units);
const warm = (celsius: number): string => `${celsius} °C (${Math.round((celsius * 9) / 5 + 32)} °F)`;

/**
 * Cautions for loading and firing a small electric kiln. Facts and their sources as collected in Wareboard's safety
 * table; where a source was quoted from memory, it says so.
 */
export const CAUTIONS: readonly Caution[] = [
  {
    title: "Power",
    text: () =>
      "A firing lasts more than three hours, so in the USA its circuit counts as continuous: conductors and breaker for at least 125 % of the kiln’s current. A warm plug, a smell or a tripping breaker: stop, and call a licensed electrician. Elsewhere the local code rules. Isolate the kiln before you reach inside.",
    source:
      "NFPA 70 (NEC) 210.19(A)(1), 210.20(A), definition in Art. 100; 424.4(B). Kilns are not named: nameplate and listed instructions govern, 110.3(B). Code forum discussions; code text from memory. Isolating: common practice, no source.",
  },
  {
    title: "Room about the kiln",
    text: (units) =>
      `Keep ${both(457, units)} to walls that cannot burn and ${both(914, units)} to anything that can, ${both(762, units)} on the control side, unless the kiln’s own label says otherwise. The wall beside a kiln was measured at ${warm(71)}, its side at ${warm(138)}, its top at ${warm(193)}.`,
    source:
      "Uniform Mechanical Code §910.3 (1990s), kilns up to 20 ft³, mailing list copy of 7 August 1996; later instructions allow less. Temperatures: one owner’s measurements in a forum.",
  },
  {
    title: "Air",
    text: () =>
      "Vent to the outdoors. Wax, paper and organic matter give carbon monoxide; clays and glazes give sulphur dioxide, fluorides and metal vapours. Stay out of the room while it fumes, and fit a carbon monoxide alarm. Limits at work: CO 35 ppm as an average, 200 ppm at any time; SO2 2 ppm.",
    source:
      "EPA Region 7 note on school kilns; a retailer’s ventilation questions; NIOSH recommended limits, OSHA Z-1 (CO 50 ppm, SO2 5 ppm); SO2 from memory. Alarm: common practice, no source.",
  },
  {
    title: "Eyes and skin",
    text: () =>
      `Above about ${warm(600)} look into a spyhole only through infrared-filtering glasses, welding shade 1.7 to 3. Sunglasses and didymium do not protect. Stand aside when you pull a plug; gloves for plug and lid.`,
    source:
      "A glass-kiln safety page (shade 1.75–2.5) and an educational cone chart page; OSHA gives no number for kilns. Gloves and standing aside: common practice, no source.",
  },
  {
    title: "Dust",
    text: () =>
      "Dry clay, glaze and shelf wash hold silica. Clean wet, never sweep dry; wear a respirator for scraping shelves. Limit at work: 50 µg/m³ over eight hours, action from 25 µg/m³.",
    source: "29 CFR 1910.1053; OSHA rule reports. Respirator for scraping: common practice, no source.",
  },
  {
    title: "Opening",
    text: () =>
      `Keep vents shut until below ${warm(200)}, crack the lid at ${warm(120)} or less, unload at ${warm(50)} or less. What feels warm outside may still burn inside.`,
    source:
      "Trade pages, which range from 125 to 250 °F; above 200 °C ware risks cracking. 50 °C: common practice, no source.",
  },
  {
    title: "Ware for food",
    text: () =>
      "A glaze that looks sound may still give off lead or cadmium: have tableware tested before it is used or sold. In the USA cups may leach 0.5 µg/mL of lead and small hollow ware 0.5 µg/mL of cadmium; in the EU hollow ware 4.0 mg/L of lead and 0.3 mg/L of cadmium.",
    source:
      "FDA CPG 545.400 (cadmium) and 545.450 (lead; cups from memory); 84/500/EEC, EU practical guide copy: 4 % acetic acid, 24 h at 22 ± 2 °C.",
  },
];

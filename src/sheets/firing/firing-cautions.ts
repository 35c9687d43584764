/** A caution shown with a firing, and where it comes from. */
export interface Caution {
  readonly caution: string;
  readonly source: string;
}

/** In the order of the firing. Always after the kiln's own manual, local codes and a licensed electrician. */
export const FIRING_CAUTIONS: readonly Caution[] = [
  {
    caution:
      "Your kiln's own manual, local codes and a licensed electrician come first. Wareboard watches and advises; it never switches a kiln.",
    source: "common practice, no source",
  },
  {
    caution:
      "A circuit that runs for three hours or more is loaded to 80 % at most: wires and breaker are chosen for 125 % of the kiln's current.",
    source:
      "NFPA 70 (NEC) 210.19(A)(1), 210.20(A), 424.4(B); code text from memory. Kilns are not named there: nameplate and listed instructions (110.3(B)) govern; outside the USA follow local code.",
  },
  {
    caution:
      "Keep the space round the kiln clear: 457 mm to what cannot burn, 914 mm to what can, unless its own label says otherwise.",
    source: "Uniform Mechanical Code §910.3 (1990s), from a mailing list copy of 7 August 1996",
  },
  {
    caution:
      "Vent to the outdoors: clay and wax give off carbon monoxide, glazes give off sulphur and fluorine compounds and metal vapour.",
    source: "NIOSH REL for CO 35 ppm, ceiling 200 ppm; SO2 NIOSH 2 ppm, from memory",
  },
  {
    caution:
      "Look through a spyhole only with infra-red filter glasses, welding shade 1.7 to 3, above about 600 °C (1110 °F); sunglasses will not do.",
    source:
      "a glass-kiln safety page (shade 1.75–2.5) and an educational cone chart page; OSHA gives no number for kilns",
  },
  {
    caution:
      "Pull plugs under 200 °C (390 °F), crack the lid at 120 °C (250 °F) or less, unload at 50 °C (120 °F) or less.",
    source: "trade pages (ranges 125–250 °F); 50 °C common practice, no source",
  },
  {
    caution: "Kiln wash, fibre and dry clay make silica dust: wipe wet, never sweep dry.",
    source: "29 CFR 1910.1053: 50 µg/m³ over eight hours, action level 25",
  },
];

import type { FiringKind } from "../cones/firing-kind.ts";
import type { Dryness } from "./pace.ts";

/** A stretch of temperature that clay must not be hurried through. */
export interface TemperatureBand {
  readonly name: string;
  readonly fromC: number;
  readonly toC: number;
  readonly direction: "heating" | "cooling";
  /** Faster is worth a caution, °C/h. */
  readonly mostCPerHour: number;
  readonly why: string;
  readonly source: string;
}

export interface BandWare {
  readonly kind: FiringKind;
  readonly dryness: Dryness;
  readonly thicknessMm: number;
}

/** Walls from here on are thick: the trade's rates through the inversions are theirs. */
const THICK_WALL_MM = 15;

/** The bands that matter for a kind of ware, with the trade's limits. */
export function bandsFor({ kind, dryness, thicknessMm }: BandWare): TemperatureBand[] {
  const raw = kind === "bisque" || kind === "once-fired";
  const bands: TemperatureBand[] = [];
  if (raw) {
    bands.push(
      {
        name: "boiling",
        fromC: 85,
        toC: 120,
        direction: "heating",
        mostCPerHour: dryness === "bone-dry" ? 150 : 60,
        why: "steam shut in a wall reaches 2 bar at 120 °C and bursts it",
        source: "steam: Antoine equation; 60 °C/h until dry, 150 bone dry: common practice, no source",
      },
      {
        name: "organics",
        fromC: 250,
        toC: 900,
        direction: "heating",
        mostCPerHour: 170,
        why: "carbon shut in bloats the body and blisters glazes later",
        source: "110–170 °C/h, done by 900–950 °C with air: trade schedules; common practice",
      },
    );
  }
  if (thicknessMm >= THICK_WALL_MM) {
    const inversion = (name: string, fromC: number, toC: number, source: string): TemperatureBand => ({
      name,
      fromC,
      toC,
      direction: "cooling",
      mostCPerHour: 50,
      why: `${name} inverts here, and thick ware dunts`,
      source,
    });
    bands.push(
      inversion("quartz", 550, 600, "573 °C; 50 °C/h: Fortuna, Sanitaryware 2000"),
      inversion(
        "cristobalite",
        200,
        270,
        "220 °C: Taylor & Bull, Ceramics Glaze Technology; 50 °C/h carried over from quartz: common practice",
      ),
    );
  }
  return bands;
}

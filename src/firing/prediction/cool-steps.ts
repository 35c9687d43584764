/** Temperatures a potter waits for, in °C, and what each allows. Trade pages; 50 °C common practice, no source. */
export const COOL_STEPS = [
  { tempC: 200, means: "Plugs may come out; the lid stays shut." },
  { tempC: 120, means: "The lid may be cracked open." },
  { tempC: 95, means: "The lid may be lifted." },
  { tempC: 50, means: "Unload with bare hands." },
] as const;

/** A lid may be lifted under this, °C: one of the steps. What a screen, a sheet, a calendar and a notice say of opening goes by it. */
export const LID_LIFTS_C = 95;

import type { Programme } from "../programme/programme.ts";
import type { Trouble } from "../thermal/fire.ts";

/** What went wrong in a simulated firing, in one sentence with what to do. */
export function troubleText(trouble: Trouble, programme: Programme): string {
  const { segment, tempC, askedCPerHour, managedCPerHour } = trouble;
  const target = programme.segments[segment]?.targetC ?? 0;
  const at = `${Math.round(tempC)} °C`;
  const asked = askedCPerHour === null ? "full power" : `${Math.round(askedCPerHour)} °C an hour`;
  if (trouble.kind === "stalled") {
    return `The kiln stalls at ${at} in segment ${segment + 1} and never reaches ${Math.round(target)} °C: at full power it rises ${managedCPerHour.toFixed(1)} °C an hour. Measure the elements and the supply, lighten the load, or fire to a lower cone.`;
  }
  return `From about ${at} the kiln falls behind segment ${segment + 1}: ${asked} is asked and it manages ${Math.round(managedCPerHour)} at full power. Slow the segment down, or expect it to take longer.`;
}

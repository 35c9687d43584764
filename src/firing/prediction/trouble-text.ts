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
  if (trouble.kind === "still-hot") {
    return `The kiln cannot cool to ${Math.round(target)} °C in segment ${segment + 1}: with its elements off it stands at ${at}. End the programme at a higher temperature; the room sets the limit.`;
  }
  if (trouble.kind === "too-long") {
    return `The programme takes more than a week: in segment ${segment + 1} it has come to ${at}, and what follows is not reckoned. Give faster rates or shorter holds.`;
  }
  return `From about ${at} the kiln falls behind segment ${segment + 1}: ${asked} is asked and it manages ${Math.round(managedCPerHour)} at full power. Slow the segment down, or expect it to take longer.`;
}

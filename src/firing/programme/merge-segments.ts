import { BadInput } from "../../measures/bad-input.ts";
import type { Segment } from "./programme.ts";

/**
 * Joins neighbouring climbs until a controller's limit is met, each time those that cost least time. A joined climb
 * goes at the slower of its two rates, so no rate is ever raised; holds, the last hundred degrees and everything after
 * the peak stay as they are.
 *
 * @throws BadInput where the limit cannot be met so: it names the fewest segments
 */
export function mergedTo(segments: readonly Segment[], mostSegments: number): Segment[] {
  const merged = [...segments];
  while (merged.length > mostSegments) {
    const place = cheapestJoin(merged);
    if (place === null) {
      throw new BadInput({
        code: "too-few-segments",
        path: "mostSegments",
        found: String(mostSegments),
        expected: `at least ${merged.length} for this firing: holds, the last 100 °C and guarded cooling take one each`,
      });
    }
    const [first, second] = [merged[place] as Segment, merged[place + 1] as Segment];
    const reason = [first.reason, second.reason].filter((each) => each !== undefined).join(" ");
    merged.splice(place, 2, { ...second, rateCPerHour: slower(first, second), reason });
  }
  return merged;
}

const slower = (first: Segment, second: Segment): number =>
  Math.min(first.rateCPerHour ?? Number.POSITIVE_INFINITY, second.rateCPerHour ?? Number.POSITIVE_INFINITY);

function cheapestJoin(segments: readonly Segment[]): number | null {
  let best: { place: number; hours: number } | null = null;
  let fromC = 20;
  for (let place = 0; place + 1 < segments.length; place++) {
    const [first, second] = [segments[place] as Segment, segments[place + 1] as Segment];
    const climbs = second.targetC > first.targetC && first.targetC > fromC;
    if (climbs && first.holdMin === 0 && second.stage !== "last hundred") {
      const hours = (rate: number | null, degrees: number): number => (rate === null ? 0 : degrees / rate);
      const apart =
        hours(first.rateCPerHour, first.targetC - fromC) + hours(second.rateCPerHour, second.targetC - first.targetC);
      const joined = hours(slower(first, second), second.targetC - fromC);
      if (best === null || joined - apart < best.hours) best = { place, hours: joined - apart };
    }
    fromC = first.targetC;
  }
  return best?.place ?? null;
}

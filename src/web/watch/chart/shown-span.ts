/** What of the firing the chart shows. */
export const SPANS = [
  { id: "whole", label: "All" },
  { id: "day", label: "24 h", minutes: 24 * 60 },
  { id: "hours", label: "6 h", minutes: 6 * 60 },
  { id: "hour", label: "1 h", minutes: 60 },
] as const;
export type SpanId = (typeof SPANS)[number]["id"];

/** From which minute on a span shows, in steps of five minutes so that the chart does not creep; null for all of it. */
export function spanFrom(id: SpanId, nowMin: number): number | null {
  const span = SPANS.find((each) => each.id === id);
  if (span === undefined || !("minutes" in span)) return null;
  return Math.max(0, Math.floor((nowMin - span.minutes) / 5) * 5);
}

/** Where the chart ends: a little past now where only the last while is looked at. */
export const spanUntil = (id: SpanId, nowMin: number): number | null =>
  id === "whole" ? null : nowMin + (id === "hour" ? 15 : 60);

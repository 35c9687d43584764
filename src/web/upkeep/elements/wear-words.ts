import type { ElementWear } from "../../../studio/firings/element-wear.ts";

const percent = (share: number): string => {
  const value = 100 * share;
  return `${value < 10 ? Number(value.toFixed(1)) : Math.round(value)} %`;
};

const firings = (count: number): string => (Math.round(count) === 1 ? "1 firing" : `${Math.round(count)} firings`);

/** How worn a set is: "4.2 % of the power is gone; resistance rises by 0.15 % a firing." Null where nothing tells. */
export function wornWords({ powerLeft, risePerFiring, fromNew }: ElementWear): string | null {
  if (powerLeft === null) return null;
  const lost = 1 - powerLeft;
  const since = fromNew ? "" : " since they were first measured";
  const gone = lost < 0.0005 ? `No power is gone${since}` : `${percent(lost)} of the power is gone${since}`;
  return risePerFiring === null || risePerFiring <= 0
    ? `${gone}.`
    : `${gone}; resistance rises by ${(100 * risePerFiring).toFixed(2)} % a firing.`;
}

/** How long they last yet, with its spread; null where nothing tells. */
export function remainingWords({ remainingFirings: left }: ElementWear): string | null {
  if (left === null) return null;
  const { expected, least, most } = left;
  if (expected < 0.5) return "By this line they are at their end.";
  const about = `At this pace about ${firings(expected)} are left`;
  if (most === null) {
    return Math.round(least) < Math.round(expected)
      ? `${about}; ${firings(least)} at least, how many at most is not told yet.`
      : `${about}.`;
  }
  if (Math.round(least) === Math.round(most)) return `${about}; two measurings do not tell how sure that is.`;
  return `${about}, likely between ${Math.round(least)} and ${firings(most)}.`;
}

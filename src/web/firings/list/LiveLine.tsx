import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { useMinute } from "../start/use-minute.ts";
import { clockWords } from "../words/clock-words.ts";
import { hoursLong } from "../words/figures.ts";

/** A firing under way, by its clock and what was foretold of it. */
export function LiveLine({ firing }: { readonly firing: FiringRecord }) {
  const now = useMinute();
  const { startedAt, shutOffAt, foretold, state } = firing;
  if (startedAt === null) return null;
  const hours = Math.max(0, (Date.parse(now) - Date.parse(shutOffAt ?? startedAt)) / 3_600_000);
  if (state === "cooling") return <p>Cooling, {hoursLong(hours)} since it went off</p>;
  return (
    <p>
      Firing for {hoursLong(hours)}
      {foretold && `; to shut off about ${clockWords(startedAt, foretold.hours * 60)}`}
    </p>
  );
}

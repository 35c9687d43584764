import type { Against, FiringAgainst } from "../../../studio/firings/predicted-against-actual.ts";
import { dayClockWords } from "../../firings/words/clock-words.ts";
import { hoursLong, kWhWords } from "../../firings/words/figures.ts";
import parts from "../Learn.module.css";

interface AgainstTableProps {
  readonly rows: readonly FiringAgainst[];
  readonly degrees: (celsius: number) => string;
}

/** Every firing's figures, the newest first: measured, and what was foretold beside it. */
export function AgainstTable({ rows, degrees }: AgainstTableProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be within reach of the keys.
    <section className={parts.scroll} tabIndex={0} aria-label="Foretold and measured, as a table">
      <table className={parts.table}>
        <thead>
          <tr>
            <th scope="col">Firing</th>
            <th scope="col">Hours</th>
            <th scope="col">Energy</th>
            <th scope="col">Shelves over what was foretold</th>
          </tr>
        </thead>
        <tbody>
          {rows.toReversed().map(({ firingId, name, startedAt, hours, kWh, shelves }) => (
            <tr key={firingId}>
              <th scope="row">
                {name}
                <br />
                <span className={parts.soft}>{dayClockWords(startedAt)}</span>
              </th>
              <td>{both(hours, hoursLong)}</td>
              <td>{both(kWh, kWhWords)}</td>
              <td>
                {shelves.length === 0
                  ? "–"
                  : shelves.map(({ level, off }) => `shelf ${level + 1} ${degrees(off ?? 0)}`).join(", ")}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function both({ foretold, actual }: Against, shown: (value: number) => string): string {
  if (foretold === null && actual === null) return "–";
  const told = foretold === null ? "not foretold" : `foretold ${shown(foretold)}`;
  return actual === null ? told : `${shown(actual)} (${told})`;
}

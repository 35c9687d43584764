import { Link } from "wouter";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import styles from "./BatchFields.module.css";

export interface LoadsOfBatchProps {
  readonly wareId: string;
  readonly loads: readonly LoadRecord[] | undefined;
}

/** The loads a batch is in, or is to go into. Nothing where there are none. */
export function LoadsOfBatch({ wareId, loads }: LoadsOfBatchProps) {
  const here = loads?.filter(({ sources }) => sources.some((source) => source.wareId === wareId)) ?? [];
  if (here.length === 0) return null;
  return (
    <section className={styles.section}>
      <h3>In loads</h3>
      <ul className={styles.plainList}>
        {here.map(({ id, name }) => (
          <li key={id}>
            <Link href={`/loads/${id}`} className={styles.pressable}>
              {name}
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}

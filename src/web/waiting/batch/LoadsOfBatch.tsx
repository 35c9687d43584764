import { useMemo } from "react";
import { Link } from "wouter";
import { promisedPieces } from "../../../studio/queries/promised.ts";
import { useLoads } from "../../studio/hooks.ts";
import { pieces } from "../words/ware-words.ts";
import styles from "./BatchFields.module.css";

const NONE: readonly never[] = [];

/** The loads pieces of a batch stand in. Nothing where there are none. */
export function LoadsOfBatch({ wareId }: { readonly wareId: string }) {
  const loads = useLoads() ?? NONE;
  const promised = useMemo(() => promisedPieces(loads).get(wareId) ?? NONE, [loads, wareId]);
  if (promised.length === 0) return null;
  return (
    <section className={styles.section}>
      <h3>In loads</h3>
      <ul className={styles.plainList}>
        {promised.map(({ loadId, loadName, count }) => (
          <li key={loadId}>
            <Link href={`/loads/${loadId}`} className={styles.pressable}>
              {loadName}: {pieces(count)}
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}

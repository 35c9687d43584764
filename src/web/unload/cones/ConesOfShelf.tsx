import { useEffect, useState } from "react";
import { CONES, type ConeName } from "../../../firing/cones/cone.ts";
import { ChoiceField } from "../../parts/index.ts";
import type { Unloading } from "../use-unloading.ts";
import { conesInWords, foretoldBendDeg } from "./bend-words.ts";
import { ConeDial } from "./ConeDial.tsx";
import styles from "./ConesOfShelf.module.css";
import { conesAfter, shelfCones } from "./cone-set.ts";

interface ConesOfShelfProps {
  readonly unloading: Unloading;
  readonly level: number;
  /** Shown at once; on a phone they are folded away until they are wanted. */
  readonly isOpen: boolean;
}

/** The witness cones of one shelf: how they were foretold, and how they are. */
export function ConesOfShelf({ unloading, level, isOpen }: ConesOfShelfProps) {
  const { firing, meant, seeCones, setMeant } = unloading;
  const [isUnfolded, setUnfolded] = useState(isOpen);
  useEffect(() => setUnfolded(isOpen), [isOpen]);
  const all = firing.cones ?? [];
  const seen = all.filter((each) => each.level === level);
  const told = firing.foretold?.levels.find((each) => each.level === level)?.ladder ?? null;
  return (
    <details className={styles.cones} open={isUnfolded} onToggle={(event) => setUnfolded(event.currentTarget.open)}>
      <summary>
        <strong>Witness cones</strong> <span>{seen.length === 0 ? "none seen on this shelf" : conesInWords(seen)}</span>
      </summary>
      <div className={styles.row}>
        {shelfCones(all, level, meant).map((cone) => (
          <ConeDial
            key={`${level}-${cone.cone}-${cone.place}`}
            cone={cone}
            foretoldDeg={told === null ? null : foretoldBendDeg(told, cone.cone)}
            onSee={(bendDeg) => seeCones(conesAfter(all, level, cone, bendDeg))}
          />
        ))}
      </div>
      {meant !== null && (
        <p className={styles.how}>Draw a cone’s tip to where it is, or step it by the hours of a clock.</p>
      )}
      <ChoiceField
        label="Firing cone of the set"
        options={[
          ...(meant === null ? [{ id: "", label: "Choose" }] : []),
          ...CONES.map((cone) => ({ id: cone as string, label: cone as string })),
        ]}
        value={meant ?? ""}
        onChange={(cone) => {
          if (cone !== "") setMeant(cone as ConeName);
        }}
      />
    </details>
  );
}

import { useMemo } from "react";
import { type Cause, causesOf } from "../../../studio/firings/causes.ts";
import { type PieceFacts, pieceFacts } from "../../../studio/firings/piece-facts.ts";
import type { FaultName } from "../../../studio/records/faults.ts";
import { Dialog, Sign } from "../../parts/index.ts";
import { useClayBodies, useGlazes } from "../../studio/hooks.ts";
import { faultName } from "../judging/fault-words.ts";
import type { FiredPiece } from "../judging/pieces.ts";
import type { Unloading } from "../use-unloading.ts";
import styles from "./Causes.module.css";
import { useReadings } from "./use-readings.ts";

interface CausesDialogProps {
  readonly unloading: Unloading;
  readonly piece: FiredPiece;
  readonly faults: readonly FaultName[];
  readonly onClose: () => void;
}

/** What may have caused a piece's faults, by where it stood and how it was fired. Advice, never a finding. */
export default function CausesDialog({ unloading, piece, faults, onClose }: CausesDialogProps) {
  const { firing, record } = unloading;
  const readings = useReadings(firing.id);
  const glazes = useGlazes();
  const clays = useClayBodies();
  const facts = useMemo(
    () =>
      pieceFacts(
        {
          ...{ firing, load: record, readings: readings ?? [] },
          glaze: glazes?.find(({ id }) => id === piece.batch?.glazeId) ?? null,
          clay: clays?.find(({ id }) => id === piece.batch?.clayBodyId) ?? null,
        },
        piece,
      ),
    [firing, record, readings, glazes, clays, piece],
  );
  return (
    <Dialog title="What may have caused it" isOpen onClose={onClose} isWide>
      <p>
        Piece {piece.number} of shelf {piece.level + 1}, {piece.name}. Weighed by {weighedBy(facts)}. These are
        possibilities, the likeliest first; the piece in your hand knows more.
      </p>
      {faults.map((fault) => (
        <FaultCauses key={fault} fault={fault} causes={causesOf(fault, facts)} />
      ))}
    </Dialog>
  );
}

/** What the causes were weighed by: the more of it was seen, the more it is worth. */
function weighedBy({ heat, paceFrom }: PieceFacts): string {
  const heatFrom =
    heat === null ? null : heat.from === "cones" ? "this shelf’s witness cones" : "the heat foretold for this shelf";
  const pace =
    paceFrom === null ? null : paceFrom === "readings" ? "the probe’s readings" : "the curve as it was foretold";
  return ["where it stood", heatFrom, pace].filter((each) => each !== null).join(", ");
}

function FaultCauses(props: { readonly fault: FaultName; readonly causes: readonly Cause[] }) {
  const { fault, causes } = props;
  const shown = causes.filter(({ standing }) => standing !== "unlikely");
  const unlikely = causes.filter(({ standing }) => standing === "unlikely");
  return (
    <section className={styles.fault}>
      <h3>{faultName(fault)}</h3>
      <ul className={styles.causes}>
        {shown.map((cause) => (
          <OneCause key={cause.cause} cause={cause} />
        ))}
      </ul>
      {unlikely.length > 0 && (
        <details className={styles.unlikely}>
          <summary>Less likely here ({unlikely.length}): what is known speaks against it</summary>
          <ul className={styles.causes}>
            {unlikely.map((cause) => (
              <OneCause key={cause.cause} cause={cause} />
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

function OneCause({ cause: { cause, because, tryNext, source, standing } }: { readonly cause: Cause }) {
  return (
    <li className={styles.cause}>
      <h4>{cause}</h4>
      {standing === "shown" && <Sign kind="mind">This firing shows signs of it</Sign>}
      <p>{because}</p>
      <p>
        <strong>Next time:</strong> {tryNext}
      </p>
      <p className={styles.source}>{source}</p>
    </li>
  );
}

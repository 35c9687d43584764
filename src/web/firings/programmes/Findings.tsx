import type { ProgrammeFinding } from "../../../firing/programme/check-programme.ts";
import { Sign } from "../../parts/index.ts";
import styles from "./Programmes.module.css";

const SIGN = { fault: "breaks", caution: "mind", note: "mind" } as const;

/** What is to be said of a programme, the gravest first. */
export function Findings({ findings }: { readonly findings: readonly ProgrammeFinding[] }) {
  const order = ["fault", "caution", "note"] as const;
  const sorted = [...findings].sort((a, b) => order.indexOf(a.gravity) - order.indexOf(b.gravity));
  if (sorted.length === 0) return <Sign kind="keeps">Nothing to say against it</Sign>;
  return (
    <ul className={styles.signs}>
      {sorted.map(({ code, gravity, segment, message }) => (
        <li key={`${code} ${segment} ${message}`}>
          <Sign kind={SIGN[gravity]}>
            {segment === null ? "" : `Segment ${segment + 1}: `}
            {message}
          </Sign>
        </li>
      ))}
    </ul>
  );
}

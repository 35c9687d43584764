import { CAUTIONS, CAUTIONS_FIRST } from "../../sheets/cautions.ts";
import { CautionNote } from "../parts/Sign.tsx";
import { useSettings, useStudioCard } from "../studio/hooks.ts";
import styles from "./AboutSection.module.css";
import { Section } from "./Section.tsx";

/** What to mind at a kiln, who says so, and what this is. */
export function AboutSection() {
  const { lengthUnits } = useSettings();
  const version = useStudioCard()?.version;
  return (
    <Section title="Cautions and about">
      <CautionNote title="First of all">{CAUTIONS_FIRST}</CautionNote>
      {CAUTIONS.map(({ title, text, source }) => (
        <details key={title} className={styles.caution}>
          <summary>{title}</summary>
          <p>{text(lengthUnits)}</p>
          <p className={styles.source}>Source: {source}</p>
        </details>
      ))}
      <p className={styles.source}>
        Wareboard{version === undefined ? "" : ` ${version}`}. Everything is kept on the machine it runs on. Set in
        Atkinson Hyperlegible, by the Braille Institute.
      </p>
    </Section>
  );
}

import { useState } from "react";
import { useParams } from "wouter";
import type { KilnRecord } from "../../studio/records/kiln-record.ts";
import { Button, Dialog, NothingHere, Page, Problem, Sign, Spinner, Tabs, TextField } from "../parts/index.ts";
import { useKiln, useSettings } from "../studio/hooks.ts";
import { BuildPart } from "./BuildPart.tsx";
import { ChamberFields } from "./ChamberFields.tsx";
import { Drawings } from "./Drawings.tsx";
import type { Fitting } from "./drawing/fitting.ts";
import type { PartProps } from "./editing.ts";
import fields from "./Fields.module.css";
import { FurniturePart } from "./FurniturePart.tsx";
import { faultWords, fieldOf, problemAt } from "./field-problem.ts";
import styles from "./KilnScreen.module.css";
import { volumeText } from "./kiln-words.ts";
import { MeasuringGuide } from "./MeasuringGuide.tsx";
import { RulesPart } from "./RulesPart.tsx";
import { useKilnDraft } from "./use-kiln-draft.ts";
import { type View, WallPart } from "./WallPart.tsx";

/** One kiln: its measures, furniture and clearances, drawn as they are typed. */
export default function KilnScreen() {
  const { id = "" } = useParams<{ id: string }>();
  const record = useKiln(id);
  if (record === undefined) return <Spinner words="Looking for the kiln" />;
  if (record === null) {
    return (
      <NothingHere
        title="Kiln"
        back={BACK}
        heading="This kiln is not here"
        words="It may have been removed. Undo in the list of kilns brings it back."
      />
    );
  }
  return <KilnEditor key={record.id} record={record} />;
}

const BACK = { href: "/kilns", label: "All kilns" };
type Part = "inside" | "furniture" | "rules" | "build";

/** Which part of the page a field belongs to. */
const partOf = (path: string): Part =>
  path.startsWith("furniture")
    ? "furniture"
    : path.startsWith("rules")
      ? "rules"
      : path.startsWith("kiln.build")
        ? "build"
        : "inside";

function KilnEditor({ record }: { readonly record: KilnRecord }) {
  const { lengthUnits: units } = useSettings();
  const { draft, fault, change, settle, isOpen } = useKilnDraft(record);
  const [part, setPart] = useState<Part>("inside");
  const [isGuideOpen, setGuideOpen] = useState(false);
  const props: PartProps = { draft, units, change, problemAt: (path) => problemAt(fault, path, units) };
  const wrong = fault && partOf(fieldOf(fault));
  const label = (id: Part, words: string) => (wrong === id && part !== id ? <Sign kind="breaks">{words}</Sign> : words);
  const tabs = [
    { id: "inside" as const, label: label("inside", "Inside"), content: <InsidePart {...props} /> },
    {
      id: "furniture" as const,
      label: label("furniture", "Shelves and posts"),
      content: <FurniturePart {...props} />,
    },
    { id: "rules" as const, label: label("rules", "Clearances"), content: <RulesPart {...props} /> },
    { id: "build" as const, label: label("build", "For foretelling firings"), content: <BuildPart {...props} /> },
  ];
  return (
    <Page
      title={draft.kiln.name || "Kiln"}
      back={BACK}
      undoScope="kilns"
      actions={
        <>
          <Button href={`/learn/${record.id}`}>How it fires</Button>
          <Button href={`/upkeep/${record.id}`}>Upkeep</Button>
          <Button onPress={() => setGuideOpen(true)}>How to measure</Button>
        </>
      }
      below={
        <span className={styles.below}>
          {volumeText(draft.kiln.chamber, units)}
          <span aria-live="polite">{fault ? "Not saved yet" : isOpen ? "Saving" : "Saved"}</span>
        </span>
      }
    >
      {fault && wrong !== part && <Problem error={faultWords(fault, units)} />}
      {/* Leaving a field is saying so: what was typed in it is saved. */}
      <form
        className={styles.parts}
        noValidate
        onBlur={settle}
        onSubmit={(event) => {
          event.preventDefault();
          settle();
        }}
      >
        <Tabs label="What of the kiln" tabs={tabs} value={part} onChange={setPart} />
      </form>
      <Dialog title="How to measure" isOpen={isGuideOpen} onClose={() => setGuideOpen(false)}>
        <MeasuringGuide />
        <Button onPress={() => setGuideOpen(false)}>Back to the kiln</Button>
      </Dialog>
    </Page>
  );
}

function InsidePart(props: PartProps) {
  const { draft, change, problemAt: problem } = props;
  const [selected, setSelected] = useState<Fitting | null>(null);
  const [view, setView] = useState<View>("above");
  return (
    <div className={styles.inside}>
      <div className={styles.drawings}>
        <Drawings {...props} selected={selected} onSelect={setSelected} view={view} onView={setView} />
      </div>
      <div className={fields.stack}>
        <TextField
          label="Name"
          value={draft.kiln.name}
          maxLength={120}
          onChange={(name) => change((was) => ({ ...was, kiln: { ...was.kiln, name } }))}
          problem={problem("kiln.name")}
        />
        <ChamberFields
          chamber={draft.kiln.chamber}
          onChange={(chamber) => change((was) => ({ ...was, kiln: { ...was.kiln, chamber } }))}
          problemAt={(field) => problem(`kiln.chamber.${field}`)}
        />
        <WallPart {...props} selected={selected} onSelect={setSelected} onView={setView} />
      </div>
    </div>
  );
}

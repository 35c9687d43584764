import { lazy, Suspense, useRef, useState } from "react";
import { programmeHours } from "../../../firing/programme/ideal-curve.ts";
import { PROGRAMME_FORMAT, type Programme, readProgramme } from "../../../firing/programme/programme.ts";
import { BadInput } from "../../../measures/bad-input.ts";
import type { ProgrammeRecord } from "../../../studio/records/programme-record.ts";
import { undoLast } from "../../loads/undo-last.ts";
import { AddIcon, Button, Empty, Menu, OpenFileIcon, Page, Problem, Spinner, tell } from "../../parts/index.ts";
import { newId, useCommand, useProgrammes } from "../../studio/hooks.ts";
import { hoursLong } from "../words/figures.ts";
import styles from "./Programmes.module.css";
import { programmeWords } from "./programme-words.ts";
import { saveProgramme } from "./save-programme.ts";

const EditSegments = lazy(() => import("./EditSegments.tsx"));
const WriteDialog = lazy(() => import("./WriteDialog.tsx"));

const BLANK: Programme = {
  format: PROGRAMME_FORMAT,
  name: "my programme",
  segments: [{ rateCPerHour: 100, targetC: 1000, holdMin: 10 }],
};
const BACK = { href: "/firings", label: "To the firings" };

type Asked = { readonly what: "write" | "blank" } | { readonly what: "edit"; readonly record: ProgrammeRecord } | null;

/** Her own programmes: written, changed, copied, taken in from a file and given out as one. */
export default function ProgrammesScreen() {
  const programmes = useProgrammes();
  const command = useCommand();
  const file = useRef<HTMLInputElement>(null);
  const [asked, setAsked] = useState<Asked>(null);
  const [error, setError] = useState<unknown>(null);
  if (!programmes) return <Spinner />;
  const give = (name: string, input: object, done?: string) => {
    setError(null);
    command(name, input)
      .then(() => done && tell(done, () => void undoLast("firings")))
      .catch(setError);
  };
  const add = (programme: Programme) => give("add-programme", { id: newId(), programme });
  const takeIn = async (chosen: File) => {
    try {
      add(readProgramme(JSON.parse(await chosen.text())));
      tell(`Took in ${chosen.name}`);
    } catch (caught) {
      setError(
        caught instanceof BadInput ? caught : `${chosen.name} is no programme: it should be a file of programme/1.`,
      );
    }
  };
  const menuOf = (record: ProgrammeRecord) => [
    { id: "copy", label: "Copy", onPress: () => add({ ...record.programme, name: `${record.programme.name}, copy` }) },
    { id: "save", label: "Save as a file", onPress: () => saveProgramme(record.programme) },
    {
      id: "remove",
      label: "Take out",
      isDanger: true,
      onPress: () => give("remove-programme", { id: record.id }, `Took out ${record.programme.name}`),
    },
  ];
  const actions = (
    <>
      <Button icon={<OpenFileIcon />} onPress={() => file.current?.click()}>
        Take in a file
      </Button>
      <Button icon={<AddIcon />} onPress={() => setAsked({ what: "blank" })}>
        Begin with none
      </Button>
      <Button look="main" onPress={() => setAsked({ what: "write" })}>
        Have one written
      </Button>
    </>
  );
  return (
    <Page title="My own programmes" back={BACK} undoScope="firings" actions={programmes.length > 0 && actions}>
      <input
        ref={file}
        type="file"
        accept=".json,application/json"
        hidden
        aria-label="A file of a programme"
        onChange={({ target }) => {
          const [chosen] = target.files ?? [];
          target.value = "";
          if (chosen) void takeIn(chosen);
        }}
      />
      <Problem error={error} />
      {programmes.length === 0 && (
        <Empty
          title="None of your own yet"
          words="A programme is written for each load by itself. Keep those here that you come back to, or those your kiln’s controller has."
          action={<div className={styles.buttons}>{actions}</div>}
        />
      )}
      <ul className={styles.list}>
        {programmes.map((record) => (
          <li key={record.id} className={styles.item}>
            <div>
              <h2>{programmeWords(record.programme)}</h2>
              <p className={styles.soft}>
                {record.programme.segments.length === 1 ? "1 segment" : `${record.programme.segments.length} segments`}{" "}
                · {hoursLong(programmeHours(record.programme).heating)} up{record.note && ` · ${record.note}`}
              </p>
            </div>
            <div className={styles.buttons}>
              <Button label={`Change ${record.programme.name}`} onPress={() => setAsked({ what: "edit", record })}>
                Change
              </Button>
              <Menu label={`More for ${record.programme.name}`} items={menuOf(record)} />
            </div>
          </li>
        ))}
      </ul>
      <Suspense fallback={null}>
        {asked?.what === "write" && <WriteDialog onKeep={add} onClose={() => setAsked(null)} />}
        {asked?.what === "blank" && (
          <EditSegments
            programme={BLANK}
            title="A programme of my own"
            keepWords="Keep it"
            onKeep={add}
            onClose={() => setAsked(null)}
          />
        )}
        {asked?.what === "edit" && (
          <EditSegments
            programme={asked.record.programme}
            keepWords="Keep it so"
            onKeep={(programme) => give("change-programme", { id: asked.record.id, programme })}
            onClose={() => setAsked(null)}
          />
        )}
      </Suspense>
    </Page>
  );
}

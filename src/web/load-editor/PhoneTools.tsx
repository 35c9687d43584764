import { type ReactNode, useRef, useState } from "react";
import { Button, Dialog, DoneIcon, NoIcon, PlayIcon, WaitingIcon } from "../parts/index.ts";
import { useToolsBelow } from "../parts/use-tools-below.ts";
import styles from "./Editor.module.css";
import { planChoices } from "./EditorBar.tsx";
import tools from "./PieceTools.module.css";
import { Tool } from "./PieceTools.tsx";
import { RulesPanel } from "./panels/RulesPanel.tsx";
import { countWaiting, LevelInWords, type PanelName, Shelves } from "./panels/SidePanel.tsx";
import { Tray } from "./panels/Tray.tsx";
import { ListIcon, ShelfIcon } from "./tool-icons.tsx";
import type { Editor } from "./use-editor.ts";

type Sheet = "waiting" | "rules" | "pieces" | "plan";
const TITLES: Readonly<Record<Sheet, string>> = {
  waiting: "What waits outside",
  rules: "The rules",
  pieces: "This level in words",
  plan: "Let it be planned",
};

interface PhoneToolsProps {
  readonly editor: Editor;
  /** The chosen piece's. */
  readonly tools: ReactNode;
  readonly panel: PanelName;
  readonly setPanel: (panel: PanelName) => void;
}

/** On a phone: the chosen piece's tools, or else what there is to open, within reach of the thumb. */
export function PhoneTools({ editor, tools: pieceTools, panel, setPanel }: PhoneToolsProps) {
  const [sheet, setSheet] = useState<Sheet | null>(null);
  const thumb = useRef<HTMLDivElement>(null);
  useToolsBelow(thumb);
  const close = (): void => setSheet(null);
  const { broken, chosen } = editor;
  const inShelves = panel === "shelves";
  return (
    <>
      {inShelves && <Shelves editor={editor} />}
      <div ref={thumb} className={styles.thumb}>
        {chosen !== null && !editor.isFixed && !inShelves ? (
          pieceTools
        ) : (
          <div className={tools.tools}>
            <Tool name={`Waiting ${countWaiting(editor)}`} icon={<WaitingIcon />} onPress={() => setSheet("waiting")} />
            <Tool
              name={broken.length === 0 ? "Rules kept" : `Rules ${broken.length}`}
              icon={broken.length === 0 ? <DoneIcon /> : <NoIcon />}
              onPress={() => setSheet("rules")}
            />
            <Tool name="In words" icon={<ListIcon />} onPress={() => setSheet("pieces")} />
            <Tool
              name="Shelves"
              icon={<ShelfIcon />}
              isDown={inShelves}
              onPress={() => setPanel(inShelves ? "waiting" : "shelves")}
            />
            <Tool name="Plan" icon={<PlayIcon />} isOff={editor.isFixed} onPress={() => setSheet("plan")} />
          </div>
        )}
      </div>
      {sheet !== null && (
        <Dialog title={TITLES[sheet]} isOpen onClose={close}>
          {sheet === "waiting" && <Tray editor={editor} onPut={close} />}
          {sheet === "rules" && <RulesPanel editor={editor} onGone={close} />}
          {sheet === "pieces" && <LevelInWords editor={editor} />}
          {sheet === "plan" && (
            <div className={styles.choices}>
              {planChoices(editor).map(({ id, label, isDisabled, onPress }) => (
                <Button
                  key={id}
                  isWide
                  isDisabled={isDisabled}
                  onPress={() => {
                    close();
                    onPress();
                  }}
                >
                  {label}
                </Button>
              ))}
            </div>
          )}
        </Dialog>
      )}
    </>
  );
}

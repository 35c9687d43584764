import { waitingCounts } from "../../../loading/editing/open-plan.ts";
import { Tabs } from "../../parts/index.ts";
import type { usePointer } from "../dragging/use-pointer.ts";
import { ShelvesPanel } from "../furniture/ShelvesPanel.tsx";
import { PieceList } from "../in-words/PieceList.tsx";
import type { Editor } from "../use-editor.ts";
import styles from "./Panels.module.css";
import { RulesPanel } from "./RulesPanel.tsx";
import { Tray } from "./Tray.tsx";

export type PanelName = "waiting" | "rules" | "pieces" | "shelves";

interface SidePanelProps {
  readonly editor: Editor;
  readonly pointer: ReturnType<typeof usePointer>;
  readonly panel: PanelName;
  readonly setPanel: (panel: PanelName) => void;
}

/** Beside the drawings: what waits, the rules, the level in words, the shelves. */
export function SidePanel({ editor, pointer, panel, setPanel }: SidePanelProps) {
  const waiting = countWaiting(editor);
  const { broken } = editor;
  return (
    <>
      <Tabs
        label="What is shown beside the drawings"
        value={panel}
        onChange={setPanel}
        tabs={[
          { id: "waiting", label: `Waiting ${waiting}` },
          { id: "rules", label: broken.length === 0 ? "Rules" : `Rules ${broken.length}` },
          { id: "pieces", label: "Pieces" },
          { id: "shelves", label: "Shelves" },
        ]}
      />
      <div className={styles.scroll}>
        {panel === "waiting" && <Tray editor={editor} pointer={pointer} />}
        {panel === "rules" && <RulesPanel editor={editor} />}
        {panel === "pieces" && <LevelInWords editor={editor} />}
        {panel === "shelves" && <Shelves editor={editor} />}
      </div>
    </>
  );
}

/** The level in words, to be read and edited. */
export const LevelInWords = ({ editor, onGone }: { readonly editor: Editor; readonly onGone?: () => void }) => (
  <PieceList
    load={editor.drawn}
    level={editor.level}
    chosen={editor.chosen}
    pins={editor.load.pins}
    broken={editor.brokenPlaces}
    onChoose={(place) => {
      editor.choose(place);
      onGone?.();
    }}
    onEdit={editor.isFixed ? undefined : (edited, note) => editor.edit(edited, note)}
  />
);

/** Shelves and posts, to be changed by hand. */
export function Shelves({ editor }: { readonly editor: Editor }) {
  const { request, plan, level, goTo, edit, isFixed } = editor;
  if (isFixed) return <p className={styles.soft}>Shelves and posts cannot be changed now.</p>;
  return <ShelvesPanel request={request} plan={plan} level={level} onLevel={goTo} onEdit={edit} />;
}

/** How many pieces wait outside. */
export const countWaiting = ({ request, plan }: Editor): number =>
  [...waitingCounts(request, plan).values()].reduce((sum, count) => sum + Math.max(0, count), 0);

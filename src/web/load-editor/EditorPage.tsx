import { lazy, type ReactNode, Suspense, useMemo, useRef, useState } from "react";
import { placementAt } from "../../studio/loads/places.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import { Page } from "../parts/index.ts";
import { useToolsBelow } from "../parts/use-tools-below.ts";
import { EditorDrawing } from "./dragging/EditorDrawing.tsx";
import { LiveLine } from "./dragging/LiveLine.tsx";
import { useHand } from "./dragging/use-hand.ts";
import { usePointer } from "./dragging/use-pointer.ts";
import { KilnElevation } from "./drawing/KilnElevation.tsx";
import { levelFrame } from "./drawing/level-frame.ts";
import styles from "./Editor.module.css";
import { EditorActions } from "./EditorActions.tsx";
import { BarActions, LoadFacts } from "./EditorBar.tsx";
import { HeightHandle } from "./furniture/HeightHandle.tsx";
import { PostHandles } from "./furniture/PostHandles.tsx";
import { LevelStrip } from "./LevelStrip.tsx";
import { NothingYet } from "./NothingYet.tsx";
import { PartedNotice } from "./PartedNotice.tsx";
import { PhoneTools } from "./PhoneTools.tsx";
import { PieceTools } from "./PieceTools.tsx";
import { PlanningLine } from "./PlanningLine.tsx";
import { type PanelName, SidePanel } from "./panels/SidePanel.tsx";
import { swap } from "./piece-edits.ts";
import { RestingLine } from "./RestingLine.tsx";
import { useEditor } from "./use-editor.ts";
import { useNarrow } from "./use-narrow.ts";
import { useTop } from "./use-top.ts";

const SheetDialog = lazy(() => import("../loads/sheet/SheetDialog.tsx"));

/** The load editor: a level from above beside the kiln from the front, and what there is to do with the pieces. */
export function EditorPage({ load: kept }: { readonly load: LoadRecord }) {
  const editor = useEditor(kept);
  const { load, plan, request, level, chosen } = editor;
  const inHand = useHand(editor);
  const svg = useRef<SVGSVGElement>(null);
  const box = useRef<HTMLDivElement>(null);
  useTop(box);
  const [panel, showPanel] = useState<PanelName>("waiting");
  const setPanel = (to: PanelName): void => {
    // Among the shelves pieces are not moved: none is chosen.
    if (to === "shelves") editor.choose(null);
    showPanel(to);
  };
  const [isSwapping, setSwapping] = useState(false);
  const [isSheetOpen, setSheetOpen] = useState(false);
  const isNarrow = useNarrow();
  const pointer = usePointer({
    svg,
    inHand,
    isSwapping,
    spotOf: (piece) => ("ware" in piece ? null : (placementAt(plan as never, piece) ?? null)),
    taken: (piece) => {
      if (!isSwapping) editor.choose("ware" in piece ? null : piece);
    },
    pressed: (place) => {
      // What the keys hold is set down before something else is pressed.
      inHand.drop();
      if (isSwapping && chosen && place) swap(editor, chosen, place);
      else editor.choose(place);
      setSwapping(false);
    },
  });
  const marked = useMemo(() => (chosen ? [chosen] : []), [chosen]);
  const isEmpty = load.plan === null && editor.planning.livePlan === null;
  const isFurniture = panel === "shelves" && !editor.isFixed && plan.levels.length > 0;
  const handles = { request, plan, level, frame: levelFrame(request.kiln.chamber), onEdit: editor.edit };
  const drawing = (
    <EditorDrawing
      editor={editor}
      inHand={inHand}
      pointer={pointer}
      svg={svg}
      isSwapping={isSwapping}
      furniture={isFurniture ? <PostHandles {...handles} /> : undefined}
    />
  );
  const line = (
    <LiveLine
      inHand={inHand}
      units={editor.units}
      resting={<RestingLine editor={editor} isSwapping={isSwapping} isFurniture={isFurniture} />}
    />
  );
  const tools = (
    <PieceTools
      editor={editor}
      inHand={inHand}
      isSwapping={isSwapping}
      onSwap={() => setSwapping(!isSwapping)}
      onDone={isNarrow ? () => editor.choose(null) : undefined}
    />
  );
  return (
    <div className={styles.screen}>
      <Page
        title={load.name}
        back={{ href: "/loads", label: "All loads" }}
        undoScope={`load:${load.id}`}
        isFull
        below={<LoadFacts editor={editor} />}
        actions={<BarActions editor={editor} isNarrow={isNarrow} onSheet={() => setSheetOpen(true)} />}
      >
        <PartedNotice editor={editor} />
        <PlanningLine editor={editor} />
        {isEmpty ? (
          <NothingYet editor={editor} />
        ) : isNarrow ? (
          <div className={styles.phone}>
            <LevelStrip editor={editor} over={inHand.over} />
            <div className={styles.phoneDrawing}>{drawing}</div>
            {line}
            <PhoneTools editor={editor} tools={tools} panel={panel} setPanel={setPanel} />
          </div>
        ) : (
          <div ref={box} className={styles.editor}>
            <div className={styles.plan}>{drawing}</div>
            <Under>
              {line}
              {!isFurniture && tools}
            </Under>
            <div className={styles.elevation}>
              <KilnElevation
                request={request}
                plan={plan}
                level={level}
                marked={marked}
                over={typeof inHand.over === "object" ? (inHand.over?.level ?? null) : null}
                broken={editor.brokenLevels}
                onPress={editor.goTo}
              >
                {isFurniture && <HeightHandle {...handles} />}
              </KilnElevation>
            </div>
            <div className={styles.panel}>
              <SidePanel editor={editor} pointer={pointer} panel={panel} setPanel={setPanel} />
            </div>
          </div>
        )}
        <EditorActions editor={editor} inHand={inHand} isSwapping={isSwapping} setSwapping={setSwapping} />
        <Suspense fallback={null}>
          {isSheetOpen && <SheetDialog load={load} onClose={() => setSheetOpen(false)} />}
        </Suspense>
      </Page>
    </div>
  );
}

/** What stands under the drawing; notices stand above it. */
function Under({ children }: { readonly children: ReactNode }) {
  const under = useRef<HTMLDivElement>(null);
  useToolsBelow(under);
  return (
    <div ref={under} className={styles.under}>
      {children}
    </div>
  );
}

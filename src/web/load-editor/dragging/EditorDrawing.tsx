import { type ReactNode, type RefObject, useEffect, useMemo, useRef } from "react";
import type { NumberedPiece } from "../../../sheets/sheet-load.ts";
import { placeKey } from "../../../studio/loads/places.ts";
import base from "../../kilns/drawing/Drawing.module.css";
import { planBox } from "../../kilns/drawing/frame.ts";
import { ClearanceRing } from "../drawing/ClearanceRing.tsx";
import { kindSigns, signName } from "../drawing/kind-signs.ts";
import { LevelGround, lowestRimFirst, signOf } from "../drawing/LevelMarks.tsx";
import { levelFrame } from "../drawing/level-frame.ts";
import { useZoom } from "../drawing/use-zoom.ts";
import { ZoomButtons } from "../drawing/ZoomButtons.tsx";
import type { Editor } from "../use-editor.ts";
import { isSame } from "../use-editor.ts";
import { piecesWords, standingWords } from "../words/place-words.ts";
import styles from "./EditorDrawing.module.css";
import { EditorPiece } from "./EditorPiece.tsx";
import { HandMarks } from "./HandMarks.tsx";
import { isPlaced } from "./hand.ts";
import type { InHand } from "./use-hand.ts";
import type { PointerHandlers } from "./use-pointer.ts";

interface EditorDrawingProps {
  readonly editor: Editor;
  readonly inHand: InHand;
  readonly pointer: PointerHandlers;
  readonly svg: RefObject<SVGSVGElement | null>;
  readonly isSwapping: boolean;
  /** Posts are moved instead of pieces: drawn by what is given here. */
  readonly furniture?: ReactNode;
}

/** The level she works on, from above: pieces to press, drag, turn, and go through by keys. */
export function EditorDrawing({ editor, inHand, pointer, svg, isSwapping, furniture }: EditorDrawingProps) {
  const { request, drawn, here, chosen, units, level } = editor;
  const frame = levelFrame(request.kiln.chamber);
  const signs = useMemo(() => kindSigns(request.ware), [request]);
  const pieces = useMemo(() => lowestRimFirst(here?.pieces ?? []), [here]);
  const { hand } = inHand;
  const inFurniture = furniture !== undefined;
  const lifted = hand && isPlaced(hand.piece) ? hand.piece : null;
  const first = chosen ?? pieces.find(({ number }) => number === 1)?.piece ?? null;
  const chosenPiece = pieces.find(({ piece }) => isSame(piece, chosen));
  const canTurn = chosenPiece?.piece.ware.handle || chosenPiece?.piece.ware.spout;
  useFocusOnChosen(svg, chosen && placeKey(chosen));
  const { onPointerDown, onPointerMove, onPointerUp, onPointerCancel } = pointer;
  const zoom = useZoom({
    svg,
    whole: planBox(frame),
    mayZoom: () => inHand.live.get() === null,
    begins: onPointerCancel,
  });
  const handlers = inFurniture ? {} : { onPointerDown, onPointerMove, onPointerUp, onPointerCancel };
  const looks = [base.drawing, styles.drawing, isSwapping && styles.swapping, zoom.isZoomed && styles.near];
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: a drawing cannot be a fieldset */}
      <svg
        ref={svg}
        className={looks.filter(Boolean).join(" ")}
        viewBox={zoom.viewBox}
        preserveAspectRatio="xMidYMin meet"
        role="group"
        aria-label={`Level ${level + 1} from above, ${piecesWords(pieces.length)}`}
        data-editor-drawing=""
        {...handlers}
      >
        <LevelGround load={drawn} level={here} frame={frame} withoutPosts={inFurniture} />
        {chosenPiece && !hand && !inFurniture && (
          <ChosenRing
            numbered={chosenPiece}
            gapMm={request.rules.gapMm}
            breaks={editor.brokenPlaces.has(placeKey(chosenPiece.piece))}
          />
        )}
        <g className={inFurniture ? styles.behind : undefined}>
          {pieces.map((numbered) => {
            const key = placeKey(numbered.piece);
            const isBroken = editor.brokenPlaces.has(key);
            const isPinned = editor.pins.has(key);
            return (
              <EditorPiece
                key={key}
                numbered={numbered}
                sign={signOf(signs, numbered)}
                letter={frame.letter}
                label={labelOf(numbered, units, isPinned, isBroken)}
                isChosen={isSame(numbered.piece, chosen)}
                isBroken={isBroken}
                isPinned={isPinned}
                isIn={editor.ticks.has(key)}
                isLifted={isSame(numbered.piece, lifted)}
                isFirst={isSame(numbered.piece, first)}
              />
            );
          })}
        </g>
        {chosenPiece && canTurn && !hand && !inFurniture && !editor.isFixed && (
          <TurnHandle numbered={chosenPiece} gapMm={request.rules.gapMm} finger={frame.finger} />
        )}
        {hand && (
          <HandMarks
            hand={hand}
            live={inHand.live}
            scene={drawn.scene}
            gapMm={request.rules.gapMm}
            units={units}
            sign={signs.get(signName(hand.ware))}
            number={pieces.find(({ piece }) => isSame(piece, lifted))?.number ?? null}
            letter={frame.letter}
            times={zoom.times}
            isAway={inHand.over !== null}
          />
        )}
        {furniture}
      </svg>
      <ZoomButtons zoom={zoom} />
    </>
  );
}

function labelOf(numbered: NumberedPiece, units: Editor["units"], isPinned: boolean, isBroken: boolean): string {
  return `${standingWords(numbered, units)}${isPinned ? ", pinned" : ""}${isBroken ? ", breaks a rule" : ""}`;
}

interface ChosenProps {
  readonly numbered: NumberedPiece;
  readonly gapMm: number;
}

function ChosenRing({ numbered, gapMm, breaks }: ChosenProps & { readonly breaks: boolean }) {
  const { x, y, ware } = numbered.piece;
  return (
    <g
      className={styles.chosenRing}
      transform={`translate(${x} ${-y}) rotate(${-numbered.turnDeg})`}
      data-answer={breaks ? "breaks" : "keeps"}
    >
      <ClearanceRing ware={ware} gapMm={gapMm} />
    </g>
  );
}

/** A knob on the ring to turn the piece by. Keys and buttons do the same. */
function TurnHandle({ numbered, gapMm, finger }: ChosenProps & { readonly finger: number }) {
  const { x, y, solid } = numbered.piece;
  const out = solid.reachMm + gapMm + finger * 0.42;
  return (
    <g
      className={styles.turnHandle}
      transform={`translate(${x} ${-y}) rotate(${-numbered.turnDeg}) translate(${out} 0)`}
      data-turn-handle={placeKey(numbered.piece)}
    >
      <circle className={styles.finger} r={finger * 0.75} />
      <circle className={styles.knob} r={finger * 0.34} />
      <path
        className={styles.knobSign}
        transform={`scale(${finger * 0.16})`}
        d="M-1 .45A1.1 1.1 0 0 1 1 .45M-1.35-.3L-1 .5L-.2.15M1.35-.3L1 .5L.2.15"
      />
    </g>
  );
}

/** Where the focus is in the drawing it goes with the chosen piece, also where that was drawn anew. */
function useFocusOnChosen(svg: RefObject<SVGSVGElement | null>, key: string | null): void {
  const isHere = useRef(false);
  useEffect(() => {
    const element = svg.current;
    if (!element) return;
    const came = (): void => {
      isHere.current = true;
    };
    const went = ({ relatedTarget }: FocusEvent): void => {
      if (relatedTarget !== null) isHere.current = element.contains(relatedTarget as Node);
    };
    const pressed = ({ target }: Event): void => {
      if (!element.contains(target as Node)) isHere.current = false;
    };
    element.addEventListener("focusin", came);
    element.addEventListener("focusout", went);
    addEventListener("pointerdown", pressed, true);
    return () => {
      element.removeEventListener("focusin", came);
      element.removeEventListener("focusout", went);
      removeEventListener("pointerdown", pressed, true);
    };
  }, [svg]);
  useEffect(() => {
    if (!isHere.current || key === null) return;
    svg.current?.querySelector<SVGElement>(`[data-place="${key}"]`)?.focus({ preventScroll: true });
  });
}

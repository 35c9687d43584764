import { useMemo } from "react";
import { waitingCounts } from "../../../loading/editing/open-plan.ts";
import { wareSolid } from "../../../loading/solids/ware-solid.ts";
import { LengthText } from "../../parts/index.ts";
import type { usePointer } from "../dragging/use-pointer.ts";
import { kindSigns, signName } from "../drawing/kind-signs.ts";
import marks from "../drawing/Marks.module.css";
import { Mark, outlineNodes } from "../drawing/PieceFromAbove.tsx";
import { putInAt } from "../piece-edits.ts";
import type { Editor } from "../use-editor.ts";
import styles from "./Panels.module.css";

interface TrayProps {
  readonly editor: Editor;
  /** Left out where nothing can be dragged from it, as from a sheet over the drawing. */
  readonly pointer?: ReturnType<typeof usePointer>;
  readonly onPut?: () => void;
}

/** Small pieces look small among the others. */
const SMALLEST_MM = 55;

/** What waits outside, and why. A press puts one in where there is room on this level; dragging sets it where she likes. */
export function Tray({ editor, pointer, onPut }: TrayProps) {
  const { request, plan, isFixed, level } = editor;
  const signs = useMemo(() => kindSigns(request.ware), [request]);
  const waiting = useMemo(() => {
    const counts = waitingCounts(request, plan);
    const reasons = new Map(plan.left.map(({ ware, reason }) => [ware, reason]));
    return request.ware.flatMap((ware) => {
      const count = counts.get(ware.name) ?? 0;
      return count > 0 ? [{ ware, count, reason: reasons.get(ware.name) ?? "" }] : [];
    });
  }, [request, plan]);
  if (waiting.length === 0) {
    return (
      <div className={styles.panel} data-drop-tray="">
        <p className={styles.soft}>Nothing waits outside: every piece of this load stands in it.</p>
      </div>
    );
  }
  return (
    <div className={styles.panel} data-drop-tray="">
      {!isFixed && (
        <p className={styles.soft}>
          {pointer
            ? `Press one to put it in on level ${level + 1}, or drag it there.`
            : `Press one to put it in on level ${level + 1}.`}
        </p>
      )}
      <ul className={styles.list}>
        {waiting.map(({ ware, count, reason }) => {
          const put = (): void => {
            putInAt(editor, ware.name, level);
            onPut?.();
          };
          const sign = signs.get(signName(ware));
          const reach = Math.max(SMALLEST_MM, wareSolid(ware, 0, 0, 0, 0).reachMm) * 1.1;
          return (
            <li key={ware.name}>
              <button
                type="button"
                className={`${styles.row} ${pointer && !isFixed ? styles.drags : ""}`}
                disabled={isFixed}
                onClick={(event) => {
                  // A pointer's press is told by the drag itself; keys come here.
                  if (!pointer || event.detail === 0) put();
                }}
                {...(pointer && {
                  onPointerDown: (event) => pointer.pressWaiting(event, ware.name, put),
                  onPointerMove: pointer.onPointerMove,
                  onPointerUp: pointer.onPointerUp,
                  onPointerCancel: pointer.onPointerCancel,
                })}
              >
                <svg
                  className={styles.picture}
                  viewBox={`${-reach} ${-reach} ${2 * reach} ${2 * reach}`}
                  aria-hidden="true"
                >
                  <g className={marks[`colour${sign?.colour ?? 0}`]}>
                    {outlineNodes(ware).map((node, i) => (
                      // biome-ignore lint/suspicious/noArrayIndexKey: a solid's parts have no names and never change places
                      <Mark key={i} node={node} name={marks.body} />
                    ))}
                  </g>
                </svg>
                <span className={styles.words}>
                  <span className={styles.name}>
                    {count > 1 && `${count}\u00a0×\u00a0`}
                    {ware.name}
                  </span>
                  <span className={styles.soft}>
                    <LengthText mm={ware.diameterMm} /> across, <LengthText mm={ware.heightMm} /> tall
                    {reason && <> · {reason}</>}
                  </span>
                </span>
              </button>
            </li>
          );
        })}
      </ul>
    </div>
  );
}

import type { SheetLoad } from "../../sheets/sheet-load.ts";
import drawing from "../kilns/drawing/Drawing.module.css";
import { frameOf, sideBox } from "../kilns/drawing/frame.ts";
import { CutWalls } from "../kilns/drawing/SideDrawing.tsx";
import styles from "./SidePicture.module.css";

/** The kiln from the front: how far up the load has come, and which shelf comes now. */
export function SidePicture({ load, level }: { readonly load: SheetLoad; readonly level: number }) {
  const frame = frameOf(load.request.kiln.chamber);
  const here = load.levels.find((each) => each.index === level)?.shelf.topMm ?? 0;
  return (
    <svg className={drawing.drawing} viewBox={sideBox(frame)} aria-hidden="true">
      <CutWalls frame={frame} />
      {load.levels.map(({ index, shelf, postsUnder, pieces }) => {
        const look = index === level ? styles.now : shelf.topMm < here ? styles.built : styles.later;
        const [left, right] = reach(shelf.solid.x, shelf.solid.reachMm, frame.reachX);
        return (
          <g key={index} className={look}>
            {postsUnder.map((post) => (
              <line key={post.post} x1={post.x} x2={post.x} y1={-post.baseMm} y2={-post.topMm} strokeWidth={18} />
            ))}
            <rect x={left} y={-shelf.topMm} width={right - left} height={shelf.topMm - shelf.undersideMm} rx={2} />
            {shelf.topMm < here &&
              pieces.map(({ number, piece }) => (
                <rect
                  key={number}
                  className={styles.ware}
                  x={piece.x - piece.ware.diameterMm / 2}
                  y={-piece.solid.topMm}
                  width={piece.ware.diameterMm}
                  height={piece.solid.topMm - shelf.topMm}
                  rx={6}
                />
              ))}
          </g>
        );
      })}
    </svg>
  );
}

/** A shelf's ends from the front, as wide as it may be; never through the wall. */
const reach = (x: number, reachMm: number, wall: number): [number, number] => [
  Math.max(-wall + 4, x - reachMm),
  Math.min(wall - 4, x + reachMm),
];

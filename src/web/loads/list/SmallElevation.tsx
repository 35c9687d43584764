import { memo } from "react";
import { chamberRegion } from "../../../kiln/convex-region.ts";
import { sceneOf } from "../../../loading/checker/scene.ts";
import type { LoadPlan } from "../../../loading/load-plan.ts";
import type { LoadRequest } from "../../../loading/load-request.ts";
import { outlineOf } from "../../view-in-space/solids/outline.ts";
import { rounded, sideOf } from "../../view-in-space/solids/side.ts";
import styles from "./SmallElevation.module.css";

interface SmallElevationProps {
  readonly request: LoadRequest;
  /** Nothing yet: an empty kiln. */
  readonly plan: LoadPlan | null;
}

const WALL_MM = 14;

/** A load seen from the front of the kiln, small and without words: to know it again by. */
export const SmallElevation = memo(function SmallElevation({ request, plan }: SmallElevationProps) {
  const { chamber } = request.kiln;
  const half = Math.max(...outlineOf(chamberRegion(chamber)).map(([x]) => Math.abs(x)));
  const { depthMm } = chamber;
  const box = [-half - WALL_MM, -WALL_MM, 2 * (half + WALL_MM), depthMm + 2 * WALL_MM];
  const scene = plan && sceneOf(request, plan);
  const up = (heightMm: number): number => depthMm - heightMm;
  // From the far wall toward the potter, so that nearer pieces cover farther ones.
  const pieces = [...(scene?.pieces ?? [])].sort((a, b) => b.y - a.y);
  return (
    <svg className={styles.drawing} viewBox={box.join(" ")} aria-hidden="true" focusable="false">
      <path className={styles.wall} d={`M${-half} ${-WALL_MM / 2}V${depthMm}H${half}V${-WALL_MM / 2}`} />
      {scene?.posts.map((post) => (
        <rect
          key={post.name}
          className={styles.post}
          x={post.x - post.solid.reachMm * 0.7}
          y={up(post.topMm)}
          width={post.solid.reachMm * 1.4}
          height={post.topMm - post.baseMm}
        />
      ))}
      {pieces.map((piece) => {
        const foot = (plan?.levels[piece.level]?.topMm ?? 0) + (piece.ware.cookie?.thicknessMm ?? 0);
        const side = rounded(sideOf(piece.ware));
        const right = side.map(([height, radius]) => `${tenth(piece.x + radius)} ${tenth(up(foot + height))}`);
        const left = side.map(([height, radius]) => `${tenth(piece.x - radius)} ${tenth(up(foot + height))}`).reverse();
        return <path key={piece.thing} className={styles.piece} d={`M${right.join("L")}L${left.join("L")}Z`} />;
      })}
      {scene?.shelves.map((shelf) => {
        const across = outlineOf(shelf.region).map(([x]) => x);
        const [from, to] = [Math.min(...across), Math.max(...across)];
        return (
          <rect
            key={shelf.name}
            className={styles.shelf}
            x={from}
            y={up(shelf.topMm)}
            width={to - from}
            height={shelf.topMm - shelf.undersideMm}
          />
        );
      })}
    </svg>
  );
});

const tenth = (mm: number): number => Math.round(mm * 10) / 10;

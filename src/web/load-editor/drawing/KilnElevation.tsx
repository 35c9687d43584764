import { memo, type ReactNode, useMemo } from "react";
import type { LoadPlan } from "../../../loading/load-plan.ts";
import type { LoadRequest } from "../../../loading/load-request.ts";
import type { SheetLevel, SheetLoad } from "../../../sheets/sheet-load.ts";
import { type Place, placeKey } from "../../../studio/loads/places.ts";
import base from "../../kilns/drawing/Drawing.module.css";
import type { Frame } from "../../kilns/drawing/frame.ts";
import { CutWalls, FittingFromFront } from "../../kilns/drawing/SideDrawing.tsx";
import { levelsAtHeightOf } from "./beside.ts";
import { drawnLoad } from "./drawn-load.ts";
import { kindSigns } from "./kind-signs.ts";
import { levelFrame } from "./level-frame.ts";
import styles from "./Marks.module.css";
import { PiecesFromSide, PostFromSide, ShelfFromSide } from "./SideMarks.tsx";

export interface KilnElevationProps {
  readonly request: LoadRequest;
  readonly plan: LoadPlan;
  /** The level that is looked at; null for none. */
  readonly level: number | null;
  readonly marked?: readonly Place[];
  /** Pressed a level. */
  readonly onPress?: (level: number) => void;
  /** Levels where a rule is broken. */
  readonly broken?: ReadonlySet<number>;
  /** The level that a piece is held over. */
  readonly over?: number | null;
  readonly label?: string;
  /** Drawn over it: handles. */
  readonly children?: ReactNode;
}

const NONE: readonly Place[] = [];

/** The kiln cut open, from the front: shelves, posts, every piece's silhouette, what sticks through the wall. */
export const KilnElevation = memo(function KilnElevation(props: KilnElevationProps) {
  const { request, plan, level: chosenLevel, marked = NONE, onPress, broken, over = null, label, children } = props;
  const load = drawnLoad(request, plan);
  const frame = levelFrame(request.kiln.chamber);
  const signs = useMemo(() => kindSigns(request.ware), [request]);
  const chosen = useMemo(() => new Set(marked.map(placeKey)), [marked]);
  const { kiln } = request;
  // Of half shelves at one height the chosen one shows.
  const chosenLast = [...load.levels].sort((a, b) => Number(a.index === chosenLevel) - Number(b.index === chosenLevel));
  const plain = { name: kiln.name, chamber: kiln.chamber };
  return (
    <svg
      className={base.drawing}
      viewBox={elevationBox(frame)}
      role={onPress ? "group" : "img"}
      aria-label={label ?? `The kiln from the front, ${plan.levels.length} levels`}
    >
      <CutWalls frame={frame} />
      {load.levels.map((level) => (
        <rect
          key={level.index}
          data-drop-level={level.index}
          className={
            level.index === over ? styles.rowOver : level.index === chosenLevel ? styles.rowChosen : styles.row
          }
          {...rowOf(level, frame)}
        />
      ))}
      {load.scene.posts.map((post) => (
        <PostFromSide key={post.name} post={post} />
      ))}
      {chosenLast.map((level) => (
        <g key={level.index} data-drop-level={level.index}>
          <PiecesFromSide level={level} signs={signs} chosen={chosen} />
          <ShelfFromSide shelf={level.shelf} isChosen={level.index === chosenLevel} />
        </g>
      ))}
      {[...kiln.probes, ...kiln.spyholes].map((thing) => (
        <FittingFromFront key={`${"reachMm" in thing}${thing.name}`} kiln={plain} thing={thing} frame={frame} />
      ))}
      {load.levels.map((level) => (
        <LevelNumber
          key={level.index}
          level={level}
          along={levelsAtHeightOf(load, level).findLastIndex(({ index }) => index === level.index)}
          frame={frame}
          isChosen={level.index === chosenLevel}
          isBroken={broken?.has(level.index) ?? false}
        />
      ))}
      {onPress &&
        load.levels.map((level) => (
          <LevelButton
            key={level.index}
            level={level}
            frame={frame}
            isChosen={level.index === chosenLevel}
            isBroken={broken?.has(level.index) ?? false}
            onPress={() => onPress(pressedLevel(load, level, chosenLevel))}
          />
        ))}
      {children}
    </svg>
  );
});

/** The elevation's viewBox: room at the left for the levels' numbers, at the right for what pulls a shelf up. */
export function elevationBox({ reachX, depthMm, wall, letter }: Frame): string {
  const side = reachX + wall + letter * 1.9;
  return `${-side} ${-(depthMm + wall + letter * 0.4)} ${2 * side} ${depthMm + 2 * wall + letter * 0.8}`;
}

/** Half shelves at one height look like one from the side: pressed again, it is the other that is meant. */
function pressedLevel(load: SheetLoad, level: SheetLevel, chosen: number | null): number {
  const alike = levelsAtHeightOf(load, level);
  const at = alike.findIndex(({ index }) => index === chosen);
  return at < 0 ? level.index : (alike[(at + 1) % alike.length] ?? level).index;
}

interface Row {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const rowOf = (level: SheetLevel, { reachX }: Frame): Row => ({
  x: -reachX,
  y: -(level.shelf.topMm + Math.max(level.clearMm, 8)),
  width: 2 * reachX,
  height: Math.max(level.clearMm, 8) + level.shelf.topMm - level.shelf.undersideMm,
});

interface LevelProps {
  readonly level: SheetLevel;
  readonly frame: Frame;
  readonly isChosen: boolean;
  readonly isBroken: boolean;
}

function LevelNumber({ level, along, frame, isChosen, isBroken }: LevelProps & { readonly along: number }) {
  const { letter, reachX, wall } = frame;
  // Those at one height stand side by side.
  const x = -(reachX + wall + letter * (0.75 + 0.95 * along));
  const y = -(level.shelf.topMm + letter * 0.4);
  return (
    <>
      <text
        className={isChosen ? styles.levelNumberChosen : styles.levelNumber}
        textAnchor="middle"
        x={x}
        y={y}
        fontSize={letter * 1.15}
      >
        {level.number}
      </text>
      {isBroken && (
        <text className={styles.levelBroken} textAnchor="middle" x={x} y={y - letter * 1.2} fontSize={letter}>
          !
        </text>
      )}
    </>
  );
}

/** The whole row may be pressed; keys reach it too. */
function LevelButton({ level, frame, isChosen, isBroken, onPress }: LevelProps & { readonly onPress: () => void }) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing's part cannot be a button
    <rect
      role="button"
      tabIndex={0}
      data-drop-level={level.index}
      className={styles.levelButton}
      aria-label={`Level ${level.number}, ${level.pieces.length} pieces${isBroken ? ", a rule is broken" : ""}`}
      aria-pressed={isChosen}
      {...rowOf(level, frame)}
      onClick={onPress}
      onKeyDown={(event) => {
        if (event.key !== "Enter" && event.key !== " ") return;
        event.preventDefault();
        onPress();
      }}
    />
  );
}

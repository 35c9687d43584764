import type { ReactNode } from "react";
import { placeKey } from "../../studio/loads/places.ts";
import { BinIcon, CloseIcon, DoneIcon, DownIcon, PinIcon, UpIcon } from "../parts/index.ts";
import type { InHand } from "./dragging/use-hand.ts";
import styles from "./PieceTools.module.css";
import { carryTo, pinOrUnpin, setClear, takeOutOf } from "./piece-edits.ts";
import { SwapIcon, TurnLeftIcon, TurnRightIcon } from "./tool-icons.tsx";
import { type Editor, isSame } from "./use-editor.ts";

interface PieceToolsProps {
  readonly editor: Editor;
  readonly inHand: InHand;
  readonly isSwapping: boolean;
  readonly onSwap: () => void;
  /** Lets the piece go; left out where pressing beside it is the way. */
  readonly onDone?: (() => void) | undefined;
}

const STEP_DEG = 15;

/** What can be done with the chosen piece, under the thumb. */
export function PieceTools({ editor, inHand, isSwapping, onSwap, onDone }: PieceToolsProps) {
  const { chosen, plan, isFixed, pins, brokenPlaces } = editor;
  const isOff = chosen === null || isFixed;
  const on = (run: (place: NonNullable<typeof chosen>) => void) => () => chosen && run(chosen);
  const isPinned = chosen !== null && pins.has(placeKey(chosen));
  const isBroken = chosen !== null && brokenPlaces.has(placeKey(chosen));
  const ware = editor.here?.pieces.find(({ piece }) => isSame(piece, chosen))?.piece.ware;
  // A round piece turned is the same piece.
  const cannotTurn = isOff || !(ware?.handle || ware?.spout);
  const top = plan.levels.length - 1;
  return (
    <div className={styles.tools} role="toolbar" aria-label="The chosen piece">
      <Tool
        name="Turn left"
        icon={<TurnLeftIcon />}
        isOff={cannotTurn}
        onPress={on((at) => inHand.turn(at, STEP_DEG))}
      />
      <Tool
        name="Turn right"
        icon={<TurnRightIcon />}
        isOff={cannotTurn}
        onPress={on((at) => inHand.turn(at, -STEP_DEG))}
      />
      <Tool
        name="Level up"
        icon={<UpIcon />}
        isOff={isOff || chosen.level >= top}
        onPress={on((at) => carryTo(editor, at, at.level + 1))}
      />
      <Tool
        name="Level down"
        icon={<DownIcon />}
        isOff={isOff || chosen.level <= 0}
        onPress={on((at) => carryTo(editor, at, at.level - 1))}
      />
      {isBroken ? (
        <Tool name="Set it clear" icon={<DoneIcon />} isOff={isOff} onPress={on((at) => setClear(editor, at))} />
      ) : (
        <Tool name="Swap" icon={<SwapIcon />} isOff={isOff} isDown={isSwapping} onPress={onSwap} />
      )}
      <Tool
        name={isPinned ? "Unpin" : "Pin"}
        icon={<PinIcon />}
        isOff={isOff}
        isDown={isPinned}
        onPress={on((at) => pinOrUnpin(editor, at))}
      />
      <Tool name="Take out" icon={<BinIcon />} isOff={isOff} onPress={on((at) => takeOutOf(editor, at))} />
      {onDone && <Tool name="Done" icon={<CloseIcon />} onPress={onDone} />}
    </div>
  );
}

interface ToolProps {
  readonly name: string;
  readonly icon: ReactNode;
  readonly isOff?: boolean;
  readonly isDown?: boolean;
  readonly onPress: () => void;
}

/** A large button: a drawing and what it does. */
export const Tool = ({ name, icon, isOff = false, isDown, onPress }: ToolProps) => (
  <button type="button" className={styles.tool} disabled={isOff} aria-pressed={isDown} onClick={onPress}>
    {icon}
    <span>{name}</span>
  </button>
);

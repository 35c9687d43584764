import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from "react";
import type { Scene } from "../../loading/checker/scene.ts";
import styles from "./InSpace.module.css";
import type { PiecePlace } from "./load-in-space.ts";
import { FIRST_LOOK, nearer, type Orbit, turned } from "./orbit.ts";
import { SpacePicture } from "./space-picture.ts";
import { useOrbitHands } from "./use-orbit-hands.ts";

export interface SpaceCanvasProps {
  readonly scene: Scene;
  /** What it shows, for who cannot see it. */
  readonly label: string;
  readonly describedBy: string;
  /** How far the shelves are lifted apart, 0 to 1. */
  readonly liftShare: number;
  readonly chosen: PiecePlace | null;
  readonly onChoose: (place: PiecePlace | null) => void;
  /** Told where the browser would not draw after all. */
  readonly onTrouble: () => void;
}

const STEP_DEG = 6;
const STEP_NEARER = 1.15;

/** What each key does to where the eye stands. */
const KEYS: Readonly<Record<string, (orbit: Orbit) => Orbit>> = {
  ArrowLeft: (orbit) => turned(orbit, -STEP_DEG, 0),
  ArrowRight: (orbit) => turned(orbit, STEP_DEG, 0),
  ArrowUp: (orbit) => turned(orbit, 0, STEP_DEG),
  ArrowDown: (orbit) => turned(orbit, 0, -STEP_DEG),
  "+": (orbit) => nearer(orbit, STEP_NEARER),
  "=": (orbit) => nearer(orbit, STEP_NEARER),
  "-": (orbit) => nearer(orbit, 1 / STEP_NEARER),
  Home: () => FIRST_LOOK,
};

/** The kiln in space: turned by mouse, fingers and keys, a piece chosen by pressing it. */
export default function SpaceCanvas(props: SpaceCanvasProps) {
  const { scene, label, describedBy, liftShare, chosen, onChoose, onTrouble } = props;
  const place = useRef<HTMLDivElement>(null);
  const [picture, setPicture] = useState<SpacePicture | null>(null);

  useEffect(() => {
    const holder = place.current;
    if (!holder) return;
    // A canvas of its own each time: one whose graphics were given back draws no more.
    const canvas = document.createElement("canvas");
    canvas.className = styles.canvas ?? "";
    canvas.setAttribute("aria-hidden", "true");
    holder.append(canvas);
    let made: SpacePicture;
    try {
      made = new SpacePicture(canvas, scene);
    } catch {
      canvas.remove();
      onTrouble();
      return;
    }
    setPicture((before) => {
      if (before) made.orbit = before.orbit;
      return made;
    });
    const sized = new ResizeObserver(() => made.resize());
    sized.observe(canvas);
    const look = new MutationObserver(() => made.recolour());
    look.observe(document.documentElement, { attributeFilter: ["data-look"] });
    canvas.addEventListener("webglcontextlost", onTrouble);
    return () => {
      canvas.removeEventListener("webglcontextlost", onTrouble);
      sized.disconnect();
      look.disconnect();
      made.free();
      canvas.remove();
    };
  }, [scene, onTrouble]);

  useEffect(() => {
    if (picture) picture.liftShare = liftShare;
  }, [picture, liftShare]);
  useEffect(() => {
    if (picture) picture.chosen = chosen;
  }, [picture, chosen]);

  const hands = useMemo(
    () => ({
      orbit: () => picture?.orbit ?? FIRST_LOOK,
      turn: (orbit: Orbit) => {
        if (picture) picture.orbit = orbit;
      },
      press: (x: number, y: number) => onChoose(picture?.pieceAt(x, y) ?? null),
    }),
    [picture, onChoose],
  );
  useOrbitHands(place, hands);

  const pressed = (event: KeyboardEvent): void => {
    const move = KEYS[event.key];
    if (!move || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    hands.turn(move(hands.orbit()));
  };

  return (
    <div
      ref={place}
      className={styles.picture}
      role="application"
      aria-label={label}
      aria-describedby={describedBy}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the picture is turned by the arrow keys
      tabIndex={0}
      onKeyDown={pressed}
    />
  );
}

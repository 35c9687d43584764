import { Color } from "three";

/** The colours of the picture, from the look's own tokens. */
export interface SpaceColours {
  readonly sky: Color;
  readonly under: Color;
  readonly wall: Color;
  readonly line: Color;
  readonly shelf: Color;
  readonly post: Color;
  readonly metal: Color;
  readonly open: Color;
  readonly chosen: Color;
  /** For the kinds of pieces, in turn. A colour says nothing by itself: the name does. */
  readonly kinds: readonly Color[];
}

/** Reads the tokens as they stand on an element now. */
export function coloursOn(element: Element): SpaceColours {
  const style = getComputedStyle(element);
  const token = (name: string): Color => new Color(style.getPropertyValue(`--${name}`).trim() || "#888888");
  const mixed = (one: string, other: string, share: number): Color => token(one).lerp(token(other), share);
  // Light comes from what is light: paper by day, ink in the dark look.
  const isDay = lightness(token("raised")) > lightness(token("ink"));
  const light = token(isDay ? "raised" : "ink");
  const paled = (name: string, share: number): Color => token(name).lerp(light, share);
  return {
    sky: light,
    under: paled("line", 0.3),
    wall: mixed("line", "clay", 0.12),
    line: token("edge"),
    shelf: mixed("line", isDay ? "raised" : "edge", 0.35),
    post: mixed("line", "edge", 0.7),
    metal: token("ink-soft"),
    open: token("ochre"),
    chosen: token("clay"),
    kinds: [
      paled("celadon", 0.4),
      paled("ochre", 0.45),
      paled("ink-soft", 0.35),
      paled("celadon", 0.72),
      paled("ochre", 0.75),
      paled("edge", 0.75),
      mixed("celadon", "ink-soft", 0.35),
      mixed("ochre", "edge", 0.4),
    ],
  };
}

const lightness = ({ r, g, b }: Color): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;

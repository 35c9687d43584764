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
  return {
    sky: token("raised"),
    under: mixed("line", "ink-soft", 0.4),
    wall: mixed("line", "clay", 0.12),
    line: token("edge"),
    shelf: mixed("sunken", "line", 0.5),
    post: mixed("line", "ink-soft", 0.35),
    metal: token("ink-soft"),
    open: token("ochre"),
    chosen: token("clay"),
    kinds: [
      mixed("celadon", "raised", 0.35),
      mixed("ochre", "raised", 0.4),
      mixed("ink-soft", "raised", 0.3),
      mixed("celadon", "line", 0.55),
      mixed("ochre", "line", 0.6),
      mixed("edge", "raised", 0.55),
      mixed("celadon", "ink-soft", 0.4),
      mixed("ochre", "ink-soft", 0.45),
    ],
  };
}

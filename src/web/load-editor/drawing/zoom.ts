/** A drawing's whole box, or the part of it that is looked at. The drawing's own millimetres. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** So near one may come: a cup then fills the screen. */
export const MOST_ZOOM = 6;

/** Reads an SVG viewBox. */
export function readBox(viewBox: string): Box {
  const [x = 0, y = 0, width = 1, height = 1] = viewBox.split(" ").map(Number);
  return { x, y, width, height };
}

export const boxText = ({ x, y, width, height }: Box): string => `${x} ${y} ${width} ${height}`;

/** How many times nearer than the whole. */
export const zoomOf = (whole: Box, view: Box): number => whole.width / view.width;

/** Comes nearer (or goes back, below 1) about a place, which stays where it is on the screen. */
export function zoomed(whole: Box, view: Box, factor: number, about: { readonly x: number; readonly y: number }): Box {
  const zoom = Math.min(MOST_ZOOM, Math.max(1, zoomOf(whole, view) * factor));
  const shrink = whole.width / zoom / view.width;
  return within(whole, {
    x: about.x - (about.x - view.x) * shrink,
    y: about.y - (about.y - view.y) * shrink,
    width: view.width * shrink,
    height: view.height * shrink,
  });
}

/** Looks so far to the side; never past the drawing's edge. */
export const panned = (whole: Box, view: Box, dx: number, dy: number): Box =>
  within(whole, { ...view, x: view.x + dx, y: view.y + dy });

function within(whole: Box, { x, y, width, height }: Box): Box {
  const clamp = (value: number, from: number, to: number): number =>
    Math.min(Math.max(value, from), Math.max(from, to));
  return {
    x: clamp(x, whole.x, whole.x + whole.width - width),
    y: clamp(y, whole.y, whole.y + whole.height - height),
    width,
    height,
  };
}

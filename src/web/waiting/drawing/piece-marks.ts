import { silhouette } from "../../../sheets/drawing/silhouette.ts";
import { toPaper } from "../../../sheets/drawing/to-paper.ts";
import type { Cookie, Protrusion, Ware, WareFile } from "../../../ware/ware.ts";

/** A line or face of a drawn piece. Millimetres, x to the right from the axis, y down from the face it stands on. */
export interface PieceMark {
  readonly part: "body" | "handle" | "spout" | "cookie";
  readonly d: string;
}

/** A piece seen from the side, and the room it takes up. */
export interface PieceDrawn {
  readonly marks: readonly PieceMark[];
  readonly leftMm: number;
  readonly rightMm: number;
  readonly topMm: number;
}

/** What of a piece can be seen from the side. */
export type Seen = Pick<WareFile, "diameterMm" | "heightMm" | "form" | "handle" | "spout" | "profile" | "cookie">;

const BODY = "body";

/** A piece from the side, drawn by what draws it on the printed sheet. */
export function drawPiece(seen: Seen): PieceDrawn {
  const ware = whole(seen);
  const nodes = silhouette({ ware, x: 0 }, 0, 0, BODY, toPaper(1));
  const marks: PieceMark[] = [];
  for (const { name, attributes } of nodes) {
    const d = String(attributes.d ?? "");
    if (name === "rect") marks.push({ part: "cookie", d: cookiePath(ware.cookie as Cookie) });
    else if (attributes.fill !== "none") marks.push({ part: d === nodes.at(-1)?.attributes.d ? "body" : "spout", d });
    // The sheet draws an ear twice, a dark line under a light one; here it is one mark.
    else if (marks.at(-1)?.d !== d) marks.push({ part: "handle", d });
  }
  const reach = [ware.handle, ware.spout].flatMap((part) => (part ? [across(ware, part)] : []));
  const half = Math.max(ware.diameterMm, ware.cookie?.diameterMm ?? 0) / 2;
  return {
    marks,
    leftMm: Math.min(-half, ...reach),
    rightMm: Math.max(half, ...reach),
    topMm: ware.heightMm + (ware.cookie?.thicknessMm ?? 0),
  };
}

const across = ({ diameterMm }: Ware, { reachMm, angleDeg }: Protrusion): number =>
  (diameterMm / 2 + reachMm) * Math.cos((angleDeg * Math.PI) / 180);

const cookiePath = ({ diameterMm, thicknessMm }: Cookie): string =>
  `M ${-diameterMm / 2} ${-thicknessMm} h ${diameterMm} v ${thicknessMm} h ${-diameterMm} Z`;

const whole = (seen: Seen): Ware => ({
  name: "",
  count: 1,
  value: 1,
  mustFire: false,
  glaze: null,
  cone: null,
  massKg: null,
  diameterMm: seen.diameterMm,
  heightMm: seen.heightMm,
  form: seen.form ?? null,
  handle: seen.handle ?? null,
  spout: seen.spout ?? null,
  profile: seen.profile ?? null,
  cookie: seen.cookie ?? null,
});

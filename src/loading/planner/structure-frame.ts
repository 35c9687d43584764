import { shelfMassKg } from "../../kiln/shelf-mass.ts";
import type { Columns } from "./columns.ts";
import { otherColumns } from "./legal-columns.ts";
import { type Frame, NOTHING_HELD } from "./stand.ts";
import { standingRoom } from "./standing-room.ts";
import type { Structure } from "./structure.ts";
import type { LoadTask } from "./task.ts";
import { rounded } from "./write-plan.ts";

/** A structure on its three columns, nothing standing on it yet. Its columns may be shifted round the kiln. */
export function structureFrame(task: LoadTask, structure: Structure, columns: Columns): Frame {
  return {
    stands: structure.levels.map(({ seat, clearMm }, i) => ({
      middleX: 0,
      middleY: 0,
      areaMm2: seat.areaMm2,
      spreadMm: Math.sqrt(seat.areaMm2 / Math.PI) * 1.05,
      clearMm,
      space: standingRoom(task, structure, columns, i),
      footing: { triangle: columns, shelfKg: shelfMassKg(seat.areaMm2, seat.shelf.thicknessMm), shelfX: 0, shelfY: 0 },
      held: NOTHING_HELD,
    })),
    furniture: structure.levels.map(({ seat, topMm }, i) => ({
      shelf: seat.shelf.name,
      topMm: rounded(topMm),
      xMm: 0,
      yMm: 0,
      turnDeg: seat.turnDeg,
      posts: (structure.stacks[i] as Structure["stacks"][number]).map((stack, c) => ({
        xMm: rounded(columns.x[c] as number),
        yMm: rounded(columns.y[c] as number),
        turnDeg: rounded(columns.turnDeg[c] as number),
        heightsMm: stack.parts.map((part) => (task.posts[part] as LoadTask["posts"][number]).heightMm),
      })),
    })),
    shifted: (chance) => {
      const others = otherColumns(task, structure, chance);
      return others && structureFrame(task, structure, others);
    },
  };
}

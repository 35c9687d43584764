import { BadInput, shown } from "../../measures/bad-input.ts";
import type { LoadPlan, Placement } from "../load-plan.ts";
import type { LoadRequest } from "../load-request.ts";

/** Where a piece stands in a plan: its level and which of that level's placements, both from 0. */
export interface PlacementPlace {
  readonly level: number;
  readonly placement: number;
}

/** A plan to plan around: its shelves and posts stay as they are. */
export interface PlanAround {
  readonly plan: LoadPlan;
  /** Which of its pieces stay exactly where they stand: those pinned, or all. */
  readonly keep: "pinned" | "all";
  readonly pins: readonly PlacementPlace[];
}

/** A plan to plan around, sorted into what stays and what may move. */
export interface Around {
  readonly plan: LoadPlan;
  /** For each level the pieces that stay, in their order. */
  readonly kept: readonly (readonly Placement[])[];
  /** For each level those that may be moved or left out. */
  readonly free: readonly (readonly Placement[])[];
  /** Where the pins are once the kept pieces of each level come first. */
  readonly pins: readonly PlacementPlace[];
}

/**
 * Sorts a given plan into what stays and what may move.
 *
 * @returns null where there is none, or where it has no levels: then all is planned freely
 * @throws BadInput where a pin points at nothing, a shelf or a kept piece is not the request's, or more pieces of a kind
 * are kept than the request has
 */
export function planAround(request: LoadRequest, around: PlanAround | undefined): Around | null {
  if (!around) return null;
  const { plan, keep, pins } = around;
  pins.forEach((pin, i) => {
    if (plan.levels[pin.level]?.placements[pin.placement]) return;
    throw new BadInput({
      code: "unknown-place",
      path: `around.pins[${i}]`,
      found: `placement ${pin.placement} of level ${pin.level}`,
      expected: "a placement of the plan",
    });
  });
  if (plan.levels.length === 0) return null;
  const stays = plan.levels.map((level, l) =>
    level.placements.map((_, p) => keep === "all" || pins.some((pin) => pin.level === l && pin.placement === p)),
  );
  checkNames(request, plan, stays);
  const sorted = (wanted: boolean): Placement[][] =>
    plan.levels.map((level, l) => level.placements.filter((_, p) => stays[l]?.[p] === wanted));
  return {
    plan,
    kept: sorted(true),
    free: sorted(false),
    pins: pins.map(({ level, placement }) => ({
      level,
      placement: (stays[level] ?? []).slice(0, placement).filter(Boolean).length,
    })),
  };
}

function checkNames(request: LoadRequest, plan: LoadPlan, stays: readonly (readonly boolean[])[]): void {
  const counts = new Map(request.ware.map((ware) => [ware.name, ware.count]));
  const kept = new Map<string, number>();
  const shelves = new Set(request.furniture.shelves.map((shelf) => shelf.name));
  plan.levels.forEach((level, l) => {
    const at = `around.plan.levels[${l}]`;
    if (!shelves.has(level.shelf)) {
      throw new BadInput({
        code: "unknown-name",
        path: `${at}.shelf`,
        found: shown(level.shelf),
        expected: "a shelf of the request",
      });
    }
    level.placements.forEach(({ ware }, p) => {
      if (!stays[l]?.[p]) return;
      const path = `${at}.placements[${p}].ware`;
      const most = counts.get(ware);
      if (most === undefined) {
        throw new BadInput({ code: "unknown-name", path, found: shown(ware), expected: "a piece of the request" });
      }
      const count = (kept.get(ware) ?? 0) + 1;
      kept.set(ware, count);
      if (count <= most) return;
      throw new BadInput({
        code: "too-many-kept",
        path,
        found: `${count} of ${shown(ware)} that stay where they are`,
        expected: `at most the ${most} that the request has`,
      });
    });
  });
}

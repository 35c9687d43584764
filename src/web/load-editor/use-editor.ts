import { useMemo, useState, useSyncExternalStore } from "react";
import { type Broken, checkPlan } from "../../loading/checker/check-plan.ts";
import type { Edited, PiecePlace } from "../../loading/editing/open-plan.ts";
import type { LoadPlan } from "../../loading/load-plan.ts";
import type { LoadRequest } from "../../loading/load-request.ts";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import type { LengthUnits } from "../../measures/length.ts";
import type { SheetLevel, SheetLoad } from "../../sheets/sheet-load.ts";
import { type Place, placeKey } from "../../studio/loads/places.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import { type Planning, usePlanning } from "../loads/use-planning.ts";
import { useSettings } from "../studio/hooks.ts";
import { drawnLoad } from "./drawing/drawn-load.ts";
import type { EditLine, Parted } from "./saving/edit-line.ts";
import { editLineOf } from "./saving/edit-lines.ts";
import type { LoadEdit } from "./saving/load-edit.ts";
import { useSteady } from "./use-steady.ts";

/** What is looked at and chosen once an edit is done; left out, it follows the piece. */
export interface Afterwards {
  readonly level?: number;
  readonly chosen?: Place | null;
}

/** A load being edited: what it is, what is looked at, and how it is changed. */
export interface Editor {
  readonly load: LoadRecord;
  readonly request: LoadRequest;
  /** What is shown: the load's own plan, or the one that planning has come to so far. */
  readonly plan: LoadPlan;
  readonly drawn: SheetLoad;
  readonly units: LengthUnits;
  readonly planning: Planning;
  readonly parted: Parted | null;
  readonly line: EditLine;
  /** The level looked at; its index in the plan. */
  readonly level: number;
  readonly here: SheetLevel | null;
  readonly chosen: Place | null;
  /** Nothing can be changed now: a plan is being looked for, or the load has been fired. */
  readonly isFixed: boolean;
  readonly broken: readonly Broken[];
  /** Pieces that break a rule, by place. */
  readonly brokenPlaces: ReadonlySet<string>;
  readonly brokenLevels: ReadonlySet<number>;
  readonly pins: ReadonlySet<string>;
  readonly ticks: ReadonlySet<string>;
  readonly goTo: (level: number) => void;
  readonly choose: (place: Place | null) => void;
  /** Does an edit, with a note in words for undo. */
  readonly edit: (edited: Edited, note: string, then?: Afterwards) => void;
  readonly setPins: (pins: readonly Place[], note: string) => void;
}

/**
 * The editor of a load that has a plan.
 *
 * @param kept the load as this page knows it
 */
export function useEditor(kept: LoadRecord): Editor {
  const line = editLineOf(kept.id);
  const { working, parted } = useSyncExternalStore(
    (listener) => line.subscribe(listener),
    () => line.state(),
  );
  const load = working ?? kept;
  const { lengthUnits: units } = useSettings();
  const planning = usePlanning(load.id);
  const requestFile = useSteady(load.request);
  const planFile = useSteady(load.plan);
  const request = useMemo(() => readLoadRequest(requestFile), [requestFile]);
  const ownPlan = useMemo(
    () => (planFile === null ? nothingIn(request) : readLoadPlan(planFile, request)),
    [planFile, request],
  );
  const plan = planning.livePlan ?? ownPlan;
  const drawn = useMemo(() => drawnLoad(request, plan), [request, plan]);
  const broken = useMemo(() => checkPlan(request, plan), [request, plan]);
  const places = useMemo(() => whereBroken(broken), [broken]);
  const isOwn = planning.livePlan === null;
  const pins = useMemo(() => keysOf(isOwn ? load.pins : []), [isOwn, load.pins]);
  const ticks = useMemo(() => keysOf(isOwn ? load.ticks : []), [isOwn, load.ticks]);
  const [wanted, setWanted] = useState<{ level: number; chosen: Place | null }>({ level: 0, chosen: null });
  const level = Math.max(0, Math.min(wanted.level, plan.levels.length - 1));
  const isThere = wanted.chosen !== null && plan.levels[wanted.chosen.level]?.placements[wanted.chosen.placement];
  const chosen = isOwn && isThere ? wanted.chosen : null;
  const isFixed = !isOwn || planning.running || load.state === "fired" || load.state === "unpacked";

  const give = (edit: LoadEdit): void => line.add(kept, edit);
  return {
    ...{ load, request, plan, drawn, units, planning, parted, line, level, chosen, isFixed, broken, pins, ticks },
    ...places,
    here: drawn.levels[level] ?? null,
    goTo: (to) => setWanted({ level: to, chosen: wanted.chosen?.level === to ? wanted.chosen : null }),
    choose: (place) => setWanted({ level: place?.level ?? level, chosen: place }),
    edit: (edited, note, then = {}) => {
      const followed = then.chosen === undefined ? follow(edited, chosen) : then.chosen;
      give({ note, plan: edited.plan, moves: edited.moves });
      setWanted({ level: then.level ?? followed?.level ?? level, chosen: followed });
    },
    setPins: (places, note) => give({ note, pins: places.map(({ level, placement }) => ({ level, placement })) }),
  };
}

/** A plan with nothing in it, to lay a load by hand. */
export const nothingIn = ({ ware }: LoadRequest): LoadPlan => ({
  format: "load-plan/1",
  levels: [],
  left: ware.map(({ name, count }) => ({ ware: name, count, reason: "not placed yet" })),
  figures: {},
});

const keysOf = (places: readonly Place[]): ReadonlySet<string> => new Set(places.map(placeKey));

function follow({ moves }: Edited, chosen: Place | null): Place | null {
  if (chosen === null) return null;
  return moves.find(({ from }) => isSame(from, chosen))?.to ?? null;
}

export const isSame = (a: PiecePlace | null, b: PiecePlace | null): boolean =>
  a !== null && b !== null && a.level === b.level && a.placement === b.placement;

function whereBroken(broken: readonly Broken[]): Pick<Editor, "brokenPlaces" | "brokenLevels"> {
  const pieces = broken.flatMap(({ places }) => places).filter((place) => place.kind === "piece");
  const levels = broken.flatMap(({ level, places }) => [
    ...(level === null ? [] : [level]),
    ...places.flatMap((place) => ("level" in place ? [place.level] : [])),
  ]);
  return { brokenPlaces: keysOf(pieces), brokenLevels: new Set(levels) };
}

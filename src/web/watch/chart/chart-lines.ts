import { IDEAL_KILN, programmeCurve } from "../../../firing/programme/ideal-curve.ts";
import type { Programme } from "../../../firing/programme/programme.ts";
import type { FiringWatch } from "../../../studio/api/watch-contract.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import type { ChartMark, ChartSeries } from "../../firings/chart/chart-series.ts";
import { faultTitle } from "../words/fault-words.ts";

/** Programme, what was foretold, and the rest as the model expects it now. */
export function plannedLines(firing: FiringRecord, watch: FiringWatch | null): ChartSeries[] {
  const lines: ChartSeries[] = [];
  if (firing.programme !== null) lines.push(programmeLine(firing.programme as Programme));
  const { foretold } = firing;
  if (foretold !== undefined && foretold.curve.length > 1) {
    lines.push({ name: "foretold", look: "foretold", ...columns(foretold.curve) });
  }
  const rest = watch?.outlook?.curve ?? [];
  if (rest.length > 1) lines.push({ name: "expected from now", look: "rest", ...columns(rest) });
  return lines;
}

/** As written, in a kiln that follows any climb. It ends with its last segment: what comes then is no programme. */
function programmeLine(programme: Programme): ChartSeries {
  const last = programme.segments.at(-1)?.targetC ?? 0;
  const { minutes, tempC } = programmeCurve(programme, { ...IDEAL_KILN, untilC: last });
  return { name: "programme", look: "programme", minutes, tempC };
}

const columns = (points: readonly (readonly [number, number] | number[])[]) => ({
  minutes: points.map(([minute]) => minute as number),
  tempC: points.map(([, celsius]) => celsius as number),
});

/** Moments worth a mark: now, cones as they fell, faults as they began, the shut-off. */
export function watchMarks(firing: FiringRecord, watch: FiringWatch, nowMin: number): ChartMark[] {
  const probe = watch.heat.find(({ level }) => level === null);
  const fallen = (probe?.cones ?? []).flatMap(({ cone, downAtMin }): ChartMark[] =>
    downAtMin === null || cone.endsWith(".5")
      ? []
      : [{ what: `cone ${cone} down`, atMin: downAtMin, short: cone, kind: "cone" }],
  );
  const faults = watch.faults.map(
    (fault): ChartMark => ({ what: faultTitle(fault), atMin: fault.sinceMin, kind: "trouble", short: "!" }),
  );
  const off = firing.shutOffAt === undefined ? [] : [markAt("shut off", firing.shutOffAt, watch.startedAt)];
  const due = watch.outlook?.cone;
  const down = due?.down ?? null;
  const coming: ChartMark[] =
    due && down !== null && down.atMin > nowMin
      ? [{ what: `cone ${due.cone} expected`, atMin: down.atMin, short: due.cone, kind: "moment" }]
      : [];
  return [...fallen, ...faults, ...off, ...coming, { what: "now", atMin: nowMin, kind: "now" }];
}

const markAt = (what: string, moment: string, startedAt: string): ChartMark => ({
  what,
  atMin: (Date.parse(moment) - Date.parse(startedAt)) / 60_000,
  short: "off",
  kind: "moment",
});

import { useId, useMemo, useState } from "react";
import type { FiringWatch } from "../../../studio/api/watch-contract.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { FiringChart } from "../../firings/chart/FiringChart.tsx";
import { ChoiceField } from "../../parts/index.ts";
import { useSettings } from "../../studio/hooks.ts";
import parts from "../Watch.module.css";
import { plannedLines, watchMarks } from "./chart-lines.ts";
import { asSeries } from "./measured-lines.ts";
import { SPANS, type SpanId, spanFrom, spanUntil } from "./shown-span.ts";
import { useMeasured } from "./use-measured.ts";

interface ChartPartProps {
  readonly firing: FiringRecord;
  readonly watch: FiringWatch;
  readonly nowMin: number;
}

const USUAL_MIN = { raw: 1, minute: 1, hour: 60 } as const;
const BY_WORDS = { raw: "", minute: "Each point is a minute’s mean.", hour: "Each point is an hour’s mean." } as const;

/** Programme, what was foretold, what was measured, and the rest as it is expected now. */
export function ChartPart({ firing, watch, nowMin }: ChartPartProps) {
  const id = useId();
  const { temperatureUnits } = useSettings();
  const [span, setSpan] = useState<SpanId>("whole");
  const fromMin = spanFrom(span, nowMin);
  const { lines, by } = useMeasured(firing.id, watch.startedAt, fromMin, watch);
  const minute = Math.floor(nowMin);
  const planned = useMemo(() => plannedLines(firing, watch), [firing, watch]);
  const series = useMemo(() => [...planned, ...asSeries(lines, USUAL_MIN[by])], [planned, lines, by]);
  const marks = useMemo(() => watchMarks(firing, watch, minute), [firing, watch, minute]);
  return (
    <section className={`${parts.part} ${parts.chart}`} aria-labelledby={id}>
      <h2 id={id} className="heard">
        The firing as a chart
      </h2>
      <FiringChart
        label="Temperature over the hours of this firing"
        series={series}
        marks={marks}
        units={temperatureUnits}
        startAt={watch.startedAt}
        fromMin={fromMin ?? undefined}
        untilMin={spanUntil(span, minute) ?? undefined}
      />
      <div className={parts.beside}>
        <ChoiceField label="Shown" isLabelHidden look="row" options={SPANS} value={span} onChange={setSpan} />
        <span className={parts.soft}>{BY_WORDS[by]}</span>
      </div>
    </section>
  );
}

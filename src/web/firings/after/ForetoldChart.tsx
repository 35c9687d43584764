import { useMemo } from "react";
import { programmeTimes } from "../../../firing/programme/ideal-curve.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { useSettings } from "../../studio/hooks.ts";
import type { ChartMark, ChartSeries } from "../chart/chart-series.ts";
import { FiringChart } from "../chart/FiringChart.tsx";

/** What was foretold when the firing was prepared, beside its programme. What was measured is on its watch. */
export function ForetoldChart({ firing }: { readonly firing: FiringRecord }) {
  const { temperatureUnits: units } = useSettings();
  const { programme, foretold, startedAt } = firing;
  const chart = useMemo(() => {
    if (!foretold) return null;
    const series: ChartSeries[] = [];
    if (programme) {
      const { curve, segmentEndMin } = programmeTimes(programme);
      const end = segmentEndMin.at(-1) ?? 0;
      const kept = Array.from(curve.minutes).filter((minute) => minute <= end + 1e-6).length;
      series.push({
        name: "programme",
        look: "programme",
        minutes: curve.minutes.slice(0, kept),
        tempC: curve.tempC.slice(0, kept),
      });
    }
    series.push({
      name: "foretold",
      look: "foretold",
      minutes: foretold.curve.map(([minute]) => minute),
      tempC: foretold.curve.map(([, celsius]) => celsius),
    });
    const marks: ChartMark[] = [{ what: "was to shut off", kind: "moment", atMin: foretold.hours * 60 }];
    return { series, marks, untilMin: Math.min(foretold.curve.at(-1)?.[0] ?? 60, foretold.hours * 60 * 1.9) };
  }, [programme, foretold]);
  if (chart === null) return null;
  return <FiringChart label={`${firing.name}, as it was foretold`} {...chart} units={units} startAt={startedAt} />;
}

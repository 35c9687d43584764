import type { Calibration } from "./calibration.ts";

const MUCH_LEARNED = 0.5;
const TIED = 0.8;
const POOR_FIT = 2;
const WORTH_MEASURING = 0.05;

/** What to know of a calibration, in sentences: what it rests on, what it could not tell, what to measure next. */
export function statements(calibration: Omit<Calibration, "notes">): string[] {
  const { parameters, correlations, misfits, next, after, fit, settled } = calibration;
  const kinds = new Set(misfits.map((each) => each.kind));
  const percent = (share: number): string => `${(100 * share).toFixed(0)} %`;
  const notes: string[] = [];
  if (kinds.size <= 1 && kinds.has("temperature")) {
    const most = [...parameters].sort((a, b) => a.left - b.left)[0] as (typeof parameters)[number];
    notes.push(
      `A controlled ramp alone teaches almost nothing: the controller keeps the probe on its programme whatever walls and load are, and all it shows is that the kiln keeps up. Best known is ${most.label}, still as unsure as ${percent(most.left)} of what was believed before.`,
    );
  }
  const learned = parameters.filter((each) => each.left <= MUCH_LEARNED);
  const unknown = parameters.filter((each) => each.left > MUCH_LEARNED);
  if (learned.length > 0) notes.push(`Learned: ${learned.map((each) => each.label).join("; ")}.`);
  if (unknown.length > 0)
    notes.push(`Still mostly as believed before: ${unknown.map((each) => each.label).join("; ")}.`);
  const ties: string[] = [];
  parameters.forEach((one, i) => {
    parameters.forEach((other, j) => {
      const tie = correlations[i]?.[j] ?? 0;
      if (j > i && Math.abs(tie) >= TIED) ties.push(`${one.label} and ${other.label} (${tie.toFixed(2)})`);
    });
  });
  if (ties.length > 0) notes.push(`Known together better than apart: ${ties.join("; ")}.`);
  notes.push(
    `The next firing is foretold to ± ${after.unsure.kWhPercent.toFixed(1)} % in energy, ± ${after.unsure.shelfC.toFixed(1)} °C of heat work on the least sure shelf, ± ${after.unsure.coolPercent.toFixed(1)} % in cooling (one standard deviation, the model being right).`,
  );
  const best = next[0];
  if (best && best.surerBy < WORTH_MEASURING) {
    notes.push("No other kind of evidence would make this prediction much surer; another firing like these would.");
  } else if (best) notes.push(`Would teach most (${percent(best.surerBy)} surer): ${best.how}`);
  if (!after.finished) {
    notes.push("As calibrated, the kiln is too weak for this programme: it stands still before the end.");
  }
  if (fit > POOR_FIT) {
    notes.push(
      `The model fits this evidence poorly (${fit.toFixed(1)} times the expected error): look for a wrong unit, a wrong shelf, a probe that moved.`,
    );
  }
  if (!settled) notes.push("The search ran out of rounds before it stood still: take the values with care.");
  return notes;
}

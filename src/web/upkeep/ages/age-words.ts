/** A day as this device writes it: "25 Nov 2026". */
export function dayWords(moment: string): string {
  const time = new Date(moment);
  return Number.isNaN(time.getTime()) ? "an unknown day" : time.toLocaleDateString(undefined, { dateStyle: "medium" });
}

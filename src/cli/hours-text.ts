/** "9 h 05 min". */
export function hoursText(hours: number): string {
  const minutes = Math.round(Math.abs(hours) * 60);
  return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, "0")} min`;
}

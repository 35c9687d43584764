/** A moment as she reads it, in this device's own language and zone: "25 Nov 2026, 09:47". */
export function dayAndTime(moment: string): string {
  const time = new Date(moment);
  if (Number.isNaN(time.getTime())) return "at an unknown time";
  return time.toLocaleString(undefined, { dateStyle: "medium", timeStyle: "short" });
}

/** How large a file is: "2.4 MB", "318 kB". */
export function fileSize(bytes: number): string {
  const [size, unit] = bytes >= 1e6 ? [bytes / 1e6, "MB"] : [Math.ceil(bytes / 1e3), "kB"];
  return `${size.toLocaleString(undefined, { maximumFractionDigits: 1 })} ${unit}`;
}

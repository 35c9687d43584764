import { fahrenheitFromCelsius } from "../../../measures/temperature.ts";

/** A firing as it was: what every dialect below writes down. */
export interface KnownFiring {
  /** Start, minutes since 1970 on the room's clock. */
  readonly startMin: number;
  readonly minutes: readonly number[];
  /** °C of each probe. */
  readonly probes: readonly (readonly number[])[];
}

/** One way an instrument writes a log. */
export interface Dialect {
  readonly separator: "," | ";" | "\t";
  readonly decimal: "." | ",";
  readonly time:
    | "elapsedMin"
    | "hours"
    | "seconds"
    | "h:mm:ss"
    | "iso"
    | "iso-zoned"
    | "day-first"
    | "points"
    | "month-first-12h"
    | "date-and-time"
    | "time-of-day";
  readonly unit: "C" | "F";
  readonly unitIn: "header" | "cell";
  readonly preamble: boolean;
  readonly newline: "\n" | "\r\n";
  readonly extraColumn: boolean;
}

const two = (value: number): string => String(value).padStart(2, "0");

interface Moment {
  readonly y: number;
  readonly mo: number;
  readonly d: number;
  readonly h: number;
  readonly mi: number;
  readonly s: number;
}
function moment(minutes: number): Moment {
  const at = new Date(Math.round(minutes * 60) * 1000);
  return {
    y: at.getUTCFullYear(),
    mo: at.getUTCMonth() + 1,
    d: at.getUTCDate(),
    h: at.getUTCHours(),
    mi: at.getUTCMinutes(),
    s: at.getUTCSeconds(),
  };
}

/** Writes a firing as a file in a dialect. */
export function written(firing: KnownFiring, dialect: Dialect): string {
  const number = (value: number, digits: number): string => value.toFixed(digits).replace(".", dialect.decimal);
  const quoted = (cell: string): string => (cell.includes(dialect.separator) ? `"${cell}"` : cell);
  const hms = (m: Moment): string => `${two(m.h)}:${two(m.mi)}:${two(m.s)}`;
  const timeCells = (elapsed: number): string[] => {
    const m = moment(firing.startMin + elapsed);
    switch (dialect.time) {
      case "elapsedMin":
        return [number(elapsed, 4)];
      case "hours":
        return [number(elapsed / 60, 6)];
      case "seconds":
        return [number(elapsed * 60, 0)];
      case "h:mm:ss": {
        const seconds = Math.round(elapsed * 60);
        return [`${Math.floor(seconds / 3600)}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`];
      }
      case "iso":
        return [`${m.y}-${two(m.mo)}-${two(m.d)}T${hms(m)}`];
      case "iso-zoned":
        return [`${m.y}-${two(m.mo)}-${two(m.d)} ${hms(m)}+02:00`];
      case "day-first":
        return [`${two(m.d)}/${two(m.mo)}/${m.y} ${hms(m)}`];
      case "points":
        return [`${m.d}.${m.mo}.${m.y} ${hms(m)}`];
      case "month-first-12h":
        return [`${m.mo}/${m.d}/${m.y} ${m.h % 12 || 12}:${two(m.mi)}:${two(m.s)} ${m.h < 12 ? "AM" : "PM"}`];
      case "date-and-time":
        return [`${m.y}-${two(m.mo)}-${two(m.d)}`, hms(m)];
      case "time-of-day":
        return [hms(m)];
    }
  };
  const timeNames: Record<Dialect["time"], string[]> = {
    elapsedMin: ["elapsedMin"],
    hours: ["Elapsed (hours)"],
    seconds: ["Time [s]"],
    "h:mm:ss": ["elapsed"],
    iso: ["time"],
    "iso-zoned": ["Timestamp"],
    "day-first": ["Date/Time"],
    points: ["Zeit"],
    "month-first-12h": ["DateTime"],
    "date-and-time": ["Date", "Time"],
    "time-of-day": ["Time"],
  };
  const unitName = dialect.unitIn === "header" ? ` (°${dialect.unit})` : "";
  const names = [
    ...timeNames[dialect.time],
    ...firing.probes.map((_, i) => `Temp ${i + 1}${unitName}`),
    ...(dialect.extraColumn ? ["Setpoint"] : []),
  ];
  const rows = firing.minutes.map((elapsed, n) => [
    ...timeCells(elapsed),
    ...firing.probes.map((temps) => {
      const celsius = temps[n] as number;
      const value = number(dialect.unit === "F" ? fahrenheitFromCelsius(celsius) : celsius, 3);
      return dialect.unitIn === "cell" ? `${value} °${dialect.unit}` : value;
    }),
    ...(dialect.extraColumn ? [number(1000, 1)] : []),
  ]);
  const lines = [names, ...rows].map((cells) => cells.map(quoted).join(dialect.separator));
  const above = dialect.preamble ? ["Kiln recorder export", `Serial${dialect.separator}AB 17`, ""] : [];
  return [...above, ...lines].join(dialect.newline) + dialect.newline;
}

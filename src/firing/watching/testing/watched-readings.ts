import { FaultWatch } from "../fault-watch.ts";
import { FollowedProgramme } from "../followed-programme.ts";
import type { ProgrammePlace, Segments } from "../programme-follower.ts";
import type { Reading } from "./staged-firing.ts";

/** Faults found in readings that come one by one, and where the programme was at each. */
export function watchReadings(segments: Segments, readings: readonly Reading[], roomC = 20) {
  let followed: FollowedProgramme | null = null;
  const watch = new FaultWatch((minute, tempC) => {
    followed ??= new FollowedProgramme(segments, minute, tempC, roomC);
    return followed.read(minute, tempC);
  });
  const places: (ProgrammePlace | null)[] = readings.map(
    ({ minute, tempC }) => watch.read(minute, tempC).place?.likeliest ?? null,
  );
  return { watch, faults: watch.faults, places };
}

/** A minute well inside a climb at 60 °C/h or more, above red heat: the first that half an hour of climb follows. */
export function minuteInClimb(segments: Segments, readings: readonly Reading[], aboveC = 600): number | null {
  const { places } = watchReadings(segments, readings);
  const climbing = (i: number): boolean => {
    const place = places[i];
    return (
      place?.doing === "ramp" &&
      place.rising &&
      (place.askedCPerHour ?? 0) >= 60 &&
      Math.abs(place.behindC) < 6 &&
      (readings[i]?.tempC ?? 0) > aboveC
    );
  };
  for (let i = 0; i < readings.length; i++) {
    const then = readings.findIndex((each) => each.minute >= (readings[i] as Reading).minute + 30);
    if (climbing(i) && then > 0 && climbing(then) && places[then]?.segment === places[i]?.segment) {
      return (readings[i] as Reading).minute + 10;
    }
  }
  return null;
}

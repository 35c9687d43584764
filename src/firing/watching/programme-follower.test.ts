import { expect, test } from "vitest";
import { FollowedProgramme } from "./followed-programme.ts";
import { ProgrammeFollower, type Segments } from "./programme-follower.ts";

const SEGMENTS: Segments = [
  { rateCPerHour: 60, targetC: 120, holdMin: 30 },
  { rateCPerHour: 120, targetC: 600, holdMin: 0 },
  { rateCPerHour: null, targetC: 400, holdMin: 10 },
];
const follow = (waits: boolean) => new ProgrammeFollower(SEGMENTS, 0, { waits, fromC: 20 });

test("ramp, hold, next ramp, fall, end: by a kiln that keeps up", () => {
  const follower = follow(true);
  expect(follower.read(0, 20)).toMatchObject({ segment: 0, doing: "ramp", wantedC: 20, behindC: 0 });
  expect(follower.read(50, 70)).toMatchObject({ segment: 0, doing: "ramp", wantedC: 70, askedCPerHour: 60 });
  expect(follower.read(101, 120)).toMatchObject({ segment: 0, doing: "hold", wantedC: 120 });
  expect(follower.read(120, 120).rest[0]).toEqual({ rateCPerHour: null, targetC: 120, holdMin: 10 });
  expect(follower.read(160, 180)).toMatchObject({ segment: 1, doing: "ramp", wantedC: 180 });
  expect(follower.read(370, 600)).toMatchObject({ segment: 2, doing: "ramp", rising: false, askedCPerHour: null });
  expect(follower.read(400, 401)).toMatchObject({ segment: 2, doing: "hold" });
  expect(follower.read(411, 390)).toMatchObject({ segment: 3, doing: "over", overMin: 410, rest: [] });
});

test("a kiln that comes late is waited for, or is not, as its controller does", () => {
  const [waiting, going] = [follow(true), follow(false)];
  for (const each of [waiting, going]) each.read(100, 90);
  expect(waiting.read(110, 100)).toMatchObject({ segment: 0, doing: "wait", behindC: 20 });
  expect(going.read(110, 100)).toMatchObject({ segment: 0, doing: "hold", behindC: 20 });
  expect(waiting.read(140, 118)).toMatchObject({ doing: "hold" });
  expect(going.read(140, 118)).toMatchObject({ segment: 1, doing: "ramp" });
});

test("the rest of a programme begins where the kiln is and ends when the programme does", () => {
  const follower = follow(true);
  follower.read(0, 20);
  const { rest } = follower.read(40, 40);
  // 60 of 100 min are left for what is now 80 °C.
  expect(rest[0]?.rateCPerHour).toBeCloseTo(80, 9);
  expect(rest.slice(1)).toEqual(SEGMENTS.slice(1));
});

test("the likeliest way of a controller is found from its readings", () => {
  const followed = new FollowedProgramme(SEGMENTS, 0, 20, 20);
  // It does not wait: thirty degrees short at the ramp's end, it holds for its half hour and goes on.
  let doing = "";
  for (let minute = 0; minute <= 200; minute++) {
    const wantedC = minute <= 100 ? 20 + minute : minute <= 130 ? 120 : 120 + 2 * (minute - 130);
    const lateC = Math.max(0, Math.min(30, (minute - 60) / 2, (150 - minute) / 1.5));
    const { likeliest } = followed.read(minute, wantedC - lateC);
    doing = `${likeliest.segment} ${likeliest.doing}`;
  }
  expect(doing).toBe("1 ramp");
  expect(Math.abs(followed.read(201, 120 + 142).likeliest.behindC)).toBeLessThan(2);
});

test("a first reading that errs makes a slow ramp's clock wrong: the readings set it right", () => {
  const slow: Segments = [
    { rateCPerHour: 25, targetC: 120, holdMin: 60 },
    { rateCPerHour: 150, targetC: 900, holdMin: 0 },
  ];
  const follower = new ProgrammeFollower(slow, 0, { waits: true, fromC: 14 });
  let worstC = 0;
  for (let minute = 0; minute <= 400; minute++) {
    const truthC = minute <= 240 ? 20 + (minute * 25) / 60 : minute <= 300 ? 120 : 120 + 2.5 * (minute - 300);
    const { behindC } = follower.read(minute, truthC);
    if (minute > 120) worstC = Math.max(worstC, Math.abs(behindC));
  }
  expect(worstC).toBeLessThan(4);
});

test("a warm kiln: a ramp from the room's temperature is found out once it has come up to it", () => {
  const followed = new FollowedProgramme([{ rateCPerHour: 60, targetC: 600, holdMin: 0 }], 0, 100, 20);
  let behindC = 0;
  for (let minute = 0; minute <= 200; minute++) {
    const { likeliest, possible } = followed.read(minute, Math.max(100, 20 + minute));
    expect(Math.min(...possible.map((each) => each.behindC))).toBeLessThan(3);
    behindC = likeliest.behindC;
  }
  expect(behindC).toBeCloseTo(0, 0);
});

import type { NoteRecord } from "../records/note-and-photo-records.ts";
import type { DemoTime } from "./demo-time.ts";

/** What a note of the demo is about: kind and id, or nothing in particular. */
type About = readonly [kind: NonNullable<NoteRecord["aboutKind"]>, id: string] | null;

export interface DemoSubjects {
  readonly bigKiln: string;
  readonly tide: string;
  readonly moonJar: string;
  readonly teapot: string;
  readonly market: string;
  readonly bisqueFiring: string;
  readonly glazeFiring: string;
  readonly trialFiring: string;
}

/** What the invented potter wrote down. */
export function demoNotes(about: DemoSubjects, time: DemoTime, newId: () => string): NoteRecord[] {
  const note = (subject: About, daysAgo: number, text: string): NoteRecord => ({
    ...{ id: newId(), aboutKind: subject?.[0] ?? null, aboutId: subject?.[1] ?? null, text },
    ...{ createdAt: time.ago(daysAgo), changedAt: time.ago(daysAgo) },
  });
  return [
    note(
      ["kilns", about.bigKiln],
      40,
      "The bottom runs half a cone cooler than the top. Tall, slow things below; moss above.",
    ),
    note(
      ["kilns", about.bigKiln],
      23,
      "One half shelf has a hair crack from the edge. Keep light ware on it, or none.",
    ),
    note(
      ["glazes", about.tide],
      12,
      "Trial: best where it pools. Keep it a finger off the foot, a cookie under everything.",
    ),
    note(["ware", about.moonJar], 8, "Rain over slate on the shoulder only? Try it on a beaker first."),
    note(["ware", about.teapot], 5, "Jorun fetches it with the four cups. Lid fired in place, wax on both seats."),
    note(
      ["loads", about.market],
      1,
      "Maren's bowls and plates have to be in this one. The platter is a hope: ask about a bigger kiln.",
    ),
    note(
      ["firings", about.bisqueFiring],
      22,
      "Vent open to 650 °C, then shut. Smelt a little until about 300 °C. Opened at 70 °C, all whole.",
    ),
    note(
      ["firings", about.glazeFiring],
      16,
      "Cone 6 down flat in the middle, just touching at the bottom. Next time hold ten minutes longer.",
    ),
    note(
      ["firings", about.trialFiring],
      12,
      "Slate ran off two beakers onto their cookies. The tide bowls are the ones to keep.",
    ),
    note(null, 3, "Order: a bag of the buff clay, kiln wash, two 100 mm posts."),
  ];
}

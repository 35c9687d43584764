import { beforeEach, describe, expect, test } from "vitest";
import type { Outcome, WaitingCommand } from "./line.ts";
import { type Outbox, type OutboxPorts, outbox } from "./outbox.ts";

type Answer = string;

/** A browser's storage and a studio that answers as told. */
class Bench {
  kept = new Map<string, WaitingCommand>();
  /** Keys in the order they reached the studio; "undo KEY" for an undo. */
  arrived: string[] = [];
  told: string[] = [];
  pauses: number[] = [];
  counts: number[] = [];
  /** What the studio says to each key; "done" where nothing else is said. */
  says: Record<string, Outcome<Answer>["kind"]> = {};
  onSend: (command: WaitingCommand) => Promise<void> | void = () => {};
  private lock: Promise<void> = Promise.resolve();

  page(): Outbox {
    const ports: OutboxPorts<Answer> = {
      kept: {
        all: async () => [...this.kept.values()],
        put: async (command) => {
          this.kept.set(command.place, command);
        },
        change: async (place, change) => {
          const was = this.kept.get(place);
          if (!was) return null;
          const now = change(was);
          if (now) this.kept.set(place, now);
          else this.kept.delete(place);
          return was;
        },
      },
      send: async (command) => {
        await this.onSend(command);
        const kind = this.says[command.key] ?? "done";
        if (kind !== "away") this.arrived.push(command.key);
        return kind === "done"
          ? { kind, answer: `did ${command.key}` }
          : kind === "refused"
            ? { kind, error: new Error("no") }
            : { kind };
      },
      sendUndo: async ({ key }) => {
        this.arrived.push(`undo ${key}`);
        return { kind: "done", answer: `undid ${key}` };
      },
      alone: (work) => {
        this.lock = this.lock.then(work);
        return this.lock;
      },
      nowMs: () => 1,
      pause: async (ms) => {
        this.pauses.push(ms);
        if (this.pauses.length > 20) throw new Error("tried for ever");
      },
      wake: () => {},
      tell: ({ key }, outcome) => {
        this.told.push(`${key} ${outcome.kind}`);
      },
      counted: (waiting) => {
        this.counts.push(waiting);
      },
    };
    return outbox(ports);
  }

  async empty(): Promise<void> {
    while (this.kept.size > 0) await new Promise((resolve) => setTimeout(resolve));
    // Let the sender finish its telling.
    for (let i = 0; i < 5; i++) await new Promise((resolve) => setTimeout(resolve));
  }
}

const give = (key: string) => ({ key, name: "add-ware", input: {}, before: {} });
let bench: Bench;
beforeEach(() => {
  bench = new Bench();
});

describe("the outbox", () => {
  test("sends in the order given, one at a time, and says when nothing waits", async () => {
    const page = bench.page();
    await Promise.all(["a", "b", "c", "d"].map((key) => page.add(give(key))));
    await bench.empty();
    expect(bench.arrived).toEqual(["a", "b", "c", "d"]);
    expect(bench.told).toEqual(["a done", "b done", "c done", "d done"]);
    expect(bench.counts.at(-1)).toBe(0);
  });

  test("keeps a command on the device before it goes", async () => {
    let keptThen: string[] = [];
    bench.onSend = ({ key }) => {
      if (key === "a") keptThen = [...bench.kept.values()].map((command) => command.key);
    };
    await bench.page().add(give("a"));
    await bench.empty();
    expect(keptThen).toEqual(["a"]);
  });

  test("tries again with growing pauses while nobody answers, and loses nothing", async () => {
    bench.says.a = "away";
    bench.onSend = () => {
      if (bench.pauses.length === 4) bench.says.a = "done";
    };
    const page = bench.page();
    await page.add(give("a"));
    await page.add(give("b"));
    await bench.empty();
    expect(bench.pauses).toEqual([500, 1000, 2000, 4000]);
    expect(bench.arrived).toEqual(["a", "b"]);
  });

  test("takes a refused command out of the line and still tries those after it", async () => {
    bench.says.b = "refused";
    const page = bench.page();
    for (const key of ["a", "b", "c"]) await page.add(give(key));
    await bench.empty();
    expect(bench.told).toEqual(["a done", "b refused", "c done"]);
  });

  test("goes on after a reload with what the page before it left", async () => {
    bench.kept.set("1", { ...give("left"), place: "1", tried: true });
    bench.page().wake();
    await bench.empty();
    expect(bench.arrived).toEqual(["left"]);
  });

  test("two pages share the line and send nothing twice", async () => {
    const [one, other] = [bench.page(), bench.page()];
    await Promise.all([one.add(give("a")), other.add(give("b")), one.add(give("c")), other.add(give("d"))]);
    await bench.empty();
    expect([...bench.arrived].sort()).toEqual(["a", "b", "c", "d"]);
  });
});

describe("taking back", () => {
  test("a command that was never sent leaves the line without a trace", async () => {
    bench.says.a = "away";
    const page = bench.page();
    let took: boolean | null = null;
    bench.onSend = async () => {
      if (bench.pauses.length === 1 && took === null) {
        took = await page.takeBack("b");
        bench.says.a = "done";
      }
    };
    await page.add(give("a"));
    await page.add(give("b"));
    await bench.empty();
    expect(took).toBe(true);
    expect(bench.arrived).toEqual(["a"]);
  });

  test("one that may have arrived is sent to be sure, then undone", async () => {
    const page = bench.page();
    bench.onSend = async ({ key }) => {
      if (key === "a" && bench.pauses.length === 0) await page.takeBack("a");
    };
    bench.says.a = "done";
    await page.add(give("a"));
    await bench.empty();
    expect(bench.arrived).toEqual(["a", "undo a"]);
  });

  test("does so even where the answer is long in coming, and the undo's answer as well", async () => {
    const page = bench.page();
    bench.says.a = "away";
    bench.onSend = async () => {
      if (bench.pauses.length === 0) await page.takeBack("a");
      if (bench.pauses.length === 2) bench.says.a = "done";
    };
    await page.add(give("a"));
    await page.add(give("b"));
    await bench.empty();
    expect(bench.arrived).toEqual(["a", "undo a", "b"]);
  });

  test("letting go of one that holds up the line lets those after it through", async () => {
    const page = bench.page();
    bench.says.a = "away";
    bench.onSend = async () => {
      if (bench.pauses.length === 2) await page.letGo("a");
    };
    await page.add(give("a"));
    await page.add(give("b"));
    await bench.empty();
    expect(bench.arrived).toEqual(["b"]);
  });

  test("is refused once the studio has it: then its own undo is the way", async () => {
    const page = bench.page();
    await page.add(give("a"));
    await bench.empty();
    expect(await page.takeBack("a")).toBe(false);
  });
});

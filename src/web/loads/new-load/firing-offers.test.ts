import { describe, expect, test } from "vitest";
import type { ClayBodyRecord, GlazeRecord } from "../../../studio/records/clay-and-glaze-records.ts";
import type { WareRecord } from "../../../studio/records/ware-record.ts";
import { batch, load } from "../testing/example-load.ts";
import { firingOffers, offerFor, waitingWare } from "./firing-offers.ts";

const coned = (id: string, cone: string | undefined, change: Parameters<typeof batch>[1] = {}): WareRecord => {
  const made = batch(id, change);
  const { cone: _, ...ware } = made.ware;
  return { ...made, ware: cone === undefined ? ware : { ...ware, cone } };
};
const stamps = { createdAt: "2026-11-01T09:00:00.000Z", changedAt: "2026-11-01T09:00:00.000Z" };
const oatmeal: GlazeRecord = {
  id: "g",
  name: "oatmeal",
  cones: { coolest: "5", hottest: "6" },
  runs: false,
  note: "",
  ...stamps,
};
const earthenware: ClayBodyRecord = {
  id: "b",
  name: "red earthenware",
  cones: { coolest: "06", hottest: "02" },
  note: "",
  ...stamps,
};

describe("which firings waiting ware asks for", () => {
  test("one for each kind and cone, however the cone is written", () => {
    const offers = firingOffers([coned("a", "6"), coned("b", "cone 6", { count: 4 }), coned("c", "06")], [], []);
    expect(offers.map(({ kind, cone, pieces }) => [kind, cone, pieces])).toEqual([
      ["glaze", "6", 10],
      ["glaze", "06", 6],
    ]);
  });

  test("the soonest wanted comes first, then the fullest", () => {
    const offers = firingOffers(
      [
        coned("a", "6", { count: 40 }),
        coned("b", "04", { firingKind: "bisque", stage: "greenware", dueOn: "2026-12-24" }),
        coned("c", "10", { dueOn: "2026-12-01", count: 1 }),
      ],
      [],
      [],
    );
    expect(offers.map(({ id }) => id)).toEqual(["glaze 10", "bisque 04", "glaze 6"]);
  });

  test("a batch without a cone goes along where its glaze melts there, and not where its body would slump", () => {
    const free = coned("free", undefined, { glazeId: "g" });
    const red = coned("red", undefined, { clayBodyId: "b" });
    const offers = firingOffers([coned("a", "6"), free, red], [earthenware], [oatmeal]);
    const six = offers.find(({ cone }) => cone === "6");
    expect(six?.batches.map(({ id }) => id)).toEqual(["a"]);
    expect(six?.along.map(({ id }) => id)).toEqual(["free"]);
  });

  test("every batch is in exactly one offer of its own", () => {
    const ware = [coned("a", "6"), coned("b", undefined), coned("c", "6", { firingKind: "lustre" })];
    const owned = firingOffers(ware, [], []).flatMap(({ batches }) => batches.map(({ id }) => id));
    expect(owned.sort()).toEqual(["a", "b", "c"]);
  });

  test("finished ware, ware for no firing, and ware that stands in a load wait for nothing", () => {
    const standing = batch("in", { count: 2 });
    const ware = [
      standing,
      batch("done", { stage: "finished" }),
      batch("none", { firingKind: null }),
      batch("waits"),
      batch("left"),
    ];
    const busy = load("l", [standing, batch("left")], ["in", "in", "left"], { state: "loading" });
    expect(waitingWare(ware, [busy]).map(({ id, ware: { count } }) => [id, count])).toEqual([
      ["waits", 6],
      ["left", 5],
    ]);
    expect(waitingWare(ware, [{ ...busy, state: "unpacked" }]).map(({ id }) => id)).toContain("in");
  });

  test("chosen batches lead to the firing most of them ask for", () => {
    const offers = firingOffers([coned("a", "6"), coned("b", "6"), coned("c", "04")], [], []);
    expect(offerFor(offers, new Set(["a", "b", "c"]))?.cone).toBe("6");
    expect(offerFor(offers, new Set(["c"]))?.cone).toBe("04");
    expect(offerFor(offers, new Set(["z"]))).toBeNull();
  });
});

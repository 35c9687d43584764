import type { NewClayBody, NewGlaze } from "../commands/material-commands.ts";

// Invented materials. The cones are those such bodies and glazes are usually fired to; common practice, no source.

export type DemoClay = "buff" | "white" | "red";

export const DEMO_CLAYS: Readonly<Record<DemoClay, Omit<NewClayBody, "id">>> = {
  buff: {
    name: "buff stoneware",
    cones: { coolest: "5", hottest: "7" },
    note: "A little sand in it. Throws well; shrinks about 12 in 100 from wet to fired.",
  },
  white: {
    name: "white porcelain",
    cones: { coolest: "6", hottest: "7" },
    note: "Slumps when it is thin and wide: keep plates on the middle shelves.",
  },
  red: {
    name: "red earthenware",
    cones: { coolest: "04", hottest: "02" },
    note: "Never with the stoneware: it bloats above cone 1.",
  },
};

export type DemoGlaze = "slate" | "moss" | "oat" | "tide" | "clear" | "rust" | "ash" | "honey";

export const DEMO_GLAZES: Readonly<Record<DemoGlaze, Omit<NewGlaze, "id">>> = {
  slate: {
    ...{ name: "rain over slate", cones: { coolest: "5.5", hottest: "6" }, runs: true },
    note: "Two coats, the second only to a finger above the foot. Runs: always a cookie.",
  },
  moss: { name: "moss", cones: { coolest: "5", hottest: "6" }, runs: false, note: "Greener where it cools slowly." },
  oat: { name: "oat satin", cones: { coolest: "5", hottest: "7" }, runs: false, note: "The liner for everything." },
  tide: {
    ...{ name: "tide blue", cones: { coolest: "6", hottest: "6" }, runs: true },
    note: "Breaks brown on an edge. Thick at the rim it runs.",
  },
  clear: { name: "clear gloss", cones: { coolest: "5", hottest: "7" }, runs: false, note: "Over slip only." },
  rust: {
    name: "rusty nail",
    cones: { coolest: "6", hottest: "7" },
    runs: false,
    note: "Thin: it crawls where thick.",
  },
  ash: { name: "hearth ash", cones: { coolest: "6", hottest: "7" }, runs: true, note: "From the stove, sieved twice." },
  honey: { name: "honey", cones: { coolest: "04", hottest: "02" }, runs: false, note: "For the red clay, over slip." },
};

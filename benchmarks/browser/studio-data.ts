import { benchmarkFile } from "../instances.ts";

/** Asks a served studio as a browser would. */
export async function ask<Answer>(address: string, path: string, body?: object): Promise<Answer> {
  const answer = await fetch(`${address}/api${path}`, {
    ...(body ? { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify(body) } : {}),
  });
  if (!answer.ok) throw new Error(`${path} was refused: ${await answer.text()}`);
  return (await answer.json()) as Answer;
}

let keys = 0;

/** Gives a command. */
export const command = (address: string, name: string, input: object): Promise<object> =>
  ask(address, `/commands/${name}`, { key: `benchmark-${++keys}`, input });

/** A batch that waits for a glaze firing to cone 6. */
export const waitingBatch = (ware: object) => ({
  ware: { ...ware, cone: "6" },
  stage: "glazed",
  firingKind: "glaze",
  dueOn: null,
  ownerNote: "",
  clayBodyId: null,
  glazeId: null,
});

/** The kiln of the packing benchmark. */
export function usualKiln() {
  const { kiln, furniture } = benchmarkFile(1, 1);
  return { id: "usual", kiln, furniture, rules: {} };
}

/** One that takes sixty pieces. */
export function largerKiln(): ReturnType<typeof usualKiln> {
  const { kiln, furniture } = usualKiln();
  return {
    id: "larger",
    kiln: {
      ...kiln,
      name: "larger kiln",
      chamber: { ...kiln.chamber, acrossFlatsMm: 580, depthMm: 570 },
      spyholes: [],
      probes: [],
    },
    furniture: {
      shelves: furniture.shelves.map((shelf) => ({ ...shelf, diameterMm: 530, thicknessMm: 19, count: 5 })),
      posts: furniture.posts.map((post) => ({ ...post, count: 12 })),
    },
    rules: {},
  };
}

/** So many waiting pieces of the packing benchmark, as batches with ids. */
export const waiting = (seed: number, pieces: number) =>
  benchmarkFile(seed, pieces).ware.map((ware, i) => ({ id: `w${seed}-${i}`, ...waitingBatch(ware) }));

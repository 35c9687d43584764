// Who may import whom (docs/decisions/0002-one-way-imports.md). Each folder lists what it may use; all else is refused.
const mayUse = {
  measures: [],
  kiln: ["measures"],
  ware: ["measures"],
  loading: ["measures", "kiln", "ware"],
  firing: ["measures", "kiln", "ware"],
  sheets: ["measures", "kiln", "ware", "loading", "firing"],
  studio: ["measures", "kiln", "ware", "loading", "firing", "sheets"],
  workers: ["measures", "kiln", "ware", "loading", "firing", "studio"],
  store: ["measures", "kiln", "ware", "loading", "firing", "sheets", "studio"],
  server: ["measures", "kiln", "ware", "loading", "firing", "sheets", "studio", "workers", "store"],
  web: ["measures", "kiln", "ware", "loading", "firing", "sheets", "studio"],
  cli: ["measures", "kiln", "ware", "loading", "firing", "sheets", "studio", "workers", "store", "server"],
};
const domain = "^src/(measures|kiln|ware|loading|firing|sheets|studio)/";

export default {
  forbidden: [
    { name: "no-cycles", severity: "error", from: {}, to: { circular: true } },
    ...Object.entries(mayUse).map(([folder, others]) => ({
      name: `${folder}-may-use`,
      comment: `${folder} may use ${others.length ? others.join(", ") : "nothing else of the project"}`,
      severity: "error",
      from: { path: `^src/${folder}/` },
      to: { path: "^src/", pathNot: `^src/(${[folder, ...others].join("|")})/` },
    })),
    {
      name: "domain-touches-no-machine",
      comment: "The domain runs in Node, a worker and the browser: no Node modules.",
      severity: "error",
      from: { path: domain, pathNot: "\\.test\\.ts$|^src/sheets/pdf/" },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "checker-shares-no-search",
      comment: "The rule checker shares no code with the planner's search beyond the shapes.",
      severity: "error",
      from: { path: "^src/loading/(rules|checker)/", pathNot: "\\.test\\.ts$" },
      to: { path: "^src/loading/(planner|packing)/" },
    },
    {
      name: "search-shares-no-checker",
      severity: "error",
      from: { path: "^src/loading/(planner|packing)/", pathNot: "\\.test\\.ts$" },
      to: { path: "^src/loading/(rules|checker)/" },
    },
    {
      name: "program-uses-no-tests",
      severity: "error",
      from: { path: "^src/", pathNot: "\\.test\\.ts$|/testing/" },
      to: { path: "\\.test\\.ts$|/testing/|^(golden|benchmarks|examples)/" },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    parser: "swc",
    exclude: { path: "\\.test\\.ts$" },
  },
};

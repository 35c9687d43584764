import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["src/**/*.test.ts", "golden/**/*.test.ts", "examples/**/*.test.ts", "bin/**/*.test.ts"],
    testTimeout: 120_000,
    pool: "forks",
  },
});

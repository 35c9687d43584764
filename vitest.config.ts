import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["src/**/*.test.ts", "golden/**/*.test.ts", "examples/**/*.test.ts", "bin/**/*.test.ts"],
    testTimeout: 120_000,
    pool: "forks",
    // Every core: by itself it leaves one idle, which on two is half the machine.
    maxWorkers: "100%",
  },
});

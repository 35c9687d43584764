/** Median of the processor time of several runs after one to warm up, ms. */
export function processorMs(run: () => unknown, times: number): number {
  run();
  const each = Array.from({ length: times }, () => {
    const before = process.cpuUsage();
    run();
    const used = process.cpuUsage(before);
    return (used.user + used.system) / 1000;
  }).sort((a, b) => a - b);
  return each[Math.floor(times / 2)] as number;
}

// Preloaded into a measured process: at its end, writes CPU time (user + system, ms) and peak memory (MiB).
import { appendFileSync } from 'node:fs';

process.on('exit', () => {
  const file = process.env.BENCH_USAGE_FILE;
  if (!file) return;
  const { user, system } = process.cpuUsage();
  appendFileSync(
    file,
    `${JSON.stringify({ cpu: (user + system) / 1000, peak: process.resourceUsage().maxRSS / 1024 })}\n`,
  );
});

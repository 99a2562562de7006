import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/property-seed.ts'],
    testTimeout: 60_000,
    hookTimeout: 180_000,
    maxWorkers: 2,
  },
});

/** Raised when the chart library warns: a warning there means a mark was dropped or a word cut. */
export class ChartError extends Error {
  override readonly name = 'ChartError';
}

type Raise = (...messages: readonly unknown[]) => never;

/** A logger for which any warning is an error; it prints nothing. */
export function strictLogger(chartId: string) {
  const raise: Raise = (...messages) => {
    throw new ChartError(`chart ${chartId}: ${messages.map(String).join(' ')}`);
  };
  const logger = {
    level: (level?: number) => (level === undefined ? 2 : logger),
    error: raise,
    warn: raise,
    info: () => logger,
    debug: () => logger,
  };
  return logger;
}

/** A loader that refuses everything: a chart carries its own values and may reach no file and no address. */
export function refusingLoader() {
  const refuse = async (): Promise<never> => {
    throw new ChartError('a chart may load nothing');
  };
  return { load: refuse, sanitize: refuse, http: refuse, file: refuse };
}

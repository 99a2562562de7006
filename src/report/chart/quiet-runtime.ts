/** Raised when the chart library warns: a warning there means a mark was dropped or a word cut. */
export class ChartError extends Error {
  override readonly name = 'ChartError';
}

/**
 * A logger that prints nothing and keeps every warning and error, for the caller to raise: one thrown inside the chart
 * library can be lost in its own queue.
 */
export function keepingLogger() {
  const complaints: string[] = [];
  const keep = (...messages: readonly unknown[]) => {
    complaints.push(messages.map(String).join(' '));
    return logger;
  };
  const logger = {
    /** Reads the level, or takes a new one without heeding it. */
    level: (level?: number) => (level === undefined ? WARNINGS : logger),
    /** Kept. */
    error: keep,
    /** Kept. */
    warn: keep,
    /** Dropped. */
    info: () => logger,
    /** Dropped. */
    debug: () => logger,
  };
  return { logger, complaints };
}

/** The chart library's number for "errors and warnings". */
const WARNINGS = 2;

/** A loader that refuses everything: a chart carries its own values and may reach no file and no address. */
export function refusingLoader() {
  const refuse = async (): Promise<never> => {
    throw new ChartError('a chart may load nothing');
  };
  return {
    /** Refuses. */
    load: refuse,
    /** Refuses. */
    sanitize: refuse,
    /** Refuses. */
    http: refuse,
    /** Refuses. */
    file: refuse,
  };
}

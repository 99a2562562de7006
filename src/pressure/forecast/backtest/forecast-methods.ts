import { CHAIN_METHODS } from './chain-methods.ts';
import type { ForecastMethod } from './forecast-method.ts';
import { PLAIN_METHODS } from './plain-methods.ts';

/** Every way to forecast that a backtest judges, in the order of its tables. A new one is one more entry. */
export const FORECAST_METHODS: readonly ForecastMethod[] = [...PLAIN_METHODS, ...CHAIN_METHODS];

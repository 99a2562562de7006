/** What the worker is started with, once. */
export interface StartMessage {
  readonly kind: 'start';
  readonly solver: Uint8Array;
  readonly pageScript: string;
}

/** A job asked of the worker. */
export interface JobMessage {
  readonly kind: 'job';
  readonly id: number;
  readonly name: string;
  readonly request: unknown;
  /** YYYY-MM-DD. */
  readonly today: string;
}

/** What the worker says of a job. */
export type WorkerMessage =
  | { readonly kind: 'stage'; readonly id: number; readonly text: string }
  | { readonly kind: 'note'; readonly id: number; readonly text: string }
  | { readonly kind: 'done'; readonly id: number; readonly result: unknown }
  /** `isOurs`: a bug in Pressure Plan, not something to mend in the files. */
  | { readonly kind: 'failed'; readonly id: number; readonly message: string; readonly isOurs: boolean };

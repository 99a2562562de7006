import type { Answer } from './answers.ts';

/** What a scout team can be asked to show: an answer, with the back's job and the receivers where they decide a call. */
export const LOOK_KINDS = [
  { id: 'run', label: 'Run', answer: 'run' },
  { id: 'quarterback_run', label: 'QB run', answer: 'quarterback_run' },
  { id: 'screen', label: 'Screen', answer: 'screen' },
  { id: 'quick', label: 'Quick throw', answer: 'quick' },
  { id: 'dropback', label: 'Dropback, back stays in', answer: 'dropback' },
  { id: 'wide_release', label: 'Dropback, back releases wide', answer: 'dropback' },
  { id: 'inside_release', label: 'Dropback, back releases inside', answer: 'dropback' },
  { id: 'max_protection', label: 'Max protection, ball held', answer: 'dropback' },
  { id: 'empty', label: 'Empty', answer: 'dropback' },
  { id: 'deep_shot', label: 'Deep shot', answer: 'deep_shot' },
  { id: 'trips_deep', label: 'Deep shot from trips', answer: 'deep_shot' },
  { id: 'movement', label: 'Movement', answer: 'movement' },
] as const satisfies readonly { id: string; label: string; answer: Answer }[];
/** The id of one of {@link LOOK_KINDS}. */
export type LookKind = (typeof LOOK_KINDS)[number]['id'];

/** The staff's word for a kind of look. */
export function lookKindLabel(kind: LookKind): string {
  return LOOK_KINDS.find(({ id }) => id === kind)?.label ?? kind;
}

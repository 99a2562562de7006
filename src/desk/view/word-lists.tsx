import type { WeekSettingsPen } from './use-week-settings.ts';

interface ToggleProps {
  readonly legend: string;
  readonly words: readonly string[];
  readonly chosen: readonly string[];
  readonly label?: (word: string) => string;
  readonly onTurn: (chosen: readonly string[]) => void;
}

/** Words to be turned on and off; one that is chosen and not among them stands there too, to be turned off. */
export function Toggles({ legend, words, chosen, label = String, onTurn }: ToggleProps) {
  const turned = (word: string) =>
    chosen.includes(word) ? chosen.filter((other) => other !== word) : [...chosen, word];
  const unknown = chosen.filter((word) => !words.includes(word));
  return (
    <fieldset class="toggles">
      <legend>{legend}</legend>
      {[...words, ...unknown].map((word) => (
        <button
          key={word}
          type="button"
          aria-pressed={chosen.includes(word)}
          aria-label={`${legend}: ${label(word)}`}
          onClick={() => onTurn(turned(word))}
        >
          {unknown.includes(word) ? `${word} (no such call)` : label(word)}
        </button>
      ))}
    </fieldset>
  );
}

interface LimitProps {
  /** Our calls by name. */
  readonly calls: readonly string[];
  readonly must: readonly string[];
  readonly ban: readonly string[];
  readonly change: WeekSettingsPen['change'];
}

/** Calls that must be carried and calls that may not be; no call is both. */
export function CallLimits({ calls, must, ban, change }: LimitProps) {
  const set = (key: 'must' | 'ban', chosen: readonly string[], others: readonly string[]) => {
    const other = key === 'must' ? 'ban' : 'must';
    const left = others.filter((call) => !chosen.includes(call));
    const taken = { path: ['menu', key], value: chosen };
    change(left.length === others.length ? [taken] : [taken, { path: ['menu', other], value: left }], true);
  };
  return (
    <>
      <Toggles legend="Must carry" words={calls} chosen={must} onTurn={(chosen) => set('must', chosen, ban)} />
      <Toggles legend="Never carry" words={calls} chosen={ban} onTurn={(chosen) => set('ban', chosen, must)} />
    </>
  );
}

interface OrderProps {
  readonly words: readonly { readonly id: string; readonly label: string }[];
  readonly order: readonly string[];
  readonly onOrder: (order: readonly string[] | undefined) => void;
}

/** Situations in the order of the call sheet: those that were put first, then the rest as usual. */
export function SituationOrder({ words, order, onOrder }: OrderProps) {
  const rest = words.filter(({ id }) => !order.includes(id)).map(({ id }) => id);
  const all = [...order, ...rest];
  const labelOf = (id: string) => words.find((word) => word.id === id)?.label ?? id;
  const up = (at: number) => onOrder(movedUp(all, at));
  return (
    <fieldset class="order">
      <legend>Situations on the call sheet, first to last</legend>
      <ol>
        {all.map((id, at) => (
          <li key={id}>
            {labelOf(id)}{' '}
            <button type="button" disabled={at === 0} aria-label={`Up: ${labelOf(id)}`} onClick={() => up(at)}>
              Up
            </button>
          </li>
        ))}
      </ol>
      <button type="button" disabled={order.length === 0} onClick={() => onOrder(undefined)}>
        Back to the usual order
      </button>
    </fieldset>
  );
}

function movedUp(order: readonly string[], at: number): readonly string[] {
  const moved = order[at];
  if (moved === undefined || at === 0) return order;
  return [...order.slice(0, at - 1), moved, order[at - 1] ?? '', ...order.slice(at + 1)];
}

import { useState } from 'preact/hooks';
import { textOf } from '../desk-state.ts';
import type { ViewProps } from './view-props.ts';

/** The week's settings as they stand in their file, each with what it means: practice days, menu size, cut-offs. */
export function SettingsEditor({ desk, open, week }: ViewProps) {
  const path = `${week}/week.yaml`;
  const saved = textOf(open.files, path);
  const [typed, setTyped] = useState<string | null>(null);
  const keep = async () => {
    if (typed !== null && (await desk.save([{ name: path, text: typed }]))) setTyped(null);
  };
  return (
    <details class="settings">
      <summary>Settings of the week: practice days, menu size, reps, where short and long begin</summary>
      <textarea
        aria-label="Settings of the week"
        spellcheck={false}
        value={typed ?? saved}
        onInput={(event) => setTyped(event.currentTarget.value)}
      />
      <p>
        <button type="button" disabled={typed === null || typed === saved} onClick={() => void keep()}>
          Keep the settings
        </button>{' '}
        What is wrong with them is named, with its line, when the plan is worked out.
      </p>
    </details>
  );
}

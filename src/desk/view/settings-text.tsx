import { useState } from 'preact/hooks';
import type { WeekSettingsPen } from './use-week-settings.ts';

/** The same settings as they stand in week.yaml, for those who would rather type there. */
export function SettingsText({ pen: { look, write } }: { readonly pen: WeekSettingsPen }) {
  const [typed, setTyped] = useState<string | null>(null);
  const keep = () => {
    if (typed !== null) write(typed, true);
    setTyped(null);
  };
  return (
    <>
      <textarea
        aria-label="Settings of the week as text"
        spellcheck={false}
        value={typed ?? look.text}
        onInput={(event) => {
          setTyped(event.currentTarget.value);
          write(event.currentTarget.value, false);
        }}
      />
      <p>
        <button type="button" disabled={typed === null} onClick={keep}>
          Keep the text
        </button>
      </p>
    </>
  );
}

import type { WeekSettingsPen } from './use-week-settings.ts';

/** Whether what stands in the form is saved, what keeps it from being so, and what was typed before the page was opened. */
export function SettingsStanding({ pen }: { readonly pen: WeekSettingsPen }) {
  const { look, isWaiting, earlier } = pen;
  return (
    <div role="status">
      {isWaiting && <p class="fault">Not saved until you fix this:</p>}
      <ul class="faults">
        {look.problems.map(({ line }) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {earlier !== null && <Earlier pen={pen} />}
    </div>
  );
}

function Earlier({ pen: { earlier, isWaiting, save, putAway } }: { readonly pen: WeekSettingsPen }) {
  if (earlier?.kind === 'overtaken')
    return (
      <p class="fault">
        {`The file was changed outside of this page. You typed this earlier and it was not saved: ${earlier.lines.join('; ')}. `}
        <button type="button" onClick={putAway}>
          Throw it away
        </button>
      </p>
    );
  return (
    <p class="fault">
      You typed this earlier and it is not saved.{' '}
      {!isWaiting && (
        <button type="button" onClick={save}>
          Save it
        </button>
      )}{' '}
      <button type="button" onClick={putAway}>
        Go back to the file
      </button>
    </p>
  );
}

import { useMemo, useRef, useState } from 'preact/hooks';
import { FAMILIES } from '../../game/families.ts';
import { SITUATIONS } from '../../game/situations.ts';
import { familyLabel } from '../../report/words/label.ts';
import { callNames } from '../../season/edit-yaml.ts';
import type { SettingField } from '../../season/setting-fields.ts';
import { textOf } from '../desk-state.ts';
import { PracticeDays } from './practice-days.tsx';
import { SettingInput } from './setting-input.tsx';
import { SettingsStanding } from './settings-standing.tsx';
import { SettingsText } from './settings-text.tsx';
import { teamNote } from './team-note.ts';
import { useWeekSettings, type WeekSettingsPen } from './use-week-settings.ts';
import type { ViewProps } from './view-props.ts';
import { CallLimits, SituationOrder, Toggles } from './word-lists.tsx';

/** Parts of the form by the key their settings stand under, in the order in which a coach looks for them. */
const PARTS = [
  { place: '', title: 'The game' },
  { place: 'practice', title: 'Practice week' },
  { place: 'menu', title: 'The menu' },
  { place: 'sheet', title: 'Call sheet' },
  { place: 'situations', title: 'Short, long and field zones' },
  { place: 'finer', title: 'Finer numbers' },
  { place: 'text', title: 'As text' },
] as const;
type Place = (typeof PARTS)[number]['place'];

/** The settings of a week as a form over week.yaml; every change is saved once nothing new is wrong. */
export function WeekForm(props: ViewProps) {
  const pen = useWeekSettings(props);
  const isOpen = useRef(false);
  // What was typed earlier is shown without a click, and stays open when it is saved.
  isOpen.current ||= pen !== null && pen.earlier !== null;
  return (
    <details class="settings" open={isOpen.current}>
      <summary>Settings of the week: opponent, date, practice days, menu, calls to carry</summary>
      {pen !== null && <Parts pen={pen} {...props} />}
    </details>
  );
}

type PartProps = ViewProps & { readonly pen: WeekSettingsPen };

function Parts({ pen, ...view }: PartProps) {
  const [chosen, choose] = useState<Place>('');
  const place = pen.look.isWellFormed ? chosen : 'text';
  return (
    <>
      <div class="tabs">
        {PARTS.map((part) => (
          <button key={part.place} type="button" aria-pressed={part.place === place} onClick={() => choose(part.place)}>
            {part.title}
          </button>
        ))}
      </div>
      <SettingsStanding pen={pen} />
      {place === 'text' ? <SettingsText pen={pen} /> : <Part key={place} place={place} pen={pen} {...view} />}
    </>
  );
}

function Part({ place, pen, ...view }: PartProps & { readonly place: Place }) {
  const fields = pen.look.fields.filter((field) => field.form !== 'list' && placeOf(field) === place);
  return (
    <>
      <Lists place={place} pen={pen} {...view} />
      <div class="fields">
        {fields.map((field) => (
          <OneSetting key={field.path.join()} field={field} pen={pen} {...view} />
        ))}
      </div>
      {place === 'finer' && <p class="soft">Left blank, the usual numbers count.</p>}
    </>
  );
}

function placeOf({ path }: SettingField): string {
  if (FINER.has(path.join('.'))) return 'finer';
  return path.length === 1 ? '' : (path[0] ?? '');
}

/** Settings that few staffs ever change. */
const FINER: ReadonlySet<string> = new Set([
  ...['level', 'invented', 'seed', 'live_discount', 'menu.rep_price', 'menu.regret', 'menu.trust', 'menu.path_share'],
  ...['menu.add_on_share', 'menu.hole_share', 'menu.pairing_cap', 'menu.pairing_games'],
]);

function OneSetting({ field, pen: { look, change }, open, week }: PartProps & { readonly field: SettingField }) {
  const { path } = field;
  const value = valueAt(look.values, path);
  const fault = look.problems.find((problem) => problem.path === path.join('.'))?.words ?? '';
  // A blank opponent is a fault and not a default.
  const put = (written: unknown, isDone: boolean) =>
    change([{ path, value: path[0] === 'opponent' ? (written ?? '') : written }], isDone);
  return (
    <SettingInput
      {...{ field, value, fault }}
      note={path[0] === 'opponent' ? teamNote(String(value ?? ''), open.files, week) : ''}
      onType={(written) => put(written, false)}
      onDone={(written) => put(written, true)}
    />
  );
}

/** Settings of more than one value. */
function Lists({ place, pen: { look, change }, open }: PartProps & { readonly place: Place }) {
  const list = (...path: string[]) => listAt(look.values, path);
  const calls = useMemo(() => callNames(textOf(open.files, 'defense.yaml')), [open.files.get('defense.yaml')]);
  if (place === 'practice') return <PracticeDays days={list('practice', 'days') as never} change={change} />;
  if (place === 'sheet')
    return (
      <SituationOrder
        words={SITUATIONS}
        order={list('sheet', 'order').map(String)}
        onOrder={(order) => change([{ path: ['sheet', 'order'], value: order }], true)}
      />
    );
  if (place !== 'menu') return null;
  const families = valueAt(look.values, ['families']) === undefined ? FAMILIES : list('families').map(String);
  return (
    <>
      <CallLimits
        {...{ calls, change }}
        must={list('menu', 'must').map(String)}
        ban={list('menu', 'ban').map(String)}
      />
      <Toggles
        legend="Families of calls that may be carried"
        words={FAMILIES}
        chosen={families}
        label={familyLabel}
        onTurn={(chosen) =>
          change([{ path: ['families'], value: chosen.length === FAMILIES.length ? undefined : chosen }], true)
        }
      />
    </>
  );
}

function valueAt(values: unknown, path: readonly string[]): unknown {
  return path.reduce((value, key) => (value as Readonly<Record<string, unknown>> | null | undefined)?.[key], values);
}

function listAt(values: unknown, path: readonly string[]): readonly unknown[] {
  const found = valueAt(values, path);
  return Array.isArray(found) ? found : [];
}

import type { Film } from '../../game/film.ts';
import { SITUATIONS } from '../../game/situations.ts';
import { MOTIONS, OPTION_TAGS, TARGET_ZONES, TEMPOS, YES_NO } from '../../game/vocabulary.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { classifiedCodes } from '../forecast/classified-codes.ts';
import type { Target } from '../forecast/forecast-result.ts';
import { definitionOf } from '../forecast/target.ts';
import {
  type AskedOfBoth,
  askBoth,
  askWords,
  type BothFilms,
  type ComparedCell,
  comparedCell,
  crossBoth,
  everySnap,
} from '../others/asked-of-both.ts';
import { codesBySnap } from '../snap/codes-by-snap.ts';
import { LOOKS, lookCodes, RECEIVER_LOOKS, receiverCodes } from '../snap/look.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { situationCodes } from '../snap/situation.ts';
import { wordClasses } from '../snap/word-classes.ts';
import { askZones } from '../tables/table-split.ts';
import type { DifferentTopic, DifferentWhere } from './different-result.ts';

/** One comparison with the archive. */
export interface Examined {
  readonly topic: DifferentTopic;
  readonly question: string;
  readonly name: string;
  readonly where: DifferentWhere | null;
  readonly cell: ComparedCell;
  readonly snaps: readonly number[];
}

/** A question, and the classes of it that are compared; the rest would only say the same of their opposites. */
interface Comparison {
  readonly topic: DifferentTopic;
  readonly question: string;
  readonly asked: AskedOfBoth;
  readonly classes?: readonly string[];
  readonly within?: { readonly by: 'situation' | 'field_zone'; readonly group: AskedOfBoth };
}

/** Everything that is compared with the archive's offenses, but for the rush: that is counted elsewhere. */
export function examinedCells(both: BothFilms, cuts: SituationCuts): readonly Examined[] {
  const all = everySnap(both);
  return comparisons(both, cuts).flatMap((comparison) => cellsOf(both, all, comparison));
}

function comparisons(both: BothFilms, cuts: SituationCuts): readonly Comparison[] {
  const target = (name: Target) => targetOf(both, name, cuts);
  const words = (column: WordColumn, list: readonly string[]) =>
    askBoth(both, list, (chart) => wordCodes(chart, column, list));
  const situations = askBoth(both, idsOf(SITUATIONS), (chart) => situationCodes(chart, cuts));
  const runs = { question: 'run_or_pass', asked: target('run_or_pass'), classes: ['run'] };
  return [
    { topic: 'answers', ...runs },
    { topic: 'answers', question: 'answer', asked: target('answer'), classes: ANSWERS_BUT_RUN },
    { topic: 'answers', question: 'screen', asked: target('screen'), classes: ['screen'] },
    { topic: 'release', question: 'quick_release', asked: target('quick_release'), classes: ['within'] },
    { topic: 'run_by_situation', ...runs, within: { by: 'situation', group: situations } },
    { topic: 'run_by_zone', ...runs, within: { by: 'field_zone', group: askZones(both, cuts) } },
    { topic: 'formations', question: 'formation', asked: askWords(both, 'formation') },
    { topic: 'formations', question: 'receivers', asked: askBoth(both, idsOf(RECEIVER_LOOKS), receiverCodes) },
    { topic: 'formations', question: 'look', asked: askBoth(both, idsOf(LOOKS), lookCodes) },
    { topic: 'personnel', question: 'personnel', asked: askWords(both, 'personnel') },
    { topic: 'motion', question: 'motion', asked: words('motion', MOTIONS) },
    { topic: 'tempo', question: 'tempo', asked: words('tempo', TEMPOS) },
    { topic: 'checks', question: 'checked', asked: words('checked', YES_NO), classes: ['yes'] },
    {
      topic: 'options',
      question: 'option_tag',
      asked: words('option_tag', OPTION_TAGS),
      classes: OPTION_TAGS.slice(1),
    },
    { topic: 'protection', question: 'protectors', asked: target('protectors') },
    { topic: 'back', question: 'back_job', asked: target('back_job') },
    ...SLIDES.map((slide): Comparison => {
      return { topic: 'slides', question: slide, asked: target(slide), classes: ['to'] };
    }),
    { topic: 'targets', question: 'target_zone', asked: words('target_zone', TARGET_ZONES) },
  ];
}

const ANSWERS_BUT_RUN = ['quarterback_run', 'quick', 'dropback', 'deep_shot', 'movement'];
const SLIDES: readonly Target[] = ['slide_to_back', 'slide_to_field', 'slide_to_strength'];
type WordColumn = 'motion' | 'tempo' | 'checked' | 'option_tag' | 'target_zone';

function targetOf(both: BothFilms, name: Target, cuts: SituationCuts): AskedOfBoth {
  const definition = definitionOf(name);
  return askBoth(both, definition.classes, (chart) => classifiedCodes(definition, chart, cuts));
}

function wordCodes(chart: Film, column: WordColumn, list: readonly string[]): Uint8Array {
  const at = wordClasses(chart, column, (word = '') => {
    const place = list.indexOf(word);
    return place === -1 ? NOT_KNOWN : place;
  });
  return codesBySnap(chart.size, at);
}

function cellsOf(both: BothFilms, all: AskedOfBoth, comparison: Comparison): Examined[] {
  const { topic, question, asked, classes = asked.classes, within } = comparison;
  const group = within?.group ?? all;
  const cross = crossBoth(both, group, asked);
  const compared = asked.classes.flatMap((name, k) => (name !== '' && classes.includes(name) ? [{ name, k }] : []));
  return group.classes.flatMap((value, g) => {
    const where = within ? { by: within.by, value } : null;
    const snaps = rowsIn(group.own, asked.own, g);
    return compared.flatMap(({ name, k }) => {
      const cell = comparedCell(cross, { group: g, k, question });
      return cell.others === null ? [] : [{ topic, question, name, where, cell, snaps }];
    });
  });
}

function rowsIn(groupOf: Uint8Array, classOf: Uint8Array, group: number): number[] {
  const rows: number[] = [];
  for (let i = 0; i < groupOf.length; i++) if (groupOf[i] === group && classOf[i] !== NOT_KNOWN) rows.push(i);
  return rows;
}

function idsOf(list: readonly { readonly id: string }[]): readonly string[] {
  return list.map(({ id }) => id);
}

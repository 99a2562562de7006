import type { FeatureName } from '../../pressure/forecast/tell-feature.ts';
import type { OwnFilmChapter, PressureRate } from '../../pressure/self-scout/result.ts';
import { plainWords } from '../words/label.ts';
import { percent } from '../words/percent.ts';
import { seenValueWords } from '../words/seen-words.ts';
import { isThin } from '../words/share-words.ts';
import { situationLabel } from '../words/situation-label.ts';
import { chanceWords, pCell } from './chance-cell.ts';
import { numberCell, numbers, shareCell, type TableView, textCell, thinMark, words } from './table-view.ts';

/** What our pressure rate goes with, each tested against chance. */
export function pressureSplitTable(film: OwnFilmChapter): TableView {
  return {
    id: 'pressure-split-table',
    caption: 'What an opponent can read our pressures from',
    columns: [
      words('Seen before the snap'),
      numbers('Snaps'),
      words('Tested against'),
      numbers('Corrected p'),
      words('Reading'),
    ],
    rows: film.pressureSplits.map((split) => ({
      name: splitLabel(split.by),
      cells: [
        numberCell(String(split.snaps), split.snaps),
        textCell(split.against === 'overall' ? 'our overall rate' : 'the situation'),
        pCell(split.adjusted),
        textCell(split.adjusted === null ? 'one value only' : chanceWords(split.adjusted)),
      ],
    })),
    empty: 'not charted',
  };
}

/** How often we send five or more, by whatever splits were charted. */
export function pressureRateTable(film: OwnFilmChapter): TableView {
  return {
    id: 'pressure-rate-table',
    caption: 'How often we send pressure',
    columns: [words('By'), words('Value'), numbers('Pressures'), numbers('The situation alone would give')],
    rows: film.pressureRates.map((rate) => ({
      name: splitLabel(rate.by),
      ...thinMark(isThin(rate.share)),
      cells: [textCell(valueLabel(rate)), shareCell(rate.share), expectedCell(rate)],
    })),
    empty: 'not charted',
  };
}

const LABELS: Readonly<Partial<Record<FeatureName, string>>> = {
  look: 'Backfield look',
  zone: 'Field zone',
  score: 'The score, theirs first',
  after_big_play: 'After their big play',
  back_spot: 'Where the back stands',
  state: 'Clock and score together',
  series: 'First snap of a series',
  shown_early: 'Whether we show early',
};

function splitLabel(by: FeatureName): string {
  return LABELS[by] ?? plainWords(by);
}

function valueLabel({ by, value }: PressureRate): string {
  return by === 'situation' ? situationLabel(value) : seenValueWords(by, value);
}

function expectedCell({ expected }: PressureRate) {
  return expected === null ? textCell('') : numberCell(percent(expected), expected);
}

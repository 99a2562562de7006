import type { GameFit } from '../../pressure/review/rule-record.ts';
import type { RuleStanding, SeasonFit } from '../../pressure/review/season-rule.ts';
import { numberCell, numbers, shareCell, type TableView, textCell, thinMark, words } from '../view/table-view.ts';
import { ruleWords } from '../words/fit-words.ts';
import { countWords, isThin, shareWords } from '../words/share-words.ts';

/** What each standing reads as; a rule contradicted by its record is named and never changed. */
const STANDING_WORDS: Readonly<Record<RuleStanding, string>> = {
  too_few: 'too few snaps to say',
  no_difference: 'no difference from our other calls',
  borne_out: 'the record bears it out',
  contradicted: 'the record contradicts it: your call to change it in defense.yaml',
};

/**
 * How calls did where the rules said right, neither, or wrong.
 *
 * @example "When the rules said right: held 14 of 20 (70%); neither: 8 of 15 (53%); wrong: 5 of 15 (33%)."
 */
export function markSentence({
  right,
  neutral,
  wrong,
  open,
}: Pick<SeasonFit, 'right' | 'neutral' | 'wrong' | 'open'>): string {
  const marked = `When the rules said right: held ${shareWords(right)}; neither: ${shareWords(neutral)}; wrong: ${shareWords(wrong)}.`;
  return open === 0 ? marked : `${marked} Not marked for want of charting: ${open}.`;
}

/** Rules the season's record contradicts, by what triggers them; empty where there is none. */
export function contradictedWords({ rules }: SeasonFit): string[] {
  return rules
    .filter(({ standing }) => standing === 'contradicted')
    .map(
      ({ rule, says, held, other }) =>
        `The rule “${ruleWords(rule, '')}” says ${says}; its calls held ${countWords(held)}, our other calls there ${countWords(other)}.`,
    );
}

/** Each rule over the season against everything else we called when its trigger was met. */
export function seasonRuleTable({ rules }: SeasonFit): TableView {
  return {
    id: 'season-rules',
    caption: 'Our rules over the season, most snaps first',
    columns: [
      words('When'),
      words('The rule says'),
      numbers('Its calls held'),
      numbers('Our other calls held there'),
      numbers('Held if all calls were alike'),
      words('So'),
    ],
    rows: rules.map(({ rule, says, held, other, expected, standing }) => ({
      name: ruleWords(rule, ''),
      cells: [
        textCell(says),
        shareCell(held),
        shareCell(other),
        numberCell(expected.toFixed(1), expected),
        textCell(STANDING_WORDS[standing]),
      ],
      ...thinMark(isThin(held)),
    })),
    empty: 'no rule’s trigger was met on any of our charted calls',
  };
}

/** Each rule in one game: how often its calls held, and our other calls when its trigger was met. */
export function gameRuleTable({ rules }: GameFit): TableView {
  return {
    id: 'game-rules',
    caption: 'Our rules in this game',
    columns: [words('When'), words('The rule says'), words('Its calls held'), words('Our other calls held there')],
    rows: rules.flatMap(({ rule, says, answers }) => {
      const sum = (of: 'held' | 'snaps' | 'otherHeld' | 'otherSnaps') =>
        answers.reduce((total, answer) => total + answer[of], 0);
      if (sum('snaps') === 0) return [];
      const own = { count: sum('held'), trials: sum('snaps') };
      const others = { count: sum('otherHeld'), trials: sum('otherSnaps') };
      return [
        {
          name: ruleWords(rule, ''),
          cells: [textCell(says), textCell(shareWords(own)), textCell(shareWords(others))],
          ...thinMark(isThin(own)),
        },
      ];
    }),
    empty: 'no rule’s trigger was met on any of our charted calls',
  };
}

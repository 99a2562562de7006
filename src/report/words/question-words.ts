import type { QuestionFault } from '../../pressure/snap/condition.ts';
import { DERIVED } from '../../pressure/snap/snap-words.ts';

/** Words of a free column that are listed when another one was asked for; judgment: what fits on a few lines. */
const MOST_LISTED = 25;

/** What is wrong with a part of a question; completes the sentence "<part> ...". */
export function questionFaultWords(fault: QuestionFault): string {
  switch (fault.kind) {
    case 'bare_word':
      return `is none of: ${listed(fault.words)}; or write column=word, such as slide=left`;
    case 'split':
      return `cannot be split by; choose one of ${listed(fault.words)}`;
    case 'unknown_name':
      return `asks for "${fault.name}", which is neither a charted column (${listed(fault.words)}) nor one of ${listed(Object.keys(DERIVED))}`;
    case 'not_charted':
      return `asks for ${fault.name}, which is not charted; charted are ${listed(fault.words)}`;
    case 'sign_of_words':
      return `compares words by ${fault.sign}; use =`;
    case 'unknown_word':
      return `asks for "${fault.asked}"; the words are ${listed(fault.words)}`;
    case 'word_not_charted':
      return `asks for "${fault.asked}"; charted are ${firstListed(fault.words)}`;
    case 'no_number':
      return `compares ${fault.name} with "${fault.asked}", which is not a number${FORM_WORDS[fault.form] ?? ''}`;
    default:
      return fault satisfies never;
  }
}

const FORM_WORDS: Readonly<Record<string, string>> = {
  field: ' or a ball position such as own 35 or opp 20',
  clock: ' or a clock such as 2:00',
};

function listed(words: readonly string[]): string {
  return words.join(', ');
}

function firstListed(words: readonly string[]): string {
  const rest = words.length - MOST_LISTED;
  return `${listed(words.slice(0, MOST_LISTED))}${rest > 0 ? ` and ${rest} more` : ''}`;
}

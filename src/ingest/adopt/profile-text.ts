import { Document, isMap, isScalar, isSeq, type YAMLMap } from 'yaml';
import type { ProfileDraft } from './draft-profile.ts';
import type { Question } from './question.ts';

/** The longest line of a drafted profile, as of our other templates. */
const LINE_WIDTH = 120;

/** The drafted profile as the coach's file: beside every column how sure it is and why, below it what is to be asked. */
export function profileText(draft: ProfileDraft, sheetName: string): string {
  const document = new Document(draft.profile, { aliasDuplicateObjects: false });
  document.commentBefore = [
    ` How ${sheetName} is read, drafted from its values. Correct it by hand, or answer the questions at its end.`,
    ' On the left our column, on the right the header of the sheet that feeds it. The sheet itself is never changed.',
  ].join('\n');
  explainColumns(document, draft);
  const body = document.toString({ lineWidth: LINE_WIDTH, flowCollectionPadding: true });
  return [body.trimEnd(), ...unreadLines(draft), ...questionLines(draft.questions), ''].join('\n');
}

/** A question as lines of text: what is asked, what may be answered, and what holds until then. */
export function questionText({ key, text, choices, guess }: Question): string[] {
  const choice = choices.length === 0 ? 'Any text.' : `One of: ${choices.join(', ')}.`;
  const until = guess === undefined ? 'Until then it is not read.' : `Until then: ${guess}.`;
  return [text, `  ${choice} ${until}`, `  Answer with: --answer "${key}=${guess ?? '...'}"`];
}

function explainColumns(document: Document, draft: ProfileDraft): void {
  const columns = document.get('columns');
  if (!isMap(columns)) return;
  for (const { key, value } of columns.items) {
    if (!isScalar(key)) continue;
    const drafted = draft.columns.find(({ column }) => column === key.value);
    if (drafted) key.commentBefore = ` ${Math.round(100 * drafted.confidence)}%: ${drafted.why}`;
    if (isMap(value)) layOut(value);
  }
}

/** A rule stands on one line, and so does everything about a column when it is short. */
function layOut(source: YAMLMap): void {
  const rules = source.get('rules');
  if (isSeq(rules)) for (const rule of rules.items) if (isMap(rule)) rule.flow = true;
  if (!isSeq(rules)) source.flow = JSON.stringify(source).length < LINE_WIDTH - 30;
}

function unreadLines({ unread }: ProfileDraft): string[] {
  if (unread.length === 0) return [];
  return ['', `# Not read: ${unread.map(onOneLine).join(', ')}`];
}

function questionLines(questions: readonly Question[]): string[] {
  if (questions.length === 0) return [];
  const lines = questions.flatMap((question) => questionText(question).map((line) => `#   ${onOneLine(line)}`));
  return ['', '# Questions:', ...lines];
}

/** A header may hold a line end, which would end the comment. */
function onOneLine(text: string): string {
  return text.replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ');
}

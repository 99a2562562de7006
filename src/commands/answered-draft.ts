import { draftProfile, type ProfileDraft } from '../ingest/adopt/draft-profile.ts';
import type { DraftRequest } from '../ingest/adopt/draft-state.ts';
import { answerKey } from '../ingest/adopt/question.ts';
import { UserProblem } from '../season/user-problem.ts';
import type { Ask, Asker } from './ask-questions.ts';
import type { Terminal } from './terminal.ts';

/**
 * The draft, with what somebody at the terminal answered.
 *
 * @param findAsker - asked for only when there are questions; gives nobody where nobody sits
 * @throws UserProblem when he breaks off
 */
export async function answeredDraft(
  request: DraftRequest,
  terminal: Terminal,
  findAsker: () => Asker | undefined,
): Promise<ProfileDraft> {
  const draft = draftProfile(request);
  if (draft.strayAnswers.length > 0) {
    terminal.note(`Answers to nothing that this sheet asks: ${draft.strayAnswers.join(', ')}`);
  }
  const asker = draft.questions.length === 0 ? undefined : findAsker();
  if (asker === undefined) return draft;
  const count = draft.questions.length;
  terminal.note(
    `${count} ${count === 1 ? 'question' : 'questions'}; an empty line takes the guess, Ctrl-D leaves the rest open.`,
  );
  try {
    const answered = await askAll(request, draft, asker.ask);
    if (!asker.brokeOff()) return answered;
  } finally {
    asker.close();
  }
  throw new UserProblem('usage', 'broken off; nothing was written');
}

/** Asks one question after the other; every answer may settle others and bring new ones. */
async function askAll(request: DraftRequest, first: ProfileDraft, ask: Ask): Promise<ProfileDraft> {
  const answers = new Map(request.answers);
  const passed = new Set<string>();
  let draft = first;
  for (;;) {
    const question = draft.questions.find(({ key }) => !passed.has(key));
    if (question === undefined) return draft;
    passed.add(question.key);
    const answer = await ask(question);
    if (answer === undefined) continue;
    answers.set(answerKey(question.key), answer);
    draft = draftProfile({ ...request, answers });
  }
}

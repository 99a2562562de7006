import type { DifferentLine, DifferentTopic, DifferentWhere } from '../../pressure/different/different-result.ts';
import { TARGETS, type Target } from '../../pressure/forecast/forecast-result.ts';
import { habitName } from './habit-name.ts';
import { answerLabel, capital, plainWords } from './label.ts';
import { percent } from './percent.ts';
import { rushGroupWords } from './rush-words.ts';
import { seenWords } from './seen-words.ts';
import { shareWords } from './share-words.ts';
import { situationLabel } from './situation-label.ts';
import { BACK_JOBS } from './why-words.ts';

/**
 * One thing that makes them different, with its count and what is usual.
 *
 * @example "Screen, when they pass: 26 of 113 (23%), others 10%"
 */
export function differentWords(line: DifferentLine): string {
  const usual = line.topic === 'tells' ? 'expected' : 'others';
  return `${subjectWords(line)}${whereWords(line.where)}: ${shareWords(line.film)}, ${usual} ${percent(line.usual)}`;
}

function subjectWords({ topic, question, name }: DifferentLine): string {
  const written = SUBJECTS[topic];
  if (written !== undefined) return written(name, question);
  return isTarget(question) ? habitName(question, name) : `${plainWords(question)}: ${plainWords(name).toLowerCase()}`;
}

/** How a topic is said; the others are said by their question. */
const SUBJECTS: Readonly<Partial<Record<DifferentTopic, (name: string, question: string) => string>>> = {
  run_by_situation: runOrPass,
  run_by_zone: runOrPass,
  pressured: (name) => answerLabel(name),
  formations: (name, question) => (question === 'formation' ? `Formation ${name}` : plainWords(name)),
  personnel: (name) => `${name} personnel`,
  motion: (name) => (name === 'motion' || name === 'yes' ? 'Motion' : `Motion, ${plainWords(name).toLowerCase()}`),
  tempo: (name) => `Tempo, ${plainWords(name).toLowerCase()}`,
  checks: () => 'They change the play at the line',
  back: (name) => capital(BACK_JOBS[name] ?? plainWords(name)),
  targets: (name) => `Thrown to the ${plainWords(name).toLowerCase()}`,
};

function runOrPass(name: string): string {
  return name === 'pass' ? 'Pass' : 'Run';
}

function whereWords(where: DifferentWhere | null): string {
  if (where === null) return '';
  switch (where.by) {
    case 'situation':
      return ` on ${situationLabel(where.value)}`;
    case 'field_zone':
      return `, ${plainWords(where.value).toLowerCase()}`;
    case 'rushers':
      return ` against ${rushGroupWords(where.value)}`;
    case 'coverage':
      return ` against ${plainWords(where.value).toLowerCase()}`;
    case 'seen':
      return ` after ${seenWords(where.seen)}`;
    default:
      return where satisfies never;
  }
}

function isTarget(question: string): question is Target {
  return (TARGETS as readonly string[]).includes(question);
}

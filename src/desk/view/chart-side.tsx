import { ANSWERS, type Answer } from '../../game/answers.ts';
import { SITUATIONS } from '../../game/situations.ts';
import { answerLabel } from '../../report/words/label.ts';
import type { SheetLook } from '../engine/look-job.ts';

interface SideProps {
  readonly look: SheetLook | null;
  /** What the last plan says one more charted column would buy. */
  readonly worth: readonly string[];
}

/** Beside the strip: the counts as they grow, what to mend, and what is worth charting next. */
export function ChartSide({ look, worth }: SideProps) {
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled by keyboard too */}
      <section class="scroll" tabIndex={0} aria-label="What they do so far">
        <Counts look={look} />
      </section>
      {look !== null && look.findings.length > 0 && <Findings look={look} />}
      {worth.length > 0 && (
        <>
          <h2>Worth charting next</h2>
          <ul class="lines">
            {worth.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

/** Heads of narrow columns. */
const SHORT: Readonly<Record<Answer, string>> = {
  run: 'Run',
  quarterback_run: 'QB',
  screen: 'Screen',
  quick: 'Quick',
  dropback: 'Drop',
  deep_shot: 'Deep',
  movement: 'Move',
};

function Counts({ look }: { readonly look: SheetLook | null }) {
  const rows = look?.counts ?? [];
  return (
    <table class="counts">
      <caption>{look === null ? 'What they do so far' : `What they do so far, ${look.snaps} snaps`}</caption>
      <thead>
        <tr>
          <th scope="col">Situation</th>
          {ANSWERS.map((answer) => (
            <th key={answer} scope="col" class="number">
              <abbr title={answerLabel(answer)}>{SHORT[answer]}</abbr>
            </th>
          ))}
          <th scope="col" class="number">
            Snaps
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ situation, snaps, answers }) => (
          <tr key={situation}>
            <th scope="row">{SITUATIONS.find(({ id }) => id === situation)?.label}</th>
            {answers.map((count, i) => (
              <td key={ANSWERS[i]} class="number">
                {count === 0 ? '' : count}
              </td>
            ))}
            <td class="number">{snaps}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Findings listed before the rest is only counted. */
const LISTED = 6;

function Findings({ look }: { readonly look: SheetLook }) {
  const faults = look.findings.filter(({ isFault }) => isFault).length;
  return (
    <>
      <h2>{`${faults} to fix, ${look.findings.length - faults} to check`}</h2>
      <ul class="lines">
        {look.findings.slice(0, LISTED).map(({ row, words }) => (
          <li key={`${row} ${words}`}>{row === 0 ? words : `Line ${row}: ${words}`}</li>
        ))}
      </ul>
    </>
  );
}

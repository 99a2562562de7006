import { ANSWERS } from '../../game/vocabulary.ts';
import { SITUATIONS } from '../../pressure/snap/situation.ts';
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
    <aside class="side">
      <Counts look={look} />
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
    </aside>
  );
}

function Counts({ look }: { readonly look: SheetLook | null }) {
  const rows = look?.counts ?? [];
  return (
    <table class="counts">
      <caption>{`What they do so far, ${look?.snaps ?? 0} snaps`}</caption>
      <thead>
        <tr>
          <th scope="col">Situation</th>
          {ANSWERS.map((answer) => (
            <th key={answer} scope="col" class="number">
              {answerLabel(answer)}
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
      <h2>{`${faults} to mend, ${look.findings.length - faults} to look at`}</h2>
      <ul class="lines">
        {look.findings.slice(0, LISTED).map(({ row, words }) => (
          <li key={`${row} ${words}`}>{`Line ${row}: ${words}`}</li>
        ))}
      </ul>
      <p class="soft">[ and ] go from one to the next.</p>
    </>
  );
}

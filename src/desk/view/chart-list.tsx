import type { SnapCells } from '../../season/chart-sheet.ts';
import type { ChartState } from '../chart/chart-state.ts';

/** Snaps shown before and after the pen; a season of thousands is never drawn whole. */
const AROUND = 7;

/** The snaps around the pen, the latest first. */
export function ChartList({ state, onTurn }: { readonly state: ChartState; readonly onTurn: (at: number) => void }) {
  const { snaps, at } = state;
  const from = Math.max(0, at - AROUND);
  const shown = snaps.slice(from, at + AROUND + 1).map((snap, i) => [from + i, snap] as const);
  return (
    <table class="snaps">
      <caption>Snaps around this one</caption>
      <thead>
        <tr>
          <th scope="col">Snap</th>
          <th scope="col">Down</th>
          <th scope="col">Ball</th>
          <th scope="col">Play</th>
          <th scope="col">End</th>
          <th scope="col" class="number">
            Gain
          </th>
        </tr>
      </thead>
      <tbody>
        {shown.reverse().map(([index, snap]) => (
          <tr key={index} aria-current={index === at ? 'true' : undefined}>
            <th scope="row">
              <button type="button" class="quiet" onClick={() => onTurn(index)}>
                {index + 1}
              </button>
            </th>
            <SnapRow snap={snap} />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function SnapRow({ snap }: { readonly snap: SnapCells }) {
  const plain = (text: string | undefined) => text?.replaceAll('_', ' ') ?? '';
  return (
    <>
      <td>{`${snap.down ?? '?'} & ${snap.to_go ?? '?'}`}</td>
      <td>{snap.ball_on ?? ''}</td>
      <td>{plain(snap.play_kind)}</td>
      <td>{plain(snap.result)}</td>
      <td class="number">{snap.gain ?? ''}</td>
    </>
  );
}

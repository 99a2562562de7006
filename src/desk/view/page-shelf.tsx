import { useMemo, useRef, useState } from 'preact/hooks';
import { type OpenSeason, textOf } from '../desk-state.ts';
import { download } from './download.ts';
import { useFrameKeys } from './frame-keys.ts';
import { printPage } from './print-page.ts';

/** One page of a week's out folder. */
export interface ShelfPage {
  readonly file: string;
  readonly label: string;
  /** It has knobs of its own and needs its script. */
  readonly hasScript?: boolean;
}

interface ShelfProps {
  readonly open: OpenSeason;
  readonly week: string;
  readonly pages: readonly ShelfPage[];
}

/** The pages that are there, one of them in view, with print and save. A page with a script reaches nothing outside of its frame, one without runs nothing. */
export function PageShelf({ open, week, pages }: ShelfProps) {
  const there = pages.filter(({ file }) => open.files.has(pathOf(week, file)));
  const [chosen, choose] = useState(pages[0]?.file ?? '');
  const shown = there.find(({ file }) => file === chosen) ?? there[0];
  const path = pathOf(week, shown?.file ?? '');
  const text = useMemo(() => textOf(open.files, path), [open.files.get(path)]);
  const frame = useRef<HTMLIFrameElement>(null);
  const hearKeys = useFrameKeys(frame);
  if (shown === undefined) return null;
  return (
    <div class="shelf">
      <div class="tabs">
        {there.map(({ file, label }) => (
          <button key={file} type="button" aria-pressed={file === shown.file} onClick={() => choose(file)}>
            {label}
          </button>
        ))}
        <span class="space" />
        <button type="button" onClick={() => printPage(text)}>
          Print this page
        </button>
        <button type="button" onClick={() => download(shown.file, text, 'text/html')}>
          Save as a file
        </button>
      </div>
      <iframe
        // Another kind of page needs a frame of its own: what a frame may do is settled when it is made.
        key={shown.hasScript ? 'with a script' : 'still'}
        ref={frame}
        title={shown.label}
        srcdoc={text}
        sandbox={shown.hasScript ? 'allow-scripts' : 'allow-same-origin'}
        onLoad={hearKeys}
      />
    </div>
  );
}

function pathOf(week: string, file: string): string {
  return `${week}/out/${file}`;
}

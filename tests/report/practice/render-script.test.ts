import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { LOOK_KINDS } from '../../../src/game/look-kinds.ts';
import { lookCards } from '../../../src/pressure/practice/look-card.ts';
import { practiceScript } from '../../../src/pressure/practice/script.ts';
import { cardDrawing } from '../../../src/report/practice/card-drawing.ts';
import { CARD_SIZE, cardSet } from '../../../src/report/practice/card-spot.ts';
import { cardStrokes } from '../../../src/report/practice/card-stroke.ts';
import { renderScript } from '../../../src/report/practice/render-script.ts';
import { scriptRows } from '../../../src/report/practice/script-rows.ts';
import { inventedPlan } from '../invented-plan.ts';

const plan = inventedPlan();
const film = filmFromRecords(
  [
    { play_kind: 'run', receivers: '2x2', strength: 'left', back_spot: 'strong', quarterback_depth: 'under_center' },
    {
      play_kind: 'dropback',
      receivers: '3x1',
      back_action: 'releases_wide',
      back_spot: 'weak',
      motion: 'across',
      slide: 'left',
    },
    { play_kind: 'quick', receivers: '3x2', back_spot: 'none', formation: '<Spread> & "go"' },
  ],
  'opponent.csv',
);
const { menu, library } = plan;
if (menu?.kind !== 'menu' || !library) throw new Error('the invented plan has a menu');
const script = practiceScript({ ...plan, chart: film, library, menu });
const head = { opponent: plan.opponent, us: plan.us, date: plan.date, invented: true };

describe('the script page', () => {
  it('prints every repetition, every card, the cautions with their sources, and that data are invented', async () => {
    const page = await renderScript(script, head);
    for (const { number } of script.reps) expect(page).toContain(`<th scope="row"><bdi>${number}</bdi></th>`);
    expect(page.match(/<article class="card"/g)?.length).toBe(script.cards.length);
    for (const said of [
      'state association',
      'licensed athletic trainers',
      'concussion',
      'wet-bulb',
      'Journal of Athletic Training',
      'Invented demonstration data',
      '(NEW)',
    ])
      expect(page).toContain(said);
  });

  it('is the same bytes twice, asks nothing of the outside, and runs no script', async () => {
    const page = await renderScript(script, head);
    expect(page).toBe(await renderScript(script, head));
    expect(page).not.toMatch(/<script|src=|https?:|url\(/);
  });

  it('keeps a name from the film text, never markup', async () => {
    const page = await renderScript(script, { ...head, opponent: '<b>Herons</b>' });
    expect(page).toContain('&lt;Spread&gt; &amp; &quot;go&quot;');
    expect(page).toContain('&lt;b&gt;Herons&lt;/b&gt;');
    expect(page).not.toContain('<b>Herons</b>');
  });

  it('says what the periods cannot hold', async () => {
    const settings = { ...plan.settings, practice: { ...plan.settings.practice, days: [] } };
    const none = practiceScript({ ...plan, settings, chart: film, library, menu });
    expect(await renderScript(none, head)).toContain('Too few reps');
  });

  it('has a row of the sheet for every repetition, each as long as the header', () => {
    const rows = scriptRows(script);
    expect(rows.length).toBe(script.reps.length + 1);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([rows[0]?.length]));
    expect(rows[0]?.slice(0, 4)).toEqual(['rep', 'day', 'period', 'contact']);
  });
});

describe('a scout card drawn', () => {
  const cards = lookCards(film, plan.settings.situations, new Set(LOOK_KINDS.map(({ id }) => id)));

  it.each(cards.map((card) => [card.kind, card] as const))('%s has eleven men, all on the card', (_, card) => {
    const set = cardSet(card);
    const men = [...set.line, ...set.strong, ...set.away, ...set.backs, set.passer];
    expect(men.length).toBe(11);
    for (const { x, y } of [...men, ...cardStrokes(card, set).flatMap(({ points }) => points)]) {
      expect(x).toBeGreaterThan(0);
      expect(x).toBeLessThan(CARD_SIZE.width);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(CARD_SIZE.height);
    }
  });

  it.each(cards.map((card) => [card.kind, card] as const))(
    '%s has room for every man, receivers outside first',
    (_, card) => {
      const set = cardSet(card);
      const men = [...set.line, ...set.strong, ...set.away, ...set.backs, set.passer];
      // A man is drawn 11 units wide.
      men.forEach((one, i) => {
        for (const other of men.slice(i + 1)) expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeGreaterThan(11);
      });
      for (const receivers of [set.strong, set.away]) {
        const fromBall = receivers.map(({ x }) => Math.abs(x - CARD_SIZE.width / 2));
        expect(fromBall).toEqual([...fromBall].sort((a, b) => b - a));
      }
    },
  );

  it.each(cards.map((card) => [card.kind, card] as const))(
    '%s has its line of scrimmage across the card',
    (_, card) => {
      const [, from, to] = /<path class="s" d="M([\d.]+),[\d.]+H([\d.]+)"/.exec(cardDrawing(card).text) ?? [];
      expect(Number(from)).toBeLessThan(CARD_SIZE.width / 20);
      expect(Number(from) + Number(to)).toBe(CARD_SIZE.width);
    },
  );

  it('stands as charted: strength left, passer under center, motion dashed, nobody beside him in empty', () => {
    const [run, wide, empty] = ['run', 'wide_release', 'empty'].map((kind) => cards.find((card) => card.kind === kind));
    if (!run || !wide || !empty) throw new Error('all kinds were asked for');
    expect(cardSet(run).strong[0]?.x).toBeLessThan(CARD_SIZE.width / 2);
    expect(cardSet(run).passer.y).toBeLessThan(cardSet(wide).passer.y);
    expect(cardStrokes(wide, cardSet(wide)).map(({ kind }) => kind)).toEqual([
      'motion',
      'job',
      'job',
      'job',
      'job',
      'ball',
    ]);
    expect(cardSet(empty).backs).toEqual([]);
    expect(cardDrawing(empty).text).toContain('aria-label="Empty: &lt;Spread&gt; &amp; &quot;go&quot;');
  });
});

import { ANSWERS } from '../../game/answers.ts';
import { benjaminiHochberg } from '../../stats/adjust.ts';
import { mantelHaenszel, type Stratum } from '../../stats/mantel-haenszel.ts';
import { type Share, share } from '../../stats/share.ts';
import type { Review } from './review.ts';
import type { GameFit, RuleGame } from './rule-record.ts';

/** What the season says of a rule. */
export type RuleStanding = 'too_few' | 'no_difference' | 'borne_out' | 'contradicted';

/** One rule over the season, against everything else we called when its trigger was met. */
export interface SeasonRule {
  readonly rule: string;
  readonly says: RuleGame['says'];
  /** How often calls of its families held when its trigger was met. */
  readonly held: Share;
  /** How often our other calls held on such snaps. */
  readonly other: Share;
  /** Of the rule's snaps, those that would have held were all our calls alike against each answer. */
  readonly expected: number;
  /** Chance of a record this far against the rule were all our calls alike, over all rules looked at. */
  readonly against: number;
  /** The same for a record this far in its favor. */
  readonly inFavor: number;
  readonly standing: RuleStanding;
}

/** The rules over the season. */
export interface SeasonFit {
  readonly games: number;
  readonly right: Share;
  readonly neutral: Share;
  readonly wrong: Share;
  readonly open: number;
  /** Most snaps first. */
  readonly rules: readonly SeasonRule[];
}

/** Fewer snaps carry no word on a rule; the page's mark for thin. */
const LEAST_SNAPS = 20;

/** Share of rules wrongly named that is put up with; judgment. */
const DISCOVERY_RATE = 0.05;

/** Grades the rules over the reviewed games; null where no game was marked. No rule is changed by its record. */
export function seasonFit(reviews: readonly Pick<Review, 'fit'>[]): SeasonFit | null {
  const games = reviews.flatMap(({ fit }) => (fit ? [fit] : []));
  if (games.length === 0) return null;
  return {
    games: games.length,
    right: summed(games.map(({ right }) => right)),
    neutral: summed(games.map(({ neutral }) => neutral)),
    wrong: summed(games.map(({ wrong }) => wrong)),
    open: games.reduce((sum, { open }) => sum + open, 0),
    rules: seasonRules(games),
  };
}

function summed(shares: readonly Share[]): Share {
  const sum = (of: (one: Share) => number) => shares.reduce((total, one) => total + of(one), 0);
  return share(
    sum(({ count }) => count),
    sum(({ trials }) => trials),
  );
}

function seasonRules(games: readonly GameFit[]): SeasonRule[] {
  const all = games.flatMap(({ rules }) => rules);
  const records = [...new Set(all.map(({ rule, says }) => `${rule} ${says}`))].map((key) =>
    recordOf(all.filter(({ rule, says }) => `${rule} ${says}` === key)),
  );
  const enough = records.filter(({ held, other }) => Math.min(held.trials, other.trials) >= LEAST_SNAPS);
  const against = benjaminiHochberg(enough.map((record) => record.against));
  const inFavor = benjaminiHochberg(enough.map((record) => record.inFavor));
  const judged = new Map(
    enough.map((record, i) => {
      const adjusted = { against: against[i] as number, inFavor: inFavor[i] as number };
      return [record, { ...record, ...adjusted, standing: standingOf(adjusted) }] as const;
    }),
  );
  return records
    .filter(({ held }) => held.trials > 0)
    .map((record) => judged.get(record) ?? record)
    .sort((a, b) => b.held.trials - a.held.trials || (a.rule < b.rule ? -1 : 1));
}

function recordOf(games: readonly RuleGame[]): SeasonRule {
  const [{ rule, says } = { rule: '', says: 'right' as const }] = games;
  const strata = ANSWERS.map((answer): Stratum => {
    const here = games.flatMap(({ answers }) => answers.filter((one) => one.answer === answer));
    const sum = (of: (one: (typeof here)[number]) => number) => here.reduce((total, one) => total + of(one), 0);
    return {
      successes: sum(({ held }) => held),
      trials: sum(({ snaps }) => snaps),
      otherSuccesses: sum(({ otherHeld }) => otherHeld),
      otherTrials: sum(({ otherSnaps }) => otherSnaps),
    };
  });
  const { expected, pFewer, pMore } = mantelHaenszel(strata);
  const total = (of: (one: Stratum) => number) => strata.reduce((sum, one) => sum + of(one), 0);
  return {
    rule,
    says,
    held: share(
      total(({ successes }) => successes),
      total(({ trials }) => trials),
    ),
    other: share(
      total(({ otherSuccesses }) => otherSuccesses),
      total(({ otherTrials }) => otherTrials),
    ),
    expected,
    against: says === 'right' ? pFewer : pMore,
    inFavor: says === 'right' ? pMore : pFewer,
    standing: 'too_few',
  };
}

function standingOf({ against, inFavor }: Pick<SeasonRule, 'against' | 'inFavor'>): RuleStanding {
  if (against <= DISCOVERY_RATE) return 'contradicted';
  return inFavor <= DISCOVERY_RATE ? 'borne_out' : 'no_difference';
}

import { ANSWERS } from '../../../game/answers.ts';
import { PASS_ENDINGS, RUN_KINDS } from '../../../game/run-or-pass.ts';
import { BACK_ACTIONS } from '../../../game/vocabulary.ts';
import type { SituationCuts } from '../../../game/week-settings.ts';
import { TARGETS, type Target } from '../forecast-result.ts';
import { QUICK_RELEASE_SECONDS } from '../target-codes.ts';
import { ANY, GAMES, SNAPS } from './count-row.ts';

/**
 * SQL that makes the tallies of `countChart` from a table `snaps` on any engine: one row a snap, the columns and
 * words of the data dictionary (clock in seconds left in the quarter, ball_on in yards to the opponent's goal line, a
 * blank as NULL) and `source`, the file or charter a snap came from. It uses CASE, a window and UNION ALL, nothing more.
 *
 * @param cuts - the staff's cut-offs, written into the text
 */
export function countsSql(cuts: SituationCuts): string {
  const tallies = [[SNAPS, `'${ANY}'`] as const, ...TARGETS.map((target) => [target, target] as const)];
  return `WITH charted AS (
  SELECT COALESCE(offense, source) AS offense, COALESCE(game, '') AS game,
    ${situationSql(cuts)} AS situation,
    ${stateSql()} AS state,
    ${TARGETS.map((target) => `${TARGET_SQL[target](cuts)} AS ${target}`).join(',\n    ')}
  FROM (
    SELECT snaps.*,
      MAX(CASE WHEN play_kind = 'screen' THEN 1 ELSE 0 END) OVER (PARTITION BY source) AS tells_screens,
      ${BACK_SIDE} AS back_side,
      ${SLIDE_SIDE} AS slide_side
    FROM snaps
  ) AS snaps
)
${tallies.map(([target, column]) => snapTally(target, column)).join('\nUNION ALL\n')}
UNION ALL
${tallies.map(([target, column]) => gameTally(target === SNAPS ? ANY : target, column)).join('\nUNION ALL\n')}
ORDER BY 1, 4, 2, 3, 5;
`;
}

function snapTally(target: string, column: string): string {
  return `SELECT offense, COALESCE(situation, '') AS situation, COALESCE(state, '') AS state, '${target}' AS target, ${column} AS class, COUNT(*) AS count
FROM charted WHERE ${column} IS NOT NULL GROUP BY offense, situation, state, ${column}`;
}

function gameTally(name: string, column: string): string {
  return `SELECT offense, '', '', '${GAMES}', '${name}', COUNT(DISTINCT game)
FROM charted WHERE ${column} IS NOT NULL GROUP BY offense`;
}

function situationSql({ second, third, fourth }: SituationCuts): string {
  const distance = (down: string, { short, medium }: SituationCuts['second']) =>
    `CASE WHEN to_go <= ${short} THEN '${down}_short' WHEN to_go <= ${medium} THEN '${down}_medium' ELSE '${down}_long' END`;
  return `CASE WHEN down IS NULL OR to_go IS NULL THEN NULL
      WHEN down = 1 AND to_go >= ball_on THEN 'first_goal'
      WHEN down = 1 THEN CASE WHEN to_go = 10 THEN 'first_ten' WHEN to_go > 10 THEN 'first_long' ELSE 'first_short' END
      WHEN down = 2 THEN ${distance('second', second)}
      WHEN down = 3 THEN ${distance('third', third)}
      ELSE ${distance('fourth', fourth)} END`;
}

/** The game states of this tool in their order of precedence, then the mark of more than ten to go after first down. */
function stateSql(): string {
  return `CASE WHEN ball_on <= 3 THEN 'at_the_goal'
      WHEN quarter IS NULL THEN NULL
      WHEN quarter <= 1 THEN 'normal'
      WHEN quarter = 2 THEN CASE WHEN clock <= 120 THEN 'two_minute' WHEN clock IS NOT NULL THEN 'normal' END
      WHEN quarter = 3 THEN CASE WHEN score_margin >= 17 THEN 'well_ahead' WHEN score_margin <= -17 THEN 'far_behind' WHEN score_margin IS NOT NULL THEN 'normal' END
      WHEN clock IS NULL OR score_margin IS NULL THEN NULL
      WHEN clock <= 120 AND score_margin <= 0 THEN 'two_minute'
      WHEN score_margin > 0 AND clock <= 300 THEN 'holding_lead'
      WHEN score_margin >= 9 THEN 'well_ahead'
      WHEN score_margin <= -9 OR (score_margin < 0 AND clock <= 300) THEN 'chasing'
      ELSE 'normal' END
    || CASE WHEN COALESCE(down, 1) > 1 AND COALESCE(to_go, 0) > 10 THEN '_beyond_ten' ELSE '' END`;
}

const RUNS = list(RUN_KINDS);

/** A run by the rule of `runOrPassCodes`: a scramble and a sack are passes, whatever kind was charted. */
const RAN = `COALESCE(play_kind, '') IN ${RUNS} AND COALESCE(result, '') NOT IN ${list(PASS_ENDINGS)}`;

/** Every target with its class as an expression over a snap; NULL where it does not apply or was not charted. */
const TARGET_SQL: Readonly<Record<Target, (cuts: SituationCuts) => string>> = {
  answer: answerSql,
  run_or_pass: () =>
    `CASE WHEN result IN ${list(PASS_ENDINGS)} THEN 'pass' WHEN play_kind IN ${RUNS} THEN 'run' WHEN play_kind IS NOT NULL THEN 'pass' END`,
  screen: () =>
    `CASE WHEN play_kind = 'screen' THEN 'screen' WHEN play_kind IN ('quick', 'dropback', 'deep_shot', 'movement', 'scramble') THEN 'no_screen' WHEN play_kind IN ('pass', 'play_action') AND tells_screens = 1 THEN 'no_screen' WHEN result IN ${list(PASS_ENDINGS)} THEN 'no_screen' END`,
  quick_release: () =>
    `CASE WHEN ${RAN} THEN NULL WHEN time_to_throw <= ${QUICK_RELEASE_SECONDS} THEN 'within' WHEN time_to_throw IS NOT NULL THEN 'later' END`,
  motion: () => "CASE WHEN motion = 'none' THEN 'none' WHEN motion IS NOT NULL THEN 'motion' END",
  protectors: () =>
    `CASE WHEN (${RAN}) OR protectors IS NULL THEN NULL WHEN protectors <= 5 THEN 'five' WHEN protectors = 6 THEN 'six' ELSE 'seven_or_more' END`,
  slide_to_back: () => slideSql('back_side'),
  slide_to_field: () => slideSql("CASE hash WHEN 'left' THEN 'right' WHEN 'right' THEN 'left' END"),
  slide_to_strength: () => slideSql("CASE WHEN strength IN ('left', 'right') THEN strength END"),
  back_job: () => `CASE WHEN NOT (${RAN}) AND back_action IN ${list(BACK_ACTIONS)} THEN back_action END`,
};

function answerSql({ deep_yards, quick_seconds }: SituationCuts): string {
  const charted = ANSWERS.filter((answer) => !RUN_KINDS.includes(answer));
  return `CASE WHEN play_kind IN ${list(charted)} THEN play_kind
      WHEN play_kind = 'scramble' OR result IN ${list(PASS_ENDINGS)} THEN 'dropback'
      WHEN play_kind IN ('pass', 'play_action') AND target_depth >= ${deep_yards} THEN 'deep_shot'
      WHEN play_kind = 'play_action' THEN 'dropback'
      WHEN play_kind = 'pass' THEN CASE WHEN time_to_throw <= ${quick_seconds} THEN 'quick' WHEN time_to_throw IS NOT NULL THEN 'dropback' END
      WHEN play_kind IN ${RUNS} THEN play_kind END`;
}

const BACK_SIDE =
  "CASE WHEN strength NOT IN ('left', 'right') THEN NULL WHEN back_spot = 'strong' THEN strength WHEN back_spot = 'weak' THEN CASE strength WHEN 'left' THEN 'right' WHEN 'right' THEN 'left' END END";

const SLIDE_SIDE =
  "CASE WHEN slide IN ('left', 'full_left') THEN 'left' WHEN slide IN ('right', 'full_right') THEN 'right' END";

function list(words: readonly string[]): string {
  return `(${words.map((word) => `'${word}'`).join(', ')})`;
}

function slideSql(reference: string): string {
  return `CASE WHEN ${RAN} THEN NULL WHEN slide_side = ${reference} THEN 'to' WHEN slide_side <> ${reference} THEN 'away' END`;
}

import { describe, expect, it } from 'vitest';
import { readSheet } from '../../src/ingest/read-sheet.ts';
import { nearTeam, teamSlips } from '../../src/season/team-slips.ts';

describe('a team’s name', () => {
  it.each([
    ['pine holow', 'Pine Hollow'],
    ['Pine Holllow', 'Pine Hollow'],
    ['Pnie Hollow', 'Pine Hollow'],
    ['Pine Hil', 'Pine Hill'],
    ['PineHollow', 'Pine Hollow'],
    ['Pine  Hollow', 'Pine Hollow'],
  ])('%s was meant to be %s', (written, team) => {
    expect(nearTeam(written, ['Harrow Creek', team])).toBe(team);
  });

  it.each([
    ['known in other letters', ' PINE HOLLOW ', 'Pine Hollow'],
    ['of another side of town', 'North Pine', 'South Pine'],
    ['of one short word', 'East', 'West'],
    ['with a word more', 'Pine Hollow South', 'Pine Hollow'],
    ['not written', ' ', 'Pine Hollow'],
  ])('%s is like none', (_, written, team) => {
    expect(nearTeam(written, [team])).toBeUndefined();
  });
});

it('is counted on film where it does not count as the opponent', () => {
  const text =
    'game,offense,down,to_go,ball_on,play_kind\none,Pine Hollow,1,10,own 30,run\none,pine holow,2,7,own 33,run\none,pine holow,3,2,own 38,run\none,Stonewater,1,10,own 20,run\n';
  const { chart } = readSheet({ file: 'opponent.csv', bytes: Buffer.from(text) }, { kind: 'opponent' });
  expect(teamSlips([chart, chart], 'Pine Hollow')).toEqual([
    'offense "pine holow" on 4 snaps is close to "Pine Hollow" of week.yaml and does not count as them; if it is the same team, write it the same way',
  ]);
});

/** A caution printed with every practice script: what it is about, what it says, and where that was published. */
export interface ContactCaution {
  readonly topic: string;
  readonly words: string;
  readonly source: string;
}

/** Who decides; printed before every caution. */
export const WHO_DECIDES =
  'Guidance only, and it may be out of date: your state association and your licensed athletic trainers decide.';

/** The cautions of a practice week. Published values, not rules of this program. */
export const CONTACT_CAUTIONS: readonly ContactCaution[] = [
  {
    topic: 'Full contact',
    words:
      'Thud and live count as full contact: at most 30 minutes a day, 60 to 90 a week, 2 or 3 days, not days in a row; states differ from 15 to 90 minutes a week. Only the periods in this plan are counted here; contact in every other period of practice comes on top.',
    source: 'NFHS task force on full contact, 2014, as reported; state figures as reported in 2021',
  },
  {
    topic: 'Heat',
    words:
      'First five days of the season: one practice a day, 3 hours at most, gear added step by step over 14 days. By wet-bulb globe temperature one state stops outdoor practice above 92 F and takes gear off from 90; use your own state table. Water at all times.',
    source:
      'Casa and Csillan 2009, Journal of Athletic Training 44(3):332; Georgia High School Association by-law 2.67',
  },
  {
    topic: 'Head',
    words: 'Any sign of a concussion: out at once, and out until a licensed clinician clears the player.',
    source: 'NFHS, from memory',
  },
  {
    topic: 'Pressure drills',
    words:
      'Nobody hits the scout passer: pull up, head up, two hands. Peel and low-block work on bags. No two-man hits are scripted.',
    source: 'judgment',
  },
];

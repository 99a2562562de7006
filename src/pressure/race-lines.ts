import type { Call, CallLibrary } from '../ingest/call-library.ts';
import type { PassAnswer } from './pass-answer.ts';
import { type Meeting, meetProtection } from './protection-meeting.ts';
import type { ExpectedPicture } from './protection-pictures.ts';
import type { RaceLine } from './protection-result.ts';
import { type HomeCurve, type HomeCurves, homeBeforeRelease, medianArrival, mixCurves } from './race.ts';
import type { Release } from './release.ts';
import { releaseShift } from './release-published.ts';

/** One call with the pictures it is expected to see, from this opponent and from an average one. */
export interface RacedCall {
  readonly call: Call;
  readonly pictures: readonly ExpectedPicture[];
  readonly typicalPictures: readonly ExpectedPicture[];
}

/**
 * Whether a rusher is home before the ball is out, for each answer that ends in a throw. The interval is over what is not
 * known of the middle of their release; being home can only become likelier as that grows, so its ends are exact.
 *
 * @param releases - one per answer
 */
export function raceLines(raced: RacedCall, releases: readonly Release[], context: RaceContext): RaceLine[] {
  const { call, pictures, typicalPictures } = raced;
  const theirs = meetings(call, pictures, context);
  const average = meetings(call, typicalPictures, context);
  const atSnap = call.rush.filter(({ way }) => way !== 'late_if_back_blocks').length;
  return releases.map((release) => {
    const { answer, fit, typical, timedThrows } = release;
    const curve = expectedCurve(theirs, answer, context);
    const shift = releaseShift(answer, atSnap);
    const homeAt = (mu: number) => homeBeforeRelease(curve, { mu: mu + shift, sigma: fit.sigma });
    const usual = { mu: typical.mu + shift, sigma: typical.sigma };
    return {
      call: call.name,
      answer,
      home: homeAt(fit.mu),
      low: homeAt(fit.muLow),
      high: homeAt(fit.muHigh),
      typical: homeBeforeRelease(expectedCurve(average, answer, context), usual),
      timedThrows,
      firstArrival: medianArrival(curve),
    };
  });
}

/** What every race of a week shares. */
export interface RaceContext {
  readonly roles: CallLibrary['roles'];
  /** Of the level of our defense. */
  readonly curves: HomeCurves;
}

interface ExpectedMeeting {
  readonly meeting: Meeting;
  readonly share: number;
}

function meetings(call: Call, pictures: readonly ExpectedPicture[], { roles }: RaceContext): ExpectedMeeting[] {
  return pictures.map(({ picture, share }) => ({ meeting: meetProtection(call, roles, picture), share }));
}

function expectedCurve(found: readonly ExpectedMeeting[], answer: PassAnswer, { curves }: RaceContext): HomeCurve {
  return mixCurves(
    found.map(({ meeting }) => curves(meeting, answer)),
    found.map(({ share }) => share),
  );
}

import type { PassAnswer } from '../../game/answers.ts';
import type { Call, CallLibrary } from '../../game/call-library.ts';
import { type Meeting, meetProtection } from './protection-meeting.ts';
import type { ExpectedPicture } from './protection-pictures.ts';
import type { ProtectionPicture, RaceLine } from './protection-result.ts';
import {
  type HomeCurve,
  type HomeCurves,
  homeAtRelease,
  homeBeforeRelease,
  medianArrival,
  mixCurves,
  releaseChances,
} from './race.ts';
import type { Release } from './release.ts';
import { releaseShift } from './release-published.ts';

/** One call with the pictures it is expected to see, from this opponent and from an average one. */
export interface RacedCall {
  readonly call: Call;
  readonly pictures: readonly ExpectedPicture[];
  readonly typicalPictures: readonly ExpectedPicture[];
  /** The pictures of each situation; empty where the one mix stands for all. */
  readonly situations: readonly { readonly situation: string; readonly pictures: readonly ExpectedPicture[] }[];
}

/**
 * Whether a rusher is home before the ball is out, for each answer that ends in a throw. The interval is over what is not
 * known of the middle of their release; being home can only become likelier as that grows, so its ends are exact.
 *
 * @param releases - one per answer
 */
export function raceLines(raced: RacedCall, releases: readonly Release[], context: RaceContext): RaceLine[] {
  const { call, pictures, typicalPictures, situations } = raced;
  const curveOf = curvesOfCall(call, context);
  const atSnap = call.rush.filter(({ way }) => way !== 'late_if_back_blocks').length;
  return releases.map((release) => {
    const { answer, fit, typical, timedThrows } = release;
    const curve = expectedCurve(pictures, (picture) => curveOf(picture, answer));
    const shift = releaseShift(answer, atSnap);
    const chances = releaseChances({ mu: fit.mu + shift, sigma: fit.sigma });
    const homeAt = (mu: number) => homeBeforeRelease(curve, { mu: mu + shift, sigma: fit.sigma });
    const homeOf = (picture: ProtectionPicture) => homeAtRelease(curveOf(picture, answer), chances);
    const usual = { mu: typical.mu + shift, sigma: typical.sigma };
    return {
      call: call.name,
      answer,
      home: homeAtRelease(curve, chances),
      low: homeAt(fit.muLow),
      high: homeAt(fit.muHigh),
      typical: homeBeforeRelease(
        expectedCurve(typicalPictures, (picture) => curveOf(picture, answer)),
        usual,
      ),
      timedThrows,
      firstArrival: medianArrival(curve),
      ...(situations.length > 0 && { bySituation: homesBySituation(raced, homeOf) }),
    };
  });
}

/** What every race of a week shares. */
export interface RaceContext {
  readonly roles: CallLibrary['roles'];
  /** Of the level of our defense. */
  readonly curves: HomeCurves;
}

/** A call's home curve against each picture and answer, worked out once. */
function curvesOfCall(call: Call, { roles, curves }: RaceContext) {
  const meetings = new Map<string, { readonly meeting: Meeting; readonly curves: Map<PassAnswer, HomeCurve> }>();
  return (picture: ProtectionPicture, answer: PassAnswer): HomeCurve => {
    const key = pictureKey(picture);
    const met = meetings.get(key) ?? { meeting: meetProtection(call, roles, picture), curves: new Map() };
    meetings.set(key, met);
    const curve = met.curves.get(answer) ?? curves(met.meeting, answer);
    met.curves.set(answer, curve);
    return curve;
  };
}

/** The chance of being home is linear in the mix, so each picture is raced once for all situations. */
function homesBySituation({ situations }: RacedCall, homeOf: (picture: ProtectionPicture) => number) {
  const homes = new Map<string, number>();
  const homeIn = (picture: ProtectionPicture) => {
    const key = pictureKey(picture);
    const home = homes.get(key) ?? homeOf(picture);
    homes.set(key, home);
    return home;
  };
  return situations.map(({ situation, pictures }) => ({
    situation,
    home: pictures.reduce((sum, { picture, share }) => sum + share * homeIn(picture), 0),
  }));
}

function pictureKey({ protection, slide, back }: ProtectionPicture): string {
  return `${protection} ${slide} ${back}`;
}

function expectedCurve(
  pictures: readonly ExpectedPicture[],
  curveOf: (picture: ProtectionPicture) => HomeCurve,
): HomeCurve {
  return mixCurves(
    pictures.map(({ picture }) => curveOf(picture)),
    pictures.map(({ share }) => share),
  );
}

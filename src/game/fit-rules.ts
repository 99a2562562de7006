import * as z from 'zod';
import { FAMILIES } from './families.ts';
import { FIT_FEATURES } from './fit-features.ts';

const words = <Words extends readonly string[]>(list: Words) => z.array(z.enum(list)).min(1).optional();

const trigger = z
  .strictObject({
    answer: words(FIT_FEATURES.answer).describe('what they did with the ball'),
    back: words(FIT_FEATURES.back).describe("the back's job on a pass"),
    ball: words(FIT_FEATURES.ball).describe('held until a late rusher is home, or out before'),
    protectors: words(FIT_FEATURES.protectors).describe('how many stayed in to protect'),
    thrown_to: words(FIT_FEATURES.thrown_to).describe('where the ball was thrown'),
    scramble: words(FIT_FEATURES.scramble).describe('the quarterback took off'),
    routes: words(FIT_FEATURES.routes).describe('crossers or picks, by the name of the concept'),
    receivers: words(FIT_FEATURES.receivers).describe('how the receivers lined up'),
    bunch: words(FIT_FEATURES.bunch).describe('bunch or stack, by the name of the formation'),
    backs: words(FIT_FEATURES.backs).describe('backs in the personnel'),
    tight_ends: words(FIT_FEATURES.tight_ends).describe('tight ends in the personnel'),
    motion: words(FIT_FEATURES.motion).describe('movement before the snap'),
    tempo: words(FIT_FEATURES.tempo).describe('how they came to the line'),
    checked: words(FIT_FEATURES.checked).describe('the play was changed at the line'),
    option_tag: words(FIT_FEATURES.option_tag).describe('an option on the play'),
  })
  .refine((when) => Object.values(when).some((list) => list !== undefined), {
    message: 'a rule must ask for something, such as answer: [screen]',
  })
  .describe('what must be true of the snap; every line must hold, any word of a line will do');

const fitRule = z.strictObject({
  id: z
    .string()
    .regex(/^[a-z][a-z0-9_]*$/)
    .describe('short name of the rule; the id of a rule that is already there changes that rule'),
  families: z.array(z.enum(FAMILIES)).min(1).describe('kinds of pressure the rule speaks of'),
  when: trigger,
  says: z.enum(['right', 'wrong']).describe('whether the pressure is right or wrong on such a snap'),
  stands: z.boolean().default(false).describe('a right rule that stands even where another rule says wrong'),
  source: z.string().min(1).default('our staff').describe('who says so'),
});

/** The shape of `rules:` in defense.yaml: what the coach changes of the rules that say when a pressure is right. */
export const fitRulesSchema = z
  .strictObject({
    off: z.array(z.string()).default([]).describe('ids of rules to switch off'),
    set: z.array(fitRule).max(200).default([]).describe('rules to add, or to change where the id is already there'),
  })
  .prefault({})
  .describe('changes to the rules that say when a pressure is right or wrong');

/** One rule: on snaps that meet all of `when` the families are right, or wrong. */
export type FitRule = z.output<typeof fitRule>;
/** What the coach changes of the rules. */
export type FitRuleChanges = z.output<typeof fitRulesSchema>;
/** What a rule asks of a snap. */
export type FitTrigger = FitRule['when'];

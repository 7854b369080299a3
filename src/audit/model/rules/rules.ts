import type { JudgementRules } from './judgementRules.ts';
import type { ReadingRules } from './readingRules.ts';

/** Every rule and the values that its sentence is made from. Names are an interface: never rename one. */
export type RuleValues = ReadingRules & JudgementRules;

export type RuleId = keyof RuleValues;

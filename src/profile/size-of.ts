import type { Answers } from '../flow/answers.ts';
import type { Knowledge } from '../flow/knowledge.ts';
import type { SizeAdvice } from '../sizing/advice.ts';
import type { Visit } from '../visit/visit.ts';
import type { Facts } from './profile.ts';
export const sizeOf = (_visit: Visit, _answers: Answers, _facts: Facts, _knowledge: Knowledge): SizeAdvice => ({ from: 'none', doubt: 0, toeRoom: [10, 15], findings: [] });

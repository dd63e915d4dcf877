import flowFile from '../../../flows/fitting/flow.json';
import story from '../../../flows/fitting/stories/trail-and-gym.json';
import type { Answers } from '../../flow/answers.ts';
import type { Flow } from '../../flow/format.ts';
import { freshVisit } from '../../visit/fresh-visit.ts';
import type { Visit } from '../../visit/visit.ts';

/** An invented visit, to see a card by. */
export const sampleVisit = (language: string): Visit =>
  freshVisit(flowFile as unknown as Flow, language, story.answers as unknown as Answers);

/** Its ticket. */
export const SAMPLE_TICKET = 'maple 14';

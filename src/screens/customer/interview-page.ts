import { html, nothing, type TemplateResult } from 'lit';
import type { Answer } from '../../flow/answers.ts';
import type { Flow, Question } from '../../flow/format.ts';
import { holds } from '../../flow/holds.ts';
import type { Tables } from '../../flow/options.ts';
import { questionsOf, routeOf } from '../../flow/route.ts';
import type { InterviewEvent } from '../../interview/interview-events.ts';
import type { InterviewState } from '../../interview/interview-state.ts';
import type { Words } from '../../words/words.ts';
import { offeredWithLabels } from '../parts/option-labels.ts';
import type { ChangedAnswer } from './changed-answer.ts';

interface Interview {
  readonly flow: Flow;
  readonly tables: Tables;
  readonly words: Words;
  readonly changed: ChangedAnswer;
  readonly send: (event: InterviewEvent) => void;
}

/** What stands on the page between the welcome and the result: the question that is asked, or the review of all answers. */
export function interviewPage(context: InterviewState, interview: Interview): TemplateResult | typeof nothing {
  if (context.at === 'review') return reviewPage(context, interview);
  const question = questionsOf(interview.flow).find(({ id }) => id === context.at);
  return question ? questionPage(question, context, interview) : nothing;
}

function reviewPage({ answers }: InterviewState, { flow, words, changed, send }: Interview) {
  return html`<lw-review
      class="page-in"
      .flow=${flow}
      .route=${routeOf(flow, answers)}
      .words=${words}
      .cameBack=${changed.question}
      .changed=${changed.isOther(answers)}
      @change-answer=${({ detail: question }: CustomEvent<string>) => {
        changed.leave(question, answers[question]);
        send({ type: 'change', question });
      }}
    ></lw-review>
    <div class="foot sticky">
      ${backButton('review', words, send)}
      <button type="button" class="button main" @click=${() => send({ type: 'finish' })}>
        ${words.say('screen.review.finish')}
      </button>
    </div>`;
}

function questionPage(question: Question, { answers }: InterviewState, { flow, tables, words, send }: Interview) {
  const inPlay = routeOf(flow, answers).answers;
  const age = inPlay['age-band'];
  return html`<lw-question
    class="page-in"
    data-question=${question.id}
    .question=${question}
    .answer=${answers[question.id]}
    .noted=${question.noteWhen !== undefined && holds(question.noteWhen, inPlay)}
    .ageBand=${typeof age === 'string' ? age : undefined}
    .offered=${offeredWithLabels(question, tables, inPlay, words)}
    .words=${words}
    .back=${backButton(question.id, words, send)}
    @answered=${(event: CustomEvent<{ value: Answer }>) =>
      send({ type: 'answer', question: question.id, value: event.detail.value })}
  ></lw-question>`;
}

const backButton = (question: string, words: Words, send: Interview['send']) =>
  html`<button type="button" class="button" data-act="back" @click=${() => send({ type: 'back', question })}>
    ${words.say('screen.back')}
  </button>`;

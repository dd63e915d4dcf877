import type { Answer, Answers } from '../../flow/answers.ts';

/** The answer somebody went from review to change: where they come back to, and whether it became another. */
export class ChangedAnswer {
  #question = '';
  #before = '';

  /** None, while nobody came from review. */
  get question(): string {
    return this.#question;
  }

  leave(question: string, answer: Answer | undefined): void {
    this.#question = question;
    this.#before = JSON.stringify(answer);
  }

  isOther(answers: Answers): boolean {
    return this.#question !== '' && JSON.stringify(answers[this.#question]) !== this.#before;
  }

  /** Nothing of one customer's answer stays for the next. */
  forget(): void {
    this.#question = '';
    this.#before = '';
  }
}

import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { createActor } from 'xstate';
import { type IdleTimes, idleMachine } from '../../interview/idle.ts';
import type { Words } from '../../words/words.ts';
import { ActorController } from '../parts/actor-controller.ts';
import { LightElement } from '../parts/light-element.ts';

/** A minute and a half of quiet, then half a minute to answer. Common practice; WCAG 2.2.1 asks for 20 seconds at least. */
export const IDLE_TIMES: IdleTimes = { quiet: 90_000, warning: 30_000 };
const STIRS = ['pointerdown', 'keydown', 'input'] as const;
/** One stir in so many milliseconds is enough to see that somebody is there. Our choice. */
const STIR_EVERY = 1000;

/** Asks whether somebody is still there; tells the kiosk to wipe when nobody answers. */
@customElement('lw-idle-watch')
export class IdleWatch extends LightElement {
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) times: IdleTimes = IDLE_TIMES;
  @state() private left = 0;
  private counting: ReturnType<typeof setInterval> | undefined;
  private readonly idle = new ActorController<typeof idleMachine>(
    this,
    (snapshot) => {
      if (snapshot.value === 'warning') this.count();
      else this.stopCounting();
      if (snapshot.status === 'done') this.dispatchEvent(new CustomEvent('wiped'));
    },
    () => this.dispatchEvent(new CustomEvent('wiped')),
  );

  private stirredAt = Number.NEGATIVE_INFINITY;

  private readonly stir = ({ timeStamp }: Event): void => {
    if (timeStamp - this.stirredAt < STIR_EVERY) return;
    this.stirredAt = timeStamp;
    if (this.idle.actor?.getSnapshot().value === 'active') this.idle.actor.send({ type: 'stir' });
  };

  override connectedCallback(): void {
    super.connectedCallback();
    for (const type of STIRS) window.addEventListener(type, this.stir, { passive: true });
    this.idle.follow(createActor(idleMachine, { input: this.times }));
  }

  override disconnectedCallback(): void {
    for (const type of STIRS) window.removeEventListener(type, this.stir);
    this.stopCounting();
    super.disconnectedCallback();
  }

  private count(): void {
    this.left = Math.round(this.times.warning / 1000);
    this.counting ??= setInterval(() => {
      this.left = Math.max(0, this.left - 1);
    }, 1000);
  }

  private stopCounting(): void {
    clearInterval(this.counting);
    this.counting = undefined;
  }

  protected override updated(): void {
    const dialog = this.querySelector('dialog');
    if (dialog && !dialog.open) dialog.showModal();
  }

  protected override render() {
    if (this.idle.actor?.getSnapshot().value !== 'warning') return nothing;
    // Closed, not just taken away: closing gives the focus back to where it was.
    const stay = () => {
      this.querySelector('dialog')?.close();
      this.idle.actor?.send({ type: 'stir' });
    };
    return html`<dialog class="idle" aria-labelledby="idle-title" @cancel=${(event: Event) => {
      event.preventDefault();
      stay();
    }}>
      <div>
        <h2 id="idle-title">${this.words.say('screen.idle.title')}</h2>
        <p aria-live="off">${this.words.say('screen.idle.text', { count: this.left })}</p>
        <button type="button" class="button main" @click=${stay}>${this.words.say('screen.idle.stay')}</button>
      </div>
    </dialog>`;
  }
}

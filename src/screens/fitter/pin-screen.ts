import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { forgetPin, hasPin, readPin, setPin, tryPin } from '../../storage/pin.ts';
import type { Store } from '../../storage/store.ts';
import type { Words } from '../../words/words.ts';
import { LightElement } from '../parts/light-element.ts';
import { canKeepPin, derivePin, freshSalt } from './derive-pin.ts';

/**
 * A forgotten PIN costs every visit on the tablet, and the way to it lies open to whoever stands there: seconds before
 * it can be taken. Our choice: long for a child who taps about, short for a shop.
 */
const FORGET_AFTER = 60;

/** The way in: the shop's PIN and the fitter's initials, once a shift. The first to come sets the PIN. */
@customElement('lw-pin')
export class PinScreen extends LightElement {
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) store!: Store;
  /** Why it is locked again. */
  @property() note = '';

  @state() private first: boolean | undefined;
  @state() private working = false;
  @state() private finding = '';
  /** Seconds until the PIN may be forgotten; nothing where nobody asked. */
  @state() private forgetIn: number | undefined;
  @state() private waitUntil = 0;
  private ticking: ReturnType<typeof setInterval> | undefined;
  private forgetTicking: ReturnType<typeof setInterval> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    void hasPin(this.store).then((has) => {
      this.first = !has;
    });
  }

  override disconnectedCallback(): void {
    clearInterval(this.ticking);
    clearInterval(this.forgetTicking);
    super.disconnectedCallback();
  }

  private say(key: string, data?: Readonly<Record<string, string | number>>): string {
    return this.words.say(`bench.pin.${key}`, data);
  }

  private get waiting(): number {
    return Math.max(0, Math.ceil((this.waitUntil - performance.now()) / 1000));
  }

  private wait(milliseconds: number): void {
    this.waitUntil = performance.now() + milliseconds;
    clearInterval(this.ticking);
    this.ticking = setInterval(() => {
      this.requestUpdate();
      if (this.waiting === 0) {
        clearInterval(this.ticking);
        this.finding = '';
      }
    }, 500);
  }

  private async submit(event: Event): Promise<void> {
    event.preventDefault();
    const form = new FormData(event.target as HTMLFormElement);
    const read = readPin(String(form.get('pin') ?? ''));
    const initials = String(form.get('initials') ?? '').trim();
    if ('code' in read) return this.refuse(read.code);
    if (initials === '') return this.refuse('no-initials');
    if (this.first && String(form.get('again') ?? '').replace(/[\s-]/g, '') !== read.pin)
      return this.refuse('not-same');
    this.working = true;
    try {
      if (await this.opens(read.pin)) this.dispatchEvent(new CustomEvent('unlocked', { detail: initials }));
    } catch (reason) {
      console.error(reason);
      this.refuse(this.first ? 'not-kept' : 'not-checked');
    } finally {
      this.working = false;
    }
  }

  private async opens(pin: string): Promise<boolean> {
    if (this.first) {
      if (await setPin(this.store, pin, derivePin, freshSalt())) return true;
      this.first = false;
      this.refuse('set-elsewhere');
      return false;
    }
    const tried = await tryPin(this.store, pin, derivePin, Date.now());
    if (tried.is === 'right') return true;
    if (tried.is === 'none') this.first = true;
    else if (tried.wait > 0) this.wait(tried.wait);
    this.refuse(tried.is === 'none' ? 'none-set' : tried.is === 'wait' ? 'too-soon' : 'wrong');
    return false;
  }

  private refuse(code: string): void {
    this.finding = code;
    void this.updateComplete.then(() => this.querySelector<HTMLInputElement>('input[name="pin"]')?.select());
  }

  private askForget(): void {
    this.forgetIn = FORGET_AFTER;
    this.forgetTicking = setInterval(() => {
      this.forgetIn = Math.max(0, (this.forgetIn ?? 0) - 1);
      if (this.forgetIn === 0) clearInterval(this.forgetTicking);
    }, 1000);
  }

  private keep(): void {
    clearInterval(this.forgetTicking);
    this.forgetIn = undefined;
  }

  private async forget(): Promise<void> {
    await forgetPin(this.store);
    this.keep();
    this.first = true;
    this.finding = '';
    this.waitUntil = 0;
    this.dispatchEvent(new CustomEvent('forgotten'));
  }

  private leave(): void {
    this.dispatchEvent(new CustomEvent('leave'));
  }

  protected override render() {
    if (!canKeepPin()) {
      return html`<div class="head">
          <h1 id="ask" tabindex="-1">${this.say('title')}</h1>
          <p class="said error">${this.say('no-crypto')}</p>
        </div>
        <div class="foot">${this.leaveButton()}</div>`;
    }
    if (this.first === undefined) return nothing;
    return html`<div class="head">
        <h1 id="ask" tabindex="-1">${this.say(this.first ? 'setTitle' : 'title')}</h1>
        <p class="soft">${this.say(this.first ? 'setLead' : 'lead')}</p>
        ${this.note ? html`<p class="said" role="status">${this.note}</p>` : nothing}
        ${this.store.lasting ? nothing : html`<p class="said">${this.say('not-lasting')}</p>`}
      </div>
      ${this.form()} ${this.first ? nothing : this.recovery()}`;
  }

  private form() {
    const waiting = this.waiting;
    const finding = waiting > 0 ? 'wait' : this.finding;
    return html`<form class="pin" novalidate @submit=${this.submit}>
      ${
        finding
          ? html`<p class="said error" id="pin-error" role="alert">
              ${waiting > 0 ? this.say('wait', { count: waiting }) : this.say(finding)}
            </p>`
          : nothing
      }
      ${this.input('pin', finding)} ${this.first ? this.input('again', '') : nothing}
      <label class="field"
        ><span>${this.say('initials')}</span
        ><input type="text" name="initials" autocomplete="off" maxlength="20" autocapitalize="characters" />
        <span class="soft small">${this.say('initialsWhy')}</span></label
      >
      <div class="foot">
        <button type="submit" class="button main" ?disabled=${this.working || waiting > 0}>
          ${this.say(this.working ? 'working' : this.first ? 'set' : 'open')}
        </button>
        ${this.leaveButton()}
      </div>
    </form>`;
  }

  private input(name: 'pin' | 'again', finding: string) {
    return html`<label class="field"
      ><span>${this.say(name === 'again' ? 'again' : 'pin')}</span
      ><input
        type="text"
        class="digits"
        name=${name}
        inputmode="numeric"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${finding ? 'true' : 'false'}
        aria-describedby=${finding ? 'pin-error' : nothing}
    /></label>`;
  }

  private leaveButton() {
    return html`<button type="button" class="button" @click=${this.leave}>${this.words.say('bench.leave')}</button>`;
  }

  private recovery() {
    const left = this.forgetIn;
    if (left === undefined) {
      return html`<button type="button" class="link" @click=${() => this.askForget()}>${this.say('forgot')}</button>`;
    }
    return html`<section class="said">
      <div>
        <p role="status">${this.say('forgetWarning')}</p>
        ${left > 0 ? html`<p data-left=${left}>${this.say('forgetWait', { left })}</p>` : nothing}
        <div class="foot">
          <button type="button" class="button" data-act="forget" ?disabled=${left > 0} @click=${() => this.forget()}>${this.say('forgetYes')}</button>
          <button type="button" class="button main" @click=${() => this.keep()}>${this.say('forgetNo')}</button>
        </div>
      </div>
    </section>`;
  }
}

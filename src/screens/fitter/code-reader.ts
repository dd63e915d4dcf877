import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Words } from '../../words/words.ts';
import { LightElement } from '../parts/light-element.ts';

/** Milliseconds from one look through the camera to the next. Our choice. */
const LOOK_EVERY = 250;

/** A card's code comes in as text, as a picture, or through the camera; out goes its text, once. */
@customElement('lw-code-reader')
export class CodeReader extends LightElement {
  @property({ attribute: false }) words!: Words;
  /** What was wrong with the last code, in words. */
  @property() finding = '';

  @state() private own = '';
  @state() private camera: MediaStream | undefined;
  @state() private looking = false;
  private timer: ReturnType<typeof setTimeout> | undefined;

  override disconnectedCallback(): void {
    this.stop();
    super.disconnectedCallback();
  }

  private say(key: string): string {
    return this.words.say(`bench.code.${key}`);
  }

  private give(text: string): void {
    this.own = '';
    this.dispatchEvent(new CustomEvent('code', { detail: text }));
  }

  private typed(event: Event): void {
    event.preventDefault();
    const text = String(new FormData(event.target as HTMLFormElement).get('code') ?? '').trim();
    if (text === '') this.own = 'empty';
    else this.give(text);
  }

  private async picture(event: Event): Promise<void> {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    if (!file) return;
    this.looking = true;
    try {
      const { readPicture } = await import('./read-picture.ts');
      const text = await readPicture(file);
      if (text === undefined) this.own = 'no-code';
      else this.give(text);
    } catch {
      this.own = 'no-picture';
    }
    this.looking = false;
    input.value = '';
  }

  private async start(): Promise<void> {
    this.own = '';
    if (!navigator.mediaDevices?.getUserMedia) {
      this.own = 'camera-missing';
      return;
    }
    try {
      this.camera = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' }, audio: false });
    } catch (reason) {
      const name = reason instanceof DOMException ? reason.name : '';
      const refused = name === 'NotAllowedError' || name === 'SecurityError';
      this.own = refused ? 'camera-refused' : name === 'NotFoundError' ? 'camera-missing' : 'camera-failed';
      return;
    }
    const { readVideo } = await import('./read-picture.ts');
    await this.updateComplete;
    const video = this.querySelector('video');
    if (!video || !this.camera) return;
    video.srcObject = this.camera;
    await video.play().catch(() => undefined);
    const look = async (): Promise<void> => {
      const text = await readVideo(video).catch(() => undefined);
      if (!this.camera) return;
      if (text === undefined) {
        this.timer = setTimeout(look, LOOK_EVERY);
        return;
      }
      this.stop();
      this.give(text);
    };
    await look();
  }

  private stop(): void {
    clearTimeout(this.timer);
    for (const track of this.camera?.getTracks() ?? []) track.stop();
    this.camera = undefined;
  }

  protected override render() {
    const finding = this.own ? this.say(this.own) : this.finding;
    return html`<section class="code-reader">
      <h2>${this.say('title')}</h2>
      <p class="soft">${this.say('lead')}</p>
      ${finding ? html`<p class="said error" id="code-error" role="alert">${finding}</p>` : nothing}
      <form class="line" @submit=${this.typed}>
        <label class="field"
          ><span>${this.say('text')}</span
          ><input
            type="text"
            name="code"
            autocomplete="off"
            spellcheck="false"
            aria-describedby=${finding ? 'code-error' : nothing}
        /></label>
        <button type="submit" class="button">${this.say('open')}</button>
      </form>
      <div class="line">
        <label class="button file"
          >${this.say(this.looking ? 'looking' : 'picture')}
          <input type="file" class="visually-hidden" name="picture" accept="image/*" @change=${this.picture}
        /></label>
        ${
          this.camera
            ? html`<button type="button" class="button" @click=${this.stop}>${this.say('camera-stop')}</button>`
            : html`<button type="button" class="button" @click=${this.start}>${this.say('camera')}</button>`
        }
      </div>
      ${this.camera ? html`<video class="camera" playsinline muted aria-label=${this.say('camera-shows')}></video>` : nothing}
    </section>`;
  }
}

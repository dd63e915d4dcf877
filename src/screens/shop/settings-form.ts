import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { readLogo } from '../../card/logo.ts';
import { KIT, type Shop } from '../../card/shop.ts';
import { SETTING_LIMITS, type Setting, type Settings, type SettingsFile } from '../../storage/shop-settings.ts';
import type { Words } from '../../words/words.ts';
import type { LineClient } from '../../worker/line-client.ts';
import { LightElement } from '../parts/light-element.ts';
import { LANGUAGES } from '../parts/word-files.ts';
import { type CardFormat, cardFormats } from './card-formats.ts';
import './card-preview.ts';
import { findingText } from './finding-text.ts';
import { notReviewed } from './native-review.ts';
import { readForm } from './read-form.ts';

type Field = keyof Shop | Setting;

/** Everything a shop types or ticks, on one page; nothing is kept until it is saved. */
@customElement('lw-settings-form')
export class SettingsForm extends LightElement {
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) line!: LineClient;
  @property({ attribute: false }) shop!: Shop;
  @property({ attribute: false }) settings!: Settings;
  /** How saving went. */
  @property() note = '';

  @state() private formats: readonly CardFormat[] = [];
  @state() private unread: readonly string[] = [];
  @state() private wrong: readonly Field[] = [];
  @state() private logo: string | undefined;
  @state() private logoFinding = '';
  @state() private shown: Shop | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    void cardFormats().then((formats) => {
      this.formats = formats;
    });
    void notReviewed().then((unread) => {
      this.unread = unread;
    });
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('shop')) {
      this.logo = this.shop.logo;
      this.shown = this.shop;
      this.wrong = [];
    }
  }

  /** What the fields hold now; those that are wrong are pointed out. */
  private read(form: HTMLFormElement): SettingsFile | undefined {
    const { logo: _before, ...plain } = this.shop;
    const read = readForm(new FormData(form), { ...plain, ...(this.logo === undefined ? {} : { logo: this.logo }) });
    this.wrong = 'wrong' in read ? read.wrong : [];
    return 'wrong' in read ? undefined : read;
  }

  private async submit(event: Event): Promise<void> {
    event.preventDefault();
    const read = this.read(event.target as HTMLFormElement);
    if (read) this.dispatchEvent(new CustomEvent<SettingsFile>('settings', { detail: read }));
    else {
      await this.updateComplete;
      this.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
    }
  }

  /** The preview follows the form, once it can be read. */
  private changed(event: Event): void {
    this.dispatchEvent(new CustomEvent('touched'));
    const form = (event.target as HTMLElement).closest('form');
    if (!form) return;
    const { logo: _before, ...plain } = this.shop;
    const read = readForm(new FormData(form), { ...plain, ...(this.logo === undefined ? {} : { logo: this.logo }) });
    if ('shop' in read) this.shown = read.shop;
  }

  private async takeLogo(file: File | undefined): Promise<void> {
    if (!file) return;
    const { value, findings } = readLogo(await file.text(), file.name);
    const [first] = findings;
    this.logoFinding = value || !first ? '' : findingText(first, this.words);
    if (value) this.putLogo(value);
  }

  private putLogo(logo: string | undefined): void {
    this.logo = logo;
    const { logo: _before, ...plain } = this.shown ?? this.shop;
    this.shown = { ...plain, ...(logo === undefined ? {} : { logo }) };
    this.dispatchEvent(new CustomEvent('touched'));
  }

  private say(key: string, data?: Readonly<Record<string, string | number>>): string {
    return this.words.say(`shop.settings.${key}`, data);
  }

  protected override render() {
    const { shop, settings } = this;
    return html`<form class="settings" novalidate @submit=${this.submit} @change=${this.changed}>
      <div class="column">
        ${this.section(
          'about',
          html`${this.input('name', shop.name)} ${this.area('address', shop.address.join('\n'))}
            ${this.input('openingLine', shop.openingLine ?? '')}
            ${this.input('emergencyNumber', shop.emergencyNumber, 'tel')} ${this.input('currency', shop.currency)}
            ${this.logoField()} ${this.demoTick()}`,
        )}
        ${this.section(
          'times',
          html`${this.number('keepMinutes', settings)} ${this.number('quiet', settings)} ${this.number('warning', settings)}`,
        )}
      </div>
      <div class="column">
        ${this.section('languages', html`${this.languages()} ${this.fitters()}`)}
        ${this.section(
          'kit',
          this.ticks('kit', KIT, shop.kit, (id) => this.say(`kit-${id}`)),
        )}
        ${this.section(
          'card',
          html`${this.format()}
            <lw-card-preview .words=${this.words} .line=${this.line} .shop=${this.shown ?? shop}></lw-card-preview>`,
        )}
      </div>
      <div class="foot save">
        <button type="submit" class="button main" data-act="save">${this.say('save')}</button>
        <p role="status" class=${this.wrong.length > 0 ? 'error' : ''}>
          ${this.wrong.length > 0 ? this.say('look-again', { count: this.wrong.length }) : this.note}
        </p>
      </div>
    </form>`;
  }

  private section(id: string, content: TemplateResult) {
    return html`<fieldset class="part" data-part=${id}>
      <legend><h2>${this.say(`part-${id}`)}</h2></legend>
      ${this.words.has(`shop.settings.why-${id}`) ? html`<p class="soft small">${this.say(`why-${id}`)}</p>` : nothing} ${content}
    </fieldset>`;
  }

  private error(field: Field) {
    if (!this.wrong.includes(field)) return nothing;
    const limits = SETTING_LIMITS[field as Setting];
    const data = limits ? { least: limits[0], most: limits[1] } : {};
    return html`<span class="error" id=${`wrong-${field}`}>${this.say(`wrong-${field}`, data)}</span>`;
  }

  private input(field: Field, value: string, mode: 'text' | 'tel' | 'numeric' = 'text') {
    const bad = this.wrong.includes(field);
    return html`<label class="field" data-field=${field}
      ><span>${this.say(`field-${field}`)}</span
      ><input
        type="text"
        name=${field}
        inputmode=${mode}
        autocomplete="off"
        maxlength="200"
        .value=${value}
        aria-invalid=${bad ? 'true' : 'false'}
        aria-describedby=${bad ? `wrong-${field}` : nothing}
      />${this.error(field)}</label
    >`;
  }

  private number(setting: Setting, settings: Settings) {
    return this.input(setting, String(settings[setting]), 'numeric');
  }

  private area(field: Field, value: string) {
    const bad = this.wrong.includes(field);
    return html`<label class="field" data-field=${field}
      ><span>${this.say(`field-${field}`)}</span
      ><textarea
        name=${field}
        rows="3"
        maxlength="400"
        .value=${value}
        aria-invalid=${bad ? 'true' : 'false'}
        aria-describedby=${bad ? `wrong-${field}` : nothing}
      ></textarea>${this.error(field)}</label
    >`;
  }

  private ticks(field: Field, ids: readonly string[], chosen: readonly string[], label: (id: string) => string) {
    return html`<div class="ticks">
      ${ids.map(
        (id) => html`<label class="check"
          ><input type="checkbox" name=${field} value=${id} .checked=${chosen.includes(id)} /><span>${label(id)}</span></label
        >`,
      )}
      ${this.error(field)}
    </div>`;
  }

  private languages() {
    return this.ticks('languages', LANGUAGES, this.shop.languages, (language) =>
      this.unread.includes(language)
        ? this.say('not-reviewed', { language: this.nameOf(language) })
        : this.nameOf(language),
    );
  }

  private fitters() {
    return html`<label class="field" data-field="language"
      ><span>${this.say('field-language')}</span
      ><select name="language">
        ${LANGUAGES.map(
          (language) =>
            html`<option value=${language} .selected=${language === this.shop.language}>${this.nameOf(language)}</option>`,
        )}
      </select></label
    >`;
  }

  private nameOf(language: string): string {
    return new Intl.DisplayNames([this.words.language], { type: 'language' }).of(language) ?? language;
  }

  private format() {
    return html`<div class="formats">
      ${this.formats.map(
        (format) => html`<label class="check"
          ><input type="radio" name="cardFormat" value=${format.id} .checked=${format.id === this.shop.cardFormat} /><span
            ><strong>${this.words.has(`shop.settings.format-${format.id}`) ? this.say(`format-${format.id}`) : format.id}</strong>
            <span class="soft">${this.paper(format)}</span></span
          ></label
        >`,
      )}
      ${this.error('cardFormat')}
    </div>`;
  }

  private paper({ width, height, black }: CardFormat): string {
    const size = height === 'auto' ? this.say('paper-roll', { width }) : this.say('paper', { width, height });
    return black ? `${size} · ${this.say('paper-black')}` : size;
  }

  /** Offered only where the mark stands: a shop that loads its own stock takes it off. */
  private demoTick() {
    if (!this.shop.demo) return nothing;
    return html`<label class="check"
      ><input type="checkbox" name="demo" checked /><span>${this.say('field-demo')}</span></label
    >`;
  }

  private logoField() {
    return html`<div class="field" data-field="logo">
      <span>${this.say('field-logo')}</span>
      <div class="line">
        <label class="button file"
          ><input
            type="file"
            class="visually-hidden"
            accept=".svg,image/svg+xml"
            @change=${(event: Event) => {
              event.stopPropagation();
              void this.takeLogo((event.target as HTMLInputElement).files?.[0]);
            }}
          /><span>${this.say(this.logo ? 'logo-other' : 'logo-choose')}</span></label
        >
        ${this.logo ? html`<button type="button" class="button" @click=${() => this.putLogo(undefined)}>${this.say('logo-none')}</button>` : nothing}
      </div>
      <span class="soft small" role="status">${this.logoFinding || this.say(this.logo ? 'logo-here' : 'logo-why')}</span>
    </div>`;
  }
}

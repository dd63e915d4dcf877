import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Shop } from '../../card/shop.ts';
import { readSettingsFile, type Settings, type SettingsFile, writeSettingsFile } from '../../storage/shop-settings.ts';
import type { Finding, Reading } from '../../units/result.ts';
import type { Words } from '../../words/words.ts';
import { LightElement } from '../parts/light-element.ts';
import { saveFile } from '../parts/save-file.ts';
import { findingText } from './finding-text.ts';

/** A settings file is a few kilobytes, with a drawing some tens. Our choice, in bytes. */
const LARGEST = 1_000_000;

/** All settings as one file, and a settings or shop file read with its findings before anything changes. */
@customElement('lw-settings-file')
export class SettingsFilePanel extends LightElement {
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) shop!: Shop;
  @property({ attribute: false }) settings!: Settings;
  @state() private read: (Reading<SettingsFile> & { readonly name: string }) | undefined;
  @state() private noteCode = '';

  private say(key: string, data?: Readonly<Record<string, string | number>>): string {
    return this.words.say(`shop.settingsFile.${key}`, data);
  }

  private async take(input: HTMLInputElement): Promise<void> {
    const file = input.files?.[0];
    if (!file) return;
    const tooLarge: Finding = { code: 'shop-settings-large', severity: 'error' };
    const read = file.size > LARGEST ? { findings: [tooLarge] } : readSettingsFile(await file.text(), file.name);
    this.read = { ...read, name: file.name };
    this.noteCode = '';
    input.value = '';
    await this.updateComplete;
    this.querySelector<HTMLElement>('.offer h3')?.focus();
  }

  private use(): void {
    const taken = this.read?.value;
    if (!taken) return;
    const { logo } = this.shop;
    // A shop file alone names its drawing and does not hold it: the one that is here stays.
    const shop = taken.settings || logo === undefined ? taken.shop : { logo, ...taken.shop };
    this.dispatchEvent(new CustomEvent<SettingsFile>('settings', { detail: { ...taken, shop } }));
    this.read = undefined;
    this.noteCode = 'used';
  }

  private leave(): void {
    this.read = undefined;
    this.noteCode = 'left';
  }

  protected override render() {
    return html`<section>
      <h2>${this.say('title')}</h2>
      <p class="soft small">${this.say('why')}</p>
      <div class="line">
        <button
          type="button"
          class="button"
          data-act="save-settings"
          @click=${() => saveFile(new Blob([writeSettingsFile(this.shop, this.settings)], { type: 'application/json' }), `${this.words.say('shop.file.settings')}.json`)}
        >
          ${this.say('save')}
        </button>
        <label class="button file"
          ><input
            type="file"
            class="visually-hidden"
            name="settings-file"
            accept=".json,application/json"
            @change=${(event: Event) => this.take(event.target as HTMLInputElement)}
          /><span>${this.say('choose')}</span></label
        >
      </div>
      <p role="status">${this.noteCode ? this.say(this.noteCode) : nothing}</p>
      ${this.read ? this.offered(this.read) : nothing}
    </section>`;
  }

  private offered({ value, findings, name }: Reading<SettingsFile> & { readonly name: string }) {
    return html`<div class="offer">
      <h3 tabindex="-1">${this.say(value ? 'offer' : 'refused', { file: name })}</h3>
      ${value ? html`<p>${value.shop.name}</p>` : nothing}
      ${
        findings.length > 0
          ? html`<ul class="findings" data-severity=${value ? 'note' : 'error'}>
              ${findings.map((finding) => html`<li>${findingText(finding, this.words)}</li>`)}
            </ul>`
          : nothing
      }
      <div class="foot">
        ${value ? html`<button type="button" class="button main" data-act="use-settings" @click=${this.use}>${this.say('use')}</button>` : nothing}
        <button type="button" class="button" @click=${this.leave}>${this.say('leave')}</button>
      </div>
    </div>`;
  }
}

import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Words } from '../../words/words.ts';
import { LightElement } from '../parts/light-element.ts';
import { SHORTCUTS } from './shortcuts.ts';

/** The single keys of the bench, and the switch that turns them off. */
@customElement('lw-keys')
export class KeysPanel extends LightElement {
  @property({ attribute: false }) words!: Words;
  @property({ type: Boolean }) on = true;

  private switched(event: Event): void {
    this.dispatchEvent(new CustomEvent('keys', { detail: (event.target as HTMLInputElement).checked }));
  }

  protected override render() {
    const { words } = this;
    const named = { tickets: 'bench.allTickets', undo: 'bench.undo' } as const;
    return html`<section class="keys">
      <label class="check"
        ><input type="checkbox" .checked=${this.on} @change=${this.switched} /><span>${words.say('bench.keys.use')}</span></label
      >
      ${
        this.on
          ? html`<dl>
              ${Object.entries(SHORTCUTS).map(
                ([key, what]) => html`<div>
                  <dt><kbd>${key.toUpperCase()}</kbd></dt>
                  <dd>${words.say(what === 'tickets' || what === 'undo' ? named[what] : `bench.view.${what}`)}</dd>
                </div>`,
              )}
            </dl>`
          : nothing
      }
    </section>`;
  }
}

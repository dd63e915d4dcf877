import { LitElement } from 'lit';

/**
 * Base of every element: it renders into the page itself, so that legends, labels and headings belong to one
 * document for screen readers, and one style sheet serves all under the strict content policy.
 */
export class LightElement extends LitElement {
  protected override createRenderRoot(): HTMLElement {
    return this;
  }
}

import { html, LitElement } from 'lit';

/** As little as a page of questions can be: a heading and six buttons, and the next page at a tap. */
class BarePages extends LitElement {
  static override properties = { page: { type: Number } };
  declare page: number;

  constructor() {
    super();
    this.page = -1;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override render() {
    const next = () => {
      this.page += 1;
    };
    if (this.page < 0) return html`<button @click=${next}>Start</button>`;
    return html`<section data-question=${this.page}>
      <h1>Question ${this.page}</h1>
      ${[1, 2, 3, 4, 5, 6].map((each) => html`<p><button class="choice" @click=${next}>Answer ${each} of ${this.page}</button></p>`)}
    </section>`;
  }
}
customElements.define('bare-pages', BarePages);

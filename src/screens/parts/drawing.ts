import { html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { LightElement } from './light-element.ts';

type Drawings = Readonly<Record<string, string>>;
const SETS = {
  activities: () => import('../../drawings/activities.ts'),
  floors: () => import('../../drawings/floors.ts'),
  feet: () => import('../../drawings/feet.ts'),
} as const;
export type DrawingSet = keyof typeof SETS;
/** Sets already here: a page draws them at once, not in a second round. */
const loaded = new Map<DrawingSet, Drawings>();

/** Fetches a set before anybody looks at it. */
export async function fetchDrawings(set: DrawingSet): Promise<Drawings> {
  const { drawings } = await SETS[set]();
  loaded.set(set, drawings);
  return drawings;
}

/**
 * One of our own line drawings, loaded with the screen that shows it. It repeats what the words beside it say, so
 * screen readers pass it over. The drawings are files of this repository, never data from outside.
 */
@customElement('lw-drawing')
export class Drawing extends LightElement {
  @property() set: DrawingSet = 'activities';
  @property() name = '';
  @state() private drawings: Drawings | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.setAttribute('aria-hidden', 'true');
  }

  protected override willUpdate(): void {
    this.drawings ??= loaded.get(this.set);
    if (this.drawings) return;
    void fetchDrawings(this.set).then((drawings) => {
      this.drawings = drawings;
    });
  }

  protected override render() {
    return html`<span class="drawing" .innerHTML=${this.drawings?.[this.name] ?? ''}></span>`;
  }
}

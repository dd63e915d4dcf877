import { html, nothing } from 'lit';

/** Labels in a row, each set apart, so that in a line from right to left none turns round what stands beside it. */
export const apart = (labels: string) =>
  labels.split(' · ').map((label, at) => html`${at > 0 ? ' · ' : nothing}<bdi>${label}</bdi>`);

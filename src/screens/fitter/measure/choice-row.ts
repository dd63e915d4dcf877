import { html } from 'lit';

export interface Choice {
  readonly id: string;
  readonly label: string;
}

/** One row of a few words to tap, one of which holds. `name` is unique on the page. */
export function choiceRow(
  name: string,
  legend: string,
  choices: readonly Choice[],
  chosen: string,
  choose: (id: string) => void,
) {
  return html`<fieldset class="choice-row">
    <legend>${legend}</legend>
    <div class="segments">
      ${choices.map(
        ({ id, label }) => html`<label
          ><input type="radio" name=${name} value=${id} .checked=${id === chosen} @change=${() => choose(id)} /><span
            >${label}</span
          ></label
        >`,
      )}
    </div>
  </fieldset>`;
}

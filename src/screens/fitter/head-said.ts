import { html, nothing } from 'lit';
import type { Profile } from '../../profile/profile.ts';
import type { Words } from '../../words/words.ts';
import { isStop } from './cautions-panel.ts';
import { clearedAnswers, isCleared } from './cleared.ts';
import { holdText } from './hold-text.ts';

/** The head of an open ticket: what the visit comes to, and how careful to be. `asksFirst`: nobody has said what for. */
export function headSaid(profile: Profile, asksFirst: boolean, words: Words) {
  const { outcome, hold, otherFootwear } = profile;
  const cleared = isCleared(profile);
  const about = cleared ? clearedAnswers(profile, words) : '';
  return html`<p class="outcome">
    <strong>${words.say(asksFirst && !isStop(hold) ? 'bench.lines.askFirst' : `bench.outcome.${outcome}`)}</strong>
    ${otherFootwear ? html`<span>${words.say(`other-footwear.${otherFootwear}.text`)}</span>` : nothing}
    ${cleared ? html`<strong class="gently">${words.say('bench.clearance.gently')}</strong>` : nothing}
    ${about ? html`<span>${words.say('bench.clearance.about', { what: about })}</span>` : nothing}
    ${isStop(hold) || (cleared && hold === 'none') ? nothing : html`<span class="soft">${holdText(profile, words)}</span>`}
  </p>`;
}

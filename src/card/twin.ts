import type { Measure } from './font/metrics.ts';
import { codePiece } from './layout/blocks/code.ts';
import { tape } from './layout/blocks/strips.ts';
import type { Pen } from './layout/pen.ts';
import { escaped, svgOf } from './svg.ts';
import type {
  CardText,
  CautionsText,
  LineUpText,
  ListText,
  PairText,
  StripText,
  TableText,
  TaskText,
} from './text/card-text.ts';

/**
 * The same card as HTML: preview, reading copy for screen readers, and what is printed where no PDF can be made or the
 * language runs right to left. Headings, lists and tables say it all; pictures repeat it. No style attributes, no
 * scripts, nothing fetched; its style sheet is `twin.css`.
 */
export function twinOf(text: CardText): string {
  const { head } = text;
  return `<article class="card" lang="${escaped(text.language)}" dir="${text.direction}">
${stub(text)}
<div class="card-body">
<h1>${escaped(text.title)}</h1>
${text.lead.map(p).join('\n')}
${text.musts ? p(text.musts) : ''}
${decision(text)}
${pictures(text)}
${text.lineUps.map(lineUpHtml).join('\n')}
${text.bench ? table(text.bench.tried) : ''}
${strips(text)}
${tasks(text)}
${text.cautions.map(cautions).join('\n')}
${list(text.advice)}
${easeIn(text)}
${size(text)}
${text.bench ? table(text.bench.feet) : ''}
<section class="card-care">${list(text.care)}</section>
${text.health.map((line) => `<p><strong>${escaped(line)}</strong></p>`).join('')}
${changes(text)}
${bench(text)}
<footer><p>${escaped(text.disclaimer)}</p><p>${[head.shop, ...head.address, ...(head.opening ? [head.opening] : [])].map(escaped).join('<br>')}</p></footer>
</div>
</article>`;
}

/** A whole page of it, to print from a frame of its own. `styles` are addresses of style sheets. */
export function twinPage(text: CardText, styles: readonly string[]): string {
  const links = styles.map((href) => `<link rel="stylesheet" href="${escaped(href)}">`).join('');
  return `<!doctype html><html lang="${escaped(text.language)}" dir="${text.direction}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${escaped(`${text.title} · ${text.head.ticket}`)}</title>${links}</head><body>${twinOf(text)}</body></html>`;
}

/** Names and labels in another script, each set apart so that it does not turn round what stands beside it. */
const apart = (words: string): string =>
  words
    .split(' · ')
    .map((each) => `<bdi>${escaped(each)}</bdi>`)
    .join(' · ');
const p = (line: string): string => `<p>${escaped(line)}</p>`;
const h2 = (line: string): string => `<h2>${escaped(line)}</h2>`;
const items = (lines: readonly string[]): string =>
  `<ul>${lines.map((line) => `<li>${escaped(line)}</li>`).join('')}</ul>`;
const list = ({ heading, items: lines }: ListText): string => (lines.length > 0 ? h2(heading) + items(lines) : '');

/** Drawings repeat the words under them, so readers aloud are given the words alone. */
function pictures({ pictures: all }: CardText): string {
  if (all.length === 0) return '';
  const figures = all.map(({ svg, says }) => {
    const drawn = svg.replace('<svg ', '<svg aria-hidden="true" focusable="false" ');
    return `<figure>${drawn}<figcaption>${escaped(says)}</figcaption></figure>`;
  });
  return `<div class="card-pictures">${figures.join('')}</div>`;
}

function stub(text: CardText): string {
  const { head, fetch } = text;
  const code = codePiece(text.code, 40, { module: 0.6, least: 0.5 });
  const boxes = fetch.boxes.map(
    (box) =>
      `<li><strong>${escaped(box.letter)}: ${apart(box.label)}</strong>${box.next ? ` · ${apart(box.next)}` : ''} · <strong>${apart(box.shelf)}</strong><br><small>${[box.name, box.others].filter(Boolean).map(apart).join(' · ')}</small></li>`,
  );
  return `<header class="card-stub">
${head.copySays ? `<p class="card-copy"><strong>${escaped(head.copySays)}</strong></p>` : ''}
<p class="card-ticket"><small>${escaped(head.ticketSays)}</small><br><strong>${escaped(head.ticket)}</strong></p>
<p><strong>${escaped(head.shop)}</strong><br>${escaped(head.date)}<br>${escaped(head.stock)}</p>
<figure class="card-code">${svgOf(code.marks, code.height, code.height)}<figcaption>${escaped(text.codeSays)}</figcaption></figure>
${fetch.boxes.length > 0 ? `${h2(fetch.heading)}<ul class="card-boxes">${boxes.join('')}</ul>` : p(fetch.none)}
</header>`;
}

function lineUpHtml({ heading, sharedReasons, sharedMisgivings, pairs, notes, but: word }: LineUpText): string {
  const shared = [
    ...(sharedReasons ? [meets(sharedReasons)] : []),
    ...(sharedMisgivings ? [but(word, sharedMisgivings)] : []),
  ];
  return `${heading ? h2(heading) : ''}${shared.length > 0 ? `<ul>${shared.join('')}</ul>` : ''}<div class="card-pairs">${pairs.map((pair) => pairHtml(pair, heading ? 3 : 2)).join('')}</div>${notes.map(p).join('')}`;
}

const meets = (reason: string): string => `<li class="card-meets">${escaped(reason)}</li>`;
const but = (word: string, misgiving: string): string =>
  `<li class="card-but"><b>${escaped(word)}</b> ${escaped(misgiving)}</li>`;

function pairHtml(pair: PairText, level: 2 | 3): string {
  const lines = [...pair.reasons.map(meets), ...pair.misgivings.map((misgiving) => but(pair.but, misgiving))];
  return `<section><h${level}><span class="card-letter">${escaped(pair.letter)}</span> ${apart(pair.name)}</h${level}><p>${escaped(pair.part)}</p><ul>${lines.join('')}</ul>${pair.notes.map(p).join('')}${pair.unknown ? p(pair.unknown) : ''}</section>`;
}

function strips(text: CardText): string {
  const { heading, legend, rows } = text.strips;
  if (rows.length === 0) return '';
  return `${h2(heading)}<p class="card-legend"><span class="card-band">${escaped(legend.band)}</span> ${legend.today ? `<span class="card-ring">${escaped(legend.today)}</span>` : ''}</p><dl class="card-strips">${rows.map(strip).join('')}</dl>`;
}

function strip(row: StripText): string {
  const drawn = tape(PICTURE_PEN, row.strip, 60);
  const name = row.figures ? `${row.name} · ${row.figures}` : row.name;
  return `<div><dt>${escaped(name)}</dt><dd><span class="card-end">${escaped(row.low)}</span>${svgOf(drawn.marks, 60, drawn.height)}<span class="card-end">${escaped(row.high)}</span><p>${escaped(row.spoken)}</p></dd></div>`;
}

/** In a picture the browser sets the letters, so a rough width is enough to centre them. */
const ROUGH: Measure = { width: (text) => text.length * 0.64, has: () => true };
const PICTURE_PEN: Pen = {
  measure: ROUGH,
  body: 9,
  small: 9,
  heading: 12,
  title: 17,
  ticket: 19,
  fetch: 14,
  hairline: 0.25,
  ink: 'tag',
};

function tasks(text: CardText): string {
  const { heading, safety, gentle, tick, moving, letters } = text.tasks;
  if (gentle.length + moving.length === 0) return '';
  const row = (task: TaskText) =>
    `<li><strong>${escaped(task.name)}</strong> ${letters.map((letter) => `<span class="card-tick">${escaped(letter)}</span>`).join(' ')}<br>${escaped(task.feel)}</li>`;
  return `${h2(heading)}${safety.map(p).join('')}${gentle.length > 0 ? `<ul class="card-tasks">${gentle.map(row).join('')}</ul>` : ''}${tick ? `<p class="card-tick">${escaped(tick)}</p>` : ''}${moving.length > 0 ? `<ul class="card-tasks">${moving.map(row).join('')}</ul>` : ''}`;
}

function cautions(group: CautionsText): string {
  const lines = group.items.map(({ text, backing }) => (backing ? `${text} (${backing})` : text));
  return `<section class="card-cautions${group.level === 'mind' ? '' : ' card-urgent'}">${h2(group.heading)}${items(lines)}</section>`;
}

function easeIn(text: CardText): string {
  const { heading, why, caption, weeks, rows, rest } = text.easeIn;
  if (rows.length === 0) return '';
  const [corner = '', ...columns] = weeks;
  const cells = rows.map(
    ([letter = '', ...shares]) =>
      `<tr><th scope="row">${escaped(letter)}</th>${shares.map((share) => `<td>${escaped(share)}</td>`).join('')}</tr>`,
  );
  return `${h2(heading)}${why.map(p).join('')}<table><caption>${escaped(caption)}</caption><thead><tr><th scope="col">${escaped(corner)}</th>${columns.map((week) => `<th scope="col">${escaped(week)}</th>`).join('')}</tr></thead><tbody>${cells.join('')}</tbody></table>${p(rest)}`;
}

function size({ size: said }: CardText): string {
  if (!said) return '';
  const rows = said.rows.map(({ name, value }) => `<div><dt>${escaped(name)}</dt><dd>${apart(value)}</dd></div>`);
  const feet = said.foot
    ? [said.foot.left, said.foot.right].flatMap((foot) =>
        foot ? [`${foot.name}: ${[foot.length, foot.ball].filter(Boolean).join(' · ')}`] : [],
      )
    : [];
  return `${h2(said.heading)}${rows.length > 0 ? `<dl class="card-size">${rows.join('')}</dl>` : ''}${feet.length > 0 ? items(feet) : ''}${[...(said.differs ? [said.differs] : []), ...said.notes].map(p).join('')}`;
}

function table({ heading, columns, rows, notes }: TableText): string {
  if (rows.length === 0) return '';
  const heads = columns.map((column) => `<th scope="col">${escaped(column)}</th>`);
  const lines = rows.map(
    ({ name, cells }) =>
      `<tr><th scope="row">${escaped(name)}</th>${cells.map((cell) => `<td>${apart(cell)}</td>`).join('')}</tr>`,
  );
  return `${h2(heading)}<table><thead><tr><td></td>${heads.join('')}</tr></thead><tbody>${lines.join('')}</tbody></table>${notes.map(p).join('')}`;
}

function decision({ bench: said }: CardText): string {
  if (!said || said.decision.items.length === 0) return '';
  return `${h2(said.decision.heading)}<ul>${said.decision.items.map((line) => `<li>${apart(line)}</li>`).join('')}</ul>`;
}

function changes({ bench: said }: CardText): string {
  if (!said || said.changes.items.length === 0) return '';
  const rows = said.changes.items.map(({ ask, said: all }) => `<dt>${escaped(ask)}</dt><dd>${escaped(all)}</dd>`);
  return `${h2(said.changes.heading)}<dl class="card-changes">${rows.join('')}</dl>`;
}

function bench({ bench: said }: CardText): string {
  if (!said) return '';
  const needs = said.needs.map(
    (need) => `<li><strong>${escaped(`${need.name}: ${need.range}`)}</strong> · ${escaped(need.why)}</li>`,
  );
  let first = 1;
  const reasons = said.reasons.groups.map(({ from, items: lines }) => {
    const start = first;
    first += lines.length;
    return `<h3>${escaped(from)}</h3><ol start="${start}">${lines.map((line) => `<li>${escaped(line)}</li>`).join('')}</ol>`;
  });
  const why = needs.length > 0 ? `<ul>${needs.join('')}</ul>${h2(said.reasons.heading)}${reasons.join('')}` : '';
  return `<section class="card-bench">${h2(said.heading)}${p(said.hold)}${said.cleared ? p(said.cleared) : ''}${said.note ? p(said.note) : ''}${why}${list(said.musts)}${list(said.unknown)}${list(said.sources)}</section>`;
}

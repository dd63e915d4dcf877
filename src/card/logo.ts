import type { Finding, Reading } from '../units/result.ts';

/** The most characters of a logo that a small card still prints quickly. Our choice. */
const MOST = 40_000;

/** Elements of a plain drawing; any other could run, fetch or embed something. */
const ELEMENTS: readonly string[] = [
  'svg',
  'g',
  'path',
  'rect',
  'circle',
  'ellipse',
  'line',
  'polyline',
  'polygon',
  'title',
  'desc',
];

/** Attributes of a plain drawing: shape, place and paint. */
const ATTRIBUTES: readonly string[] = [
  'xmlns',
  'viewbox',
  'width',
  'height',
  'role',
  'id',
  'class',
  'transform',
  'd',
  'points',
  'x',
  'y',
  'x1',
  'y1',
  'x2',
  'y2',
  'cx',
  'cy',
  'r',
  'rx',
  'ry',
  'fill',
  'fill-rule',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-linejoin',
  'stroke-linecap',
  'stroke-dasharray',
  'stroke-miterlimit',
  'stroke-opacity',
  'opacity',
  'aria-label',
  'aria-hidden',
];

/**
 * Takes a shop's logo if it is a plain SVG drawing, and refuses it otherwise, naming what it found.
 *
 * It is refused rather than cleaned: what is taken out of a drawing would be missed by its owner, and what is
 * overlooked would run. Allowed are shapes, groups and paint; no script, style, link, picture, text or reference.
 *
 * @example
 * readLogo('<svg viewBox="0 0 1 1"><path d="M0 0h1"/></svg>', 'logo.svg').findings // []
 * readLogo('<svg viewBox="0 0 1 1" onload="x()"/>', 'logo.svg').findings[0].code // 'logo-unsafe'
 */
export function readLogo(text: string, file: string): Reading<string> {
  const refuse = (code: string, data?: Finding['data']): Reading<string> => ({
    findings: [{ code, severity: 'error', file, ...(data ? { data } : {}) }],
  });
  if (text.length > MOST) return refuse('logo-too-big', { size: text.length, most: MOST });
  const bare = text
    .replace(/^\uFEFF/, '')
    .replace(/^\s*<\?xml[^>]*\?>/, '')
    .replaceAll(/<!--[\s\S]*?-->/g, '')
    .trim();
  if (!/^<svg[\s>/]/i.test(bare) || !/(<\/svg>|\/>)$/i.test(bare)) return refuse('logo-not-svg');
  const unsafe = firstUnsafe(bare);
  if (unsafe) return refuse('logo-unsafe', { what: unsafe });
  if (!isWhole(bare)) return refuse('logo-not-svg');
  const boxes = bare.matchAll(/\sviewBox\s*=\s*["']\s*([^"']*)/gi);
  if (!/^<svg[^>]*\sviewBox=/i.test(bare) || ![...boxes].every(([, box = '']) => isBox(box)))
    return refuse('logo-no-size');
  return { value: bare, findings: [] };
}

/**
 * A logo for paper that takes black alone: paint written as light as paper becomes white, any other black.
 *
 * @example
 * inBlack('<path fill="#d02020" stroke="none"/>') // '<path fill="#000000" stroke="none"/>'
 */
export function inBlack(svg: string): string {
  return svg.replaceAll(/\b(fill|stroke)=["']([^"']*)["']/g, (_, name: string, paint: string) =>
    paint === 'none' ? `${name}="none"` : `${name}="${isLight(paint) ? '#ffffff' : '#000000'}"`,
  );
}

/** Above this of 255 in every part a colour prints as bare paper. Our choice. */
const LIGHT = 200;

function isLight(paint: string): boolean {
  if (paint === 'white') return true;
  const digits = /^#([0-9a-f]{3}|[0-9a-f]{6})$/i.exec(paint)?.[1];
  if (!digits) return false;
  const parts = digits.length === 3 ? [...digits].map((digit) => digit + digit) : (digits.match(/../g) ?? []);
  return parts.every((part) => Number.parseInt(part, 16) > LIGHT);
}

/** Groups within groups: the PDF writer gives out at thousands. Our choice. */
const DEEPEST = 50;

/** One drawing, each of its elements closed in turn: the PDF writer throws at anything else. */
function isWhole(text: string): boolean {
  const open: string[] = [];
  for (const { 0: tag, 1: end, 2: name = '', 3: alone, index } of text.matchAll(/<(\/?)([^\s/>]+)[^<>]*?(\/?)>/g)) {
    if (end) {
      if (open.pop() !== name) return false;
    } else if (!alone && open.push(name) > DEEPEST) return false;
    if (open.length === 0) return index + tag.length === text.length;
  }
  return false;
}

/** Corner, then a width and a height that are something. */
function isBox(box: string): boolean {
  const numbers = box.trim().split(/[\s,]+/);
  const [, , width = '', height = ''] = numbers;
  const plain = numbers.every((number) => /^-?\d{1,6}(\.\d{1,6})?$/.test(number));
  return numbers.length === 4 && plain && Number(width) > 0 && Number(height) > 0;
}

function firstUnsafe(text: string): string | undefined {
  // Declarations (entities) and anything with `&` beyond the five named characters could hide what follows.
  if (/<[!?]/.test(text)) return /<[!?]\S*/.exec(text)?.[0];
  const entity = /&(?!(amp|lt|gt|quot|apos);)[^\s;]*;?/.exec(text);
  if (entity) return entity[0];
  const tags = text.match(/<[^<>]*>/g) ?? [];
  if (tags.join('').split('<').length !== text.split('<').length) return '<';
  for (const tag of tags) {
    const name = /^<\/?\s*([^\s/>]+)/.exec(tag)?.[1]?.toLowerCase() ?? tag;
    if (!ELEMENTS.includes(name)) return name;
    const inside = tag.replace(/^<\/?\s*[^\s/>]+/, '').replace(/\/?>$/, '');
    for (const [, attribute = '', value = ''] of inside.matchAll(/(?<![^\s="'])([^\s=]+)\s*=\s*("[^"]*"|'[^']*')/g)) {
      if (!ATTRIBUTES.includes(attribute.toLowerCase())) return attribute;
      if (attribute.toLowerCase() !== 'xmlns' && /url\s*\(|script:|data:|\/\/|\\/i.test(value)) return value;
    }
    const rest = inside.replaceAll(/(?<![^\s="'])([^\s=]+)\s*=\s*("[^"]*"|'[^']*')/g, '').trim();
    if (rest) return rest;
  }
  return undefined;
}

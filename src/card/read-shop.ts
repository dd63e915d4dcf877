import { type ParseError, parse } from 'jsonc-parser';
import { tooDeepAt } from '../units/nested.ts';
import type { Finding, Reading } from '../units/result.ts';
import { readLogo } from './logo.ts';
import { KIT, type Shop } from './shop.ts';

type Kind = 'text' | 'lines' | 'kit' | 'languages' | 'truth';
interface Field {
  readonly kind: Kind;
  readonly needed: boolean;
  /** Text must also look like this. */
  readonly shape?: RegExp;
  readonly expected: string;
}

/** In characters: a name or a line longer than this is none, and a file longer than that is another. Our choices. */
const LONGEST_LINE = 200;
const LONGEST_FILE = 50_000;
/** Fields nobody knows are named, so many of them. Our choice. */
const MOST_UNKNOWN = 20;

/** Scheme, host and port, with nothing behind: a card's code is put there. */
const ORIGIN = /^https?:\/\/(?:[\p{L}\p{N}][\p{L}\p{N}.-]*|\[[0-9a-f:.]+\])(?::\d{1,5})?$/iu;

/**
 * Whether a text is the plain address of a kiosk.
 *
 * @example
 * isOrigin('https://kiosk.example:8443') // true
 * isOrigin('https://kiosk.example/#here') // false
 */
export const isOrigin = (text: string): boolean => text.length <= LONGEST_LINE && ORIGIN.test(text);

/** What a shop file holds. */
const FIELDS: Readonly<Record<keyof Shop, Field>> = {
  name: { kind: 'text', needed: true, expected: 'text' },
  address: { kind: 'lines', needed: true, expected: '["line", "line"]' },
  openingLine: { kind: 'text', needed: false, expected: 'text' },
  logo: { kind: 'text', needed: false, shape: /^[^/\\:]+\.svg$/i, expected: '"name.svg"' },
  currency: { kind: 'text', needed: true, shape: /^[A-Z]{3}$/, expected: 'ISO 4217, "EUR"' },
  language: { kind: 'text', needed: true, shape: /^[a-z]{2,3}(-[A-Za-z0-9]+)*$/, expected: '"en"' },
  languages: { kind: 'languages', needed: true, expected: '["en", "de"]' },
  emergencyNumber: { kind: 'text', needed: true, shape: /^[0-9+ ]{2,20}$/, expected: '"112"' },
  kit: { kind: 'kit', needed: true, expected: KIT.join(', ') },
  cardFormat: { kind: 'text', needed: true, shape: /^[a-z][a-z0-9-]*$/, expected: '"a5"' },
  demo: { kind: 'truth', needed: false, expected: 'true or false' },
  origin: { kind: 'text', needed: false, shape: ORIGIN, expected: '"https://…"' },
};

/**
 * Reads a shop's own file. `logoText` is the drawing it names, where there is one; a logo that is refused leaves the
 * shop without a logo, and everything else stands.
 */
export function readShop(text: string, file: string, logoText?: string): Reading<Shop> {
  const errors: ParseError[] = [];
  const unfit = text.length > LONGEST_FILE ? LONGEST_FILE : tooDeepAt(text);
  const raw: unknown = unfit === undefined ? parse(text, errors, { allowTrailingComma: false }) : undefined;
  const first = unfit === undefined ? errors[0] : { offset: unfit };
  if (first || typeof raw !== 'object' || raw === null || Array.isArray(raw)) {
    const line = text.slice(0, first?.offset ?? 0).split('\n').length;
    return {
      findings: [
        {
          code: 'shop-not-json',
          severity: 'error',
          file,
          line,
          value: text.slice(first?.offset ?? 0, (first?.offset ?? 0) + 30),
        },
      ],
    };
  }
  // A field named __proto__ would otherwise lend the file fields that it does not have.
  const given: Readonly<Record<string, unknown>> = Object.assign(Object.create(null), raw);
  const findings: Finding[] = [];
  for (const [key, field] of Object.entries(FIELDS)) {
    const line = lineOf(text, key);
    if (given[key] === undefined) {
      if (field.needed) findings.push({ code: 'shop-missing', severity: 'error', file, data: { what: key } });
    } else if (!suits(given[key], field)) {
      findings.push({
        code: 'shop-wrong',
        severity: 'error',
        file,
        line,
        value: JSON.stringify(given[key]),
        data: { what: key, expected: field.expected },
      });
    }
  }
  for (const key of Object.keys(given)
    .filter((name) => !Object.hasOwn(FIELDS, name))
    .slice(0, MOST_UNKNOWN)) {
    findings.push({ code: 'shop-unknown', severity: 'note', file, line: lineOf(text, key), data: { what: key } });
  }
  if (findings.some((finding) => finding.severity === 'error')) return { findings };
  const known = Object.fromEntries(
    Object.entries(given).filter(([key]) => Object.hasOwn(FIELDS, key) && key !== 'logo'),
  );
  const logo = logoText === undefined ? undefined : readLogo(logoText, String(given['logo'] ?? file));
  const notes = (logo?.findings ?? []).map((finding) => ({ ...finding, severity: 'note' as const }));
  // Each field was held against FIELDS above.
  const shop = { ...known, ...(logo?.value ? { logo: logo.value } : {}) } as unknown as Shop;
  return { value: shop, findings: [...findings, ...notes] };
}

function suits(value: unknown, { kind, shape }: Field): boolean {
  if (kind === 'truth') return typeof value === 'boolean';
  if (kind === 'text') return isLine(value) && value.trim() !== '' && (shape?.test(value) ?? true);
  if (!Array.isArray(value) || value.length > 50 || !value.every((each) => isLine(each) && each !== '')) return false;
  if (kind === 'kit') return value.every((each) => (KIT as readonly string[]).includes(each));
  return kind === 'lines' || value.length > 0;
}

/** Text without control characters or marks that turn round what stands beside it. */
const isLine = (value: unknown): value is string =>
  typeof value === 'string' && value.length <= LONGEST_LINE && !/[\p{Cc}\p{Cs}\u202A-\u202E\u2066-\u2069]/u.test(value);

const lineOf = (text: string, key: string): number =>
  text.slice(0, Math.max(0, text.indexOf(`"${key}"`))).split('\n').length;

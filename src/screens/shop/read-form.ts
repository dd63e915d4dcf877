import { readShop } from '../../card/read-shop.ts';
import type { Shop } from '../../card/shop.ts';
import { SETTINGS, type Setting, type Settings, suits } from '../../storage/shop-settings.ts';

/** What the form holds, or the names of the fields to look at again. */
export type ReadForm =
  | { readonly shop: Shop; readonly settings: Settings }
  | { readonly wrong: readonly (keyof Shop | Setting)[] };

/**
 * Reads the settings form. What the form does not show (the drawing, where the kiosk is served from…) stays as it was.
 * The shop's part goes through the reader that every shop file goes through.
 */
export function readForm(form: FormData, before: Shop): ReadForm {
  const text = (name: string): string => String(form.get(name) ?? '').trim();
  const chosen = (name: string): readonly string[] => form.getAll(name).map(String);
  const { logo, openingLine: _line, demo: _demo, ...rest } = before;
  const openingLine = text('openingLine');
  const raw = {
    ...rest,
    name: text('name'),
    address: text('address')
      .split(/\r?\n/)
      .map((line) => line.trim())
      .filter((line) => line !== ''),
    ...(openingLine === '' ? {} : { openingLine }),
    currency: text('currency').toUpperCase(),
    language: text('language'),
    languages: chosen('languages'),
    emergencyNumber: text('emergencyNumber'),
    kit: chosen('kit'),
    cardFormat: text('cardFormat'),
    ...(form.has('demo') ? { demo: true } : {}),
  };
  const { value, findings } = readShop(JSON.stringify(raw), 'settings');
  const numbers = Object.fromEntries(SETTINGS.map((setting) => [setting, wholeNumber(text(setting))]));
  const wrong = [
    ...findings.filter(({ severity }) => severity === 'error').map(({ data }) => data?.['what'] as keyof Shop),
    ...SETTINGS.filter((setting) => !suits(setting, numbers[setting])),
  ];
  if (!value || wrong.length > 0) return { wrong };
  return { shop: { ...value, ...(logo === undefined ? {} : { logo }) }, settings: numbers as unknown as Settings };
}

const wholeNumber = (text: string): number => (/^\d{1,5}$/.test(text) ? Number(text) : Number.NaN);

import { readShop } from '../card/read-shop.ts';
import type { Shop } from '../card/shop.ts';
import { SHORTEST_WARNING } from '../interview/idle.ts';
import { tooDeepAt } from '../units/nested.ts';
import type { Finding, Reading } from '../units/result.ts';
import type { Store } from './store.ts';

/** What a shop sets beside what it says of itself. */
export interface Settings {
  /** How long a finished visit is kept, minutes; never past the end of its day. */
  readonly keepMinutes: number;
  /** Seconds of quiet before the kiosk asks whether somebody is there. */
  readonly quiet: number;
  /** Seconds it then waits for an answer. */
  readonly warning: number;
}
export type Setting = keyof Settings;

/** A minute and a half, then half a minute (common practice); visits to the end of the day. */
export const USUAL_SETTINGS: Settings = { keepMinutes: 24 * 60, quiet: 90, warning: 30 };

/** Least and most. A visit needs a quarter of an hour to reach the bench (our choice); the warning is WCAG 2.2.1's. */
export const SETTING_LIMITS: Readonly<Record<Setting, readonly [number, number]>> = {
  keepMinutes: [15, 24 * 60],
  quiet: [30, 600],
  warning: [SHORTEST_WARNING / 1000, 120],
};
export const SETTINGS = Object.keys(SETTING_LIMITS) as readonly Setting[];

const KEY = 'settings';

/** What was set on this tablet; the usual for whatever is missing or out of bounds. */
export async function keptSettings(store: Store): Promise<Settings> {
  const kept = Object(await store.get('shop', KEY).catch(() => undefined)) as Readonly<Record<string, unknown>>;
  const known = SETTINGS.filter((setting) => suits(setting, kept[setting]));
  return { ...USUAL_SETTINGS, ...Object.fromEntries(known.map((setting) => [setting, kept[setting]])) };
}

export async function keepSettings(store: Store, shop: Shop, settings: Settings): Promise<void> {
  await store.put('shop', 'shop', shop);
  await store.put('shop', KEY, settings);
}

export function suits(setting: Setting, value: unknown): value is number {
  const [least, most] = SETTING_LIMITS[setting];
  return Number.isInteger(value) && Number(value) >= least && Number(value) <= most;
}

const KIND = 'lacewing-settings';
const VERSION = 1;
const LOGO_NAME = 'logo.svg';

/** Shop and settings in one file. The PIN is not in it, and nothing of any visit. */
export function writeSettingsFile(shop: Shop, settings: Settings): string {
  const { logo, ...rest } = shop;
  const own = { ...rest, ...(logo === undefined ? {} : { logo: LOGO_NAME }) };
  const file = { kind: KIND, version: VERSION, settings, shop: own, ...(logo === undefined ? {} : { logo }) };
  return `${JSON.stringify(file, null, 2)}\n`;
}

export interface SettingsFile {
  readonly shop: Shop;
  /** Absent in a plain shop file. */
  readonly settings?: Settings;
}

/** Reads a settings file, or a shop file alone. */
export function readSettingsFile(text: string, name: string): Reading<SettingsFile> {
  const raw = parsed(text);
  if (raw?.['kind'] === undefined) return ofShopFile(text, name);
  if (raw['kind'] !== KIND) return { findings: [{ code: 'shop-settings-foreign', severity: 'error', file: name }] };
  if (raw['version'] !== VERSION) {
    return { findings: [{ code: 'shop-settings-version', severity: 'error', file: name }] };
  }
  const logo = typeof raw['logo'] === 'string' ? raw['logo'] : undefined;
  const { value: shop, findings } = readShop(JSON.stringify(raw['shop'] ?? null, null, 2), name, logo);
  const given = Object(raw['settings']) as Readonly<Record<string, unknown>>;
  const wrong = SETTINGS.filter((setting) => !suits(setting, given[setting])).map((setting): Finding => {
    const [least, most] = SETTING_LIMITS[setting];
    const value = JSON.stringify(given[setting]) ?? '';
    return { code: 'shop-setting-wrong', severity: 'error', value, data: { what: setting, least, most } };
  });
  // A line number would be that of the shop's part written anew, not of the file.
  const all = [...findings.map(({ line: _, ...rest }) => rest), ...wrong];
  if (!shop || wrong.length > 0) return { findings: all };
  const settings = Object.fromEntries(SETTINGS.map((setting) => [setting, given[setting]])) as unknown as Settings;
  return { value: { shop, settings }, findings: all };
}

function ofShopFile(text: string, name: string): Reading<SettingsFile> {
  const { value: shop, findings } = readShop(text, name);
  const logo = parsed(text)?.['logo'];
  const apart: Finding[] =
    shop && typeof logo === 'string' ? [{ code: 'shop-logo-apart', severity: 'note', value: logo }] : [];
  return shop ? { value: { shop }, findings: [...findings, ...apart] } : { findings };
}

function parsed(text: string): Readonly<Record<string, unknown>> | undefined {
  try {
    return tooDeepAt(text) === undefined ? Object(JSON.parse(text)) : undefined;
  } catch {
    return undefined;
  }
}

import { describe, expect, it } from 'vitest';
import type { Shop } from '../../src/card/shop.ts';
import { memoryStore } from '../../src/storage/memory-store.ts';
import {
  keepSettings,
  keptSettings,
  readSettingsFile,
  USUAL_SETTINGS,
  writeSettingsFile,
} from '../../src/storage/shop-settings.ts';

/** Invented. */
const SHOP: Shop = {
  name: 'The Toy Yard',
  address: ['1 Nowhere Lane'],
  currency: 'EUR',
  kit: ['mat'],
  language: 'en',
  languages: ['en', 'de'],
  emergencyNumber: '112',
  cardFormat: 'a5',
  logo: '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path d="M0 0h10v10z"/></svg>',
};
const SETTINGS = { keepMinutes: 120, quiet: 60, warning: 20 };

describe('what a shop sets', () => {
  it('is kept, and read back', async () => {
    const store = memoryStore();
    await keepSettings(store, SHOP, SETTINGS);
    expect(await keptSettings(store)).toEqual(SETTINGS);
    expect(await store.get('shop', 'shop')).toEqual(SHOP);
  });

  it('is the usual where nothing was set, and where what stands there is out of bounds', async () => {
    const store = memoryStore();
    expect(await keptSettings(store)).toEqual(USUAL_SETTINGS);
    await store.put('shop', 'settings', { keepMinutes: 100_000, quiet: 60, warning: 5 });
    expect(await keptSettings(store)).toEqual({ ...USUAL_SETTINGS, quiet: 60 });
  });

  it('never keeps a visit longer than a day, nor warns for less than twenty seconds', () => {
    const given = JSON.parse(writeSettingsFile(SHOP, SETTINGS));
    const asked = { ...given, settings: { keepMinutes: 1441, quiet: 60, warning: 19 } };
    const { value, findings } = readSettingsFile(JSON.stringify(asked), 'file.json');
    expect(value).toBeUndefined();
    expect(findings.map(({ code, data }) => [code, data?.['what']])).toEqual([
      ['shop-setting-wrong', 'keepMinutes'],
      ['shop-setting-wrong', 'warning'],
    ]);
  });
});

describe('settings as a file', () => {
  it('come back as they went, drawing and all', () => {
    const { value, findings } = readSettingsFile(writeSettingsFile(SHOP, SETTINGS), 'kiosk.json');
    expect(findings).toEqual([]);
    expect(value).toEqual({ shop: SHOP, settings: SETTINGS });
  });

  it('are refused from another kind of file, another version, or a torn one', () => {
    const codes = (text: string) => readSettingsFile(text, 'x.json').findings.map(({ code }) => code);
    expect(codes('{"kind":"lacewing-stock"}')).toEqual(['shop-settings-foreign']);
    expect(codes('{"kind":"lacewing-settings","version":7}')).toEqual(['shop-settings-version']);
    expect(codes('{"name": ')).toEqual(['shop-not-json']);
  });

  it('take a plain shop file, which names its drawing but does not hold it', () => {
    const { logo: _, ...rest } = SHOP;
    const { value, findings } = readSettingsFile(JSON.stringify({ ...rest, logo: 'logo.svg' }), 'shop.json');
    expect(value).toEqual({ shop: rest });
    expect(findings.map(({ code }) => code)).toEqual(['shop-logo-apart']);
  });

  it('do not take a drawing that could run', () => {
    const bad = { ...SHOP, logo: '<svg xmlns="http://www.w3.org/2000/svg"><script>x()</script></svg>' };
    const { value } = readSettingsFile(writeSettingsFile(bad, SETTINGS), 'kiosk.json');
    expect(value?.shop.logo).toBeUndefined();
  });
});

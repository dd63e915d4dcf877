import { fileURLToPath } from 'node:url';

const place = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url)).replace(/\/$/, '');

/** Where the project keeps what every command needs. */
export const FLOW_FOLDER = place('flows/fitting');
export const SHARED_WORDS = place('flows/words');
export const PRINT_TEMPLATES = place('print-templates');
export const DEMO_SHOP = place('demo/shop.json');
export const FONTS = place('node_modules/@expo-google-fonts/atkinson-hyperlegible-next');
export const DRAWINGS = place('src/drawings');
const FULL_PAGES: readonly string[] = ['a4', 'letter'];
/** Of the reading copy: how it looks, and what paper it is for where the format is a full page. */
export const twinStyles = (format: string): readonly string[] =>
  ['', ...(FULL_PAGES.includes(format) ? ['-full-page', `-${format}`] : [])].map((which) =>
    place(`src/card/twin${which}.css`),
  );

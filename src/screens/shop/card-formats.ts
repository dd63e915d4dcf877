import type { Template } from '../../card/template.ts';

const templates = import.meta.glob<Template>('../../../print-templates/*/template.json', { import: 'default' });

/** A card format as the shop chooses it: the paper it comes out on, millimetres. */
export interface CardFormat {
  readonly id: string;
  readonly width: number;
  readonly height: number | 'auto';
  /** Cards side by side on one sheet. */
  readonly across: number;
  readonly black: boolean;
}

/** Every folder of print templates, by its name. */
export async function cardFormats(): Promise<readonly CardFormat[]> {
  const all = await Promise.all(Object.values(templates).map((load) => load()));
  return all.map(({ id, page, sheet, ink }) => ({
    id,
    width: sheet?.width ?? page.width,
    height: sheet?.height ?? page.height,
    across: sheet?.across ?? 1,
    black: ink === 'black',
  }));
}

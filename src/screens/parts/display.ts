/** How the page is shown: language and direction, text size, contrast. Kept on `<html>`, where styles and readers look. */
export interface Display {
  readonly language?: string;
  readonly direction?: 'ltr' | 'rtl';
  readonly text?: 'normal' | 'large';
  readonly contrast?: 'normal' | 'more';
}

export function setDisplay({ language, direction, text, contrast }: Display): void {
  const root = document.documentElement;
  if (language) root.lang = language;
  if (direction) root.dir = direction;
  if (text) root.dataset['text'] = text;
  if (contrast) root.dataset['contrast'] = contrast;
}

export const displayed = (): { readonly large: boolean; readonly contrast: boolean } => ({
  large: document.documentElement.dataset['text'] === 'large',
  contrast: document.documentElement.dataset['contrast'] === 'more',
});

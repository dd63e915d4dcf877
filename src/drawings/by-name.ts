/** `./floors/mud.svg` → `mud`. */
export const byName = (files: Readonly<Record<string, string>>): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(files).map(([path, text]) => [path.replace(/^.*\/|\.svg$/g, ''), text]));

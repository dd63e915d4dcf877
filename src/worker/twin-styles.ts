import twin from '../card/twin.css?url';
import a4 from '../card/twin-a4.css?url';
import fullPage from '../card/twin-full-page.css?url';
import letter from '../card/twin-letter.css?url';
import type from '../screens/look/type.css?url';

/** Full pages to print the reading copy on; other formats keep to its own A5. */
const PAPERS: Readonly<Record<string, readonly string[]>> = { a4: [fullPage, a4], letter: [fullPage, letter] };

/**
 * Where the style sheets of a reading copy stand. Looked up by the page, not by the worker, whose build would write
 * sheet and typefaces a second time.
 */
export const twinStyles = (format: string): readonly string[] =>
  [type, twin, ...(PAPERS[format] ?? [])].map((url) => new URL(url, import.meta.url).href);

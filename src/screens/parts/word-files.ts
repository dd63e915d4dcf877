import type { Bundle } from '../../words/bundle.ts';

/** What is loaded when: the interview's words with the first screen, everything else while the customer answers. */
type File = () => Promise<Bundle>;

const shared = import.meta.glob<Bundle>('../../../flows/words/*/*.json', {
  import: 'default',
});
const fitting = import.meta.glob<Bundle>('../../../flows/fitting/*.*.json', {
  import: 'default',
});

/** Languages the kiosk has words for, by their own names. Data of the word folders; order as shown. */
export const LANGUAGES = [...new Set(Object.keys(shared).map((path) => path.split('/').at(-2) ?? ''))].sort();

const isFirst = (path: string, language: string): boolean =>
  path.endsWith(`/words/${language}/interview.json`) || path.endsWith(`/words.${language}.json`);

const filesOf = (language: string): readonly (readonly [string, File])[] => [
  ...Object.entries(shared).filter(([path]) => path.includes(`/words/${language}/`)),
  ...Object.entries(fitting).filter(([path]) => path.endsWith(`.${language}.json`)),
];

const load = (language: string, first: boolean): Promise<readonly Bundle[]> =>
  Promise.all(
    filesOf(language)
      .filter(([path]) => isFirst(path, language) === first)
      .map(([, file]) => file()),
  );

/** The bundles of the first screens. */
export const firstBundles = (language: string) => load(language, true);

/** The bundles of results, cards, bench and shop. */
export const otherBundles = (language: string) => load(language, false);

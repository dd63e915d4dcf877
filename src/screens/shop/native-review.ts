import type { Bundle } from '../../words/bundle.ts';

/** Each language's own folder says whether a native speaker has read its words: `yes`, `no`, or `written` where they were written in it. */
const files = import.meta.glob<Bundle>('../../../flows/words/*/shop.json', { import: 'default' });

/** Languages whose words no native speaker has read yet. */
export async function notReviewed(): Promise<readonly string[]> {
  const all = await Promise.all(
    Object.entries(files).map(async ([path, load]) => {
      const { shop } = await load();
      const own = typeof shop === 'object' ? shop['native-review'] : undefined;
      return own === 'no' ? [path.split('/').at(-2) ?? ''] : [];
    }),
  );
  return all.flat();
}

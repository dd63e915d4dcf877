import type { Visit } from '../../../src/visit/visit.ts';

const stories = import.meta.glob<Partial<Visit> & Pick<Visit, 'answers'>>('../../../flows/fitting/stories/*.json', {
  import: 'default',
});

/** A story's visit, as it stands when the interview is over. */
export async function storyVisit(name: string): Promise<Visit> {
  const load = stories[`../../../flows/fitting/stories/${name}.json`];
  if (!load) throw new Error(`There is no story ${name}`);
  const { answers } = await load();
  return { flow: 'fitting', flowVersion: 1, language: 'en', answers, overrides: [], observation: {}, tryOns: [] };
}

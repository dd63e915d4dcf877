import type { MarkRow } from './row.ts';

const source = 'common practice';

const rows: readonly Omit<MarkRow, 'kind' | 'source'>[] = [
  {
    key: 'non-marking',
    column: 'non-marking',
    aliases: ['non marking sole', 'abriebfrei', 'nicht färbend', 'hallensohle'],
    tools: ['box', 'hands'],
  },
  {
    key: 'removable-insole',
    column: 'removable insole',
    aliases: ['insole removable', 'wechselfußbett', 'einlegesohle herausnehmbar'],
    tools: ['hands'],
  },
  { key: 'waterproof', column: 'waterproof', aliases: ['wasserdicht'], tools: ['box'] },
  { key: 'quick-drying', column: 'quick-drying', aliases: ['schnelltrocknend', 'schnell trocknend'], tools: ['box'] },
  { key: 'washable', column: 'washable', aliases: ['machine washable', 'waschbar', 'abwaschbar'], tools: ['box'] },
  { key: 'closed-heel', column: 'closed heel', aliases: ['geschlossene ferse', 'ferse geschlossen'], tools: ['eye'] },
];

/** Rows that are yes or no. What is not known is neither. */
export const MARK_ROWS: readonly MarkRow[] = rows.map((row) => ({ kind: 'mark', source, ...row }));

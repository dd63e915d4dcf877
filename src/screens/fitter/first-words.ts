/**
 * The first sentence of a text, without its full stop: enough to know the text by where it stands in full elsewhere.
 *
 * @example
 * firstWords('An ankle that gives way should be checked. It can get stronger.') // 'An ankle that gives way should be checked'
 */
export function firstWords(text: string): string {
  const [first = text] = /^.*?[.!?؟](?=\s|$)/u.exec(text) ?? [];
  return first.replace(/\.$/, '');
}

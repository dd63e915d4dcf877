/** Text in an SVG picture, which neither escapes nor wraps by itself. */
export const escaped = (text: string): string =>
  text.replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`);

/** Breaks a text into lines of at most so many characters, between words; a longer word has a line of its own. */
export function lines(text: string, characters: number): readonly string[] {
  const broken: string[] = [];
  for (const word of text.split(/\s+/).filter(Boolean)) {
    const last = broken.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= characters)
      broken[broken.length - 1] = `${last} ${word}`;
    else broken.push(word);
  }
  return broken;
}

export const textBlock = (text: readonly string[], x: number, y: number, lineHeight: number): string =>
  text.map((line, i) => `<text x="${x}" y="${y + i * lineHeight}">${escaped(line)}</text>`).join('');

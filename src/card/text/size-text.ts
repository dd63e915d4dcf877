import type { Foot } from '../../observation/observation.ts';
import type { Words } from '../../words/words.ts';
import type { Calculated } from '../calculated-size.ts';
import type { CardSize, Copy } from '../card.ts';
import type { FootText, SizeText } from './card-text.ts';
import { sizeNumber } from './label-line.ts';
import { saidTo } from './said-to.ts';

/**
 * The size block: the longer foot, the room in front of it, and what the sums make of that. A customer's copy draws
 * both feet with their lengths; a fitter's has every measure in a table instead, and speaks of the feet, not of "yours".
 */
export function sizeText(size: CardSize, copy: Copy, words: Words): SizeText {
  const withFeet = copy === 'customer';
  const heading = words.say(saidTo({ copy }, 'card.size.heading'));
  const notes = size.findings.map(({ code, data }) => {
    const own = saidTo({ copy }, `finding.${code}`);
    return words.say(words.has(own) ? own : `finding.${code}`, data);
  });
  if (size.footLength === undefined) return { heading, rows: [], notes: [words.say('card.size.none'), ...notes] };
  // A length known to a millimetre or worse is not written to a tenth.
  const whole = size.doubt >= 1 || Number.isInteger(size.footLength);
  const value = words.number(size.footLength, whole ? 0 : 1);
  const range = ([from, to]: readonly [number, number]) =>
    words.say('card.size.range', { from: words.number(from, 0), to: words.number(to, 0) });
  return {
    heading,
    rows: [
      {
        name: words.say('card.size.foot'),
        value:
          size.doubt > 0
            ? words.say('card.size.doubt', { value, doubt: words.number(size.doubt, 0) })
            : words.say('card.size.mm', { value }),
      },
      { name: words.say('card.size.room'), value: range(size.toeRoom) },
      ...(size.innerLength ? [{ name: words.say('card.size.inner'), value: range(size.innerLength) }] : []),
      ...(size.calculated.length > 0
        ? [
            {
              name: words.say('card.size.labels'),
              value: size.calculated.map((each) => sizeSaid(each, words)).join(' · '),
            },
          ]
        : []),
    ],
    ...(size.labelsDiffer ? { differs: words.say('card.size.differs') } : {}),
    notes,
    ...(withFeet && (size.left?.length || size.right?.length)
      ? {
          foot: {
            title: words.say('card.size.feet'),
            ...footPart('left', size.left, words),
            ...footPart('right', size.right, words),
          },
        }
      : {}),
  };
}

/** A calculated size; lines end between two of them and never within one. */
export const sizeSaid = ({ system, label }: Calculated, words: Words): string =>
  words.say(`card.label.${system}`, { label: sizeNumber(label, words) }).replaceAll(' ', '\u00a0');

function footPart(
  side: 'left' | 'right',
  foot: Foot | undefined,
  words: Words,
): Partial<Record<typeof side, FootText>> {
  if (foot?.length === undefined) return {};
  const write = (value: number) => words.number(value, Number.isInteger(value) ? 0 : 1);
  return {
    [side]: {
      name: words.say(`card.size.${side}`),
      length: words.say('card.size.mm', { value: write(foot.length) }),
      ...(foot.ballGirth ? { ball: words.say('card.size.girth', { value: write(foot.ballGirth) }) } : {}),
    },
  };
}

import type { Words } from '../../words/words.ts';
import type { CardFacts } from '../card.ts';
import type { HeadText } from './card-text.ts';
import { saidTo } from './said-to.ts';

/** Who, where, when: shop, ticket, date, and how old the stock list is. */
export function headText(facts: CardFacts, words: Words): HeadText {
  const { shop } = facts;
  return {
    ...(facts.copy === 'fitter' ? { copySays: words.say('card.head.fitter') } : {}),
    shop: shop.name,
    address: shop.address,
    ...(shop.openingLine ? { opening: shop.openingLine } : {}),
    ...(shop.logo ? { logo: shop.logo } : {}),
    ticketSays: words.say(saidTo(facts, 'card.head.ticket')),
    ticket: facts.ticket,
    date: words.date(facts.date),
    stock: words.say('card.head.stock', { when: stockTime(facts, words) }),
  };
}

/** The hour is enough on the day itself; an older list says its day. */
function stockTime(facts: CardFacts, words: Words): string {
  const [day = '', clock = ''] = facts.stockAsOf.split('T');
  const time = clock.slice(0, 5);
  if (day === facts.date && time) return time;
  return time ? `${words.date(day)} · ${time}` : words.date(day);
}

import type { BlockRow, Template } from '../../template.ts';
import type { CardText } from '../../text/card-text.ts';
import { NARROW, type Pen, para } from '../pen.ts';
import { beside, type Piece, stack } from '../piece.ts';
import { benchBlock } from './bench.ts';
import { boxesBlock } from './boxes.ts';
import { changesBlock } from './changes.ts';
import { codePiece } from './code.ts';
import { easeInBlock } from './ease-in.ts';
import { headBlock } from './head.ts';
import { cautionsBlock, listBlock, runOn } from './lists.ts';
import { notesBlock } from './notes.ts';
import { pairsBlock } from './pairs.ts';
import { picturesPiece } from './pictures.ts';
import { sizeBlock } from './size.ts';
import { stripsBlock } from './strips.ts';
import { tableBlock } from './table.ts';
import { tasksBlock } from './tasks.ts';
import { titleBlock } from './title.ts';

/** Draws one block of a template. `most` is what is left of the row's `most` at this try. */
export function block(row: BlockRow, text: CardText, pen: Pen, width: number, template: Template): readonly Piece[] {
  // In a column or on a roll there is no room for columns within a block.
  const columns = width < NARROW ? 1 : (row.columns ?? 1);
  const most = row.most ?? Number.POSITIVE_INFINITY;
  const small = (words: string) => [para(pen, words, width, { size: pen.small }, 2)];
  switch (row.block) {
    case 'head':
      return headBlock(text, pen, width);
    case 'boxes':
      return boxesBlock(text, pen, width);
    case 'code':
      return [codeAndPictures(text, pen, width, template)];
    case 'title':
      return titleBlock(text, pen, width);
    case 'pairs':
      return pairsBlock(text, pen, width, columns, most);
    case 'strips':
      return stripsBlock(text, pen, width, most);
    case 'tasks':
      return tasksBlock(text, pen, width);
    case 'size':
      return sizeBlock(text, pen, width, most > 0);
    case 'advice':
      return listBlock(text.advice, pen, width, columns);
    case 'cautions':
      return cautionsBlock(text, pen, width, columns);
    case 'ease-in':
      return easeInBlock(text, pen, width);
    case 'care':
      return text.copy === 'fitter' ? runOn(text.care, pen, width) : listBlock(text.care, pen, width, columns);
    case 'decision':
      return text.bench ? listBlock(text.bench.decision, pen, width, columns) : [];
    case 'try-ons':
      return text.bench ? tableBlock(text.bench.tried, pen, width, columns) : [];
    case 'measures':
      return text.bench ? tableBlock(text.bench.feet, pen, width, FEET) : [];
    case 'changes':
      return text.bench ? changesBlock(text.bench, pen, width) : [];
    case 'bench':
      return benchBlock(text, pen, width, most > 0);
    case 'notes':
      return notesBlock(text, pen, width);
    case 'health':
      return text.health.map((line) => para(pen, line, width, { size: pen.body, bold: true }, 2));
    case 'disclaimer':
      return small(text.disclaimer);
    case 'fades':
      return small(text.fades);
  }
}

/** The code with its words below, and beside it the drawings of what the shoes are for. */
function codeAndPictures(text: CardText, pen: Pen, width: number, template: Template): Piece {
  const code = codePiece(text.code, width, template.code);
  const x = code.height + 3;
  const said = stack([code, para(pen, text.codeSays, width, { size: pen.small })]);
  if (width - x < LEAST_PICTURES) return { ...said, before: 2 };
  return beside(
    [
      { x: 0, piece: said },
      { x, piece: picturesPiece(text, pen, width - x, true) },
    ],
    2,
  );
}

/** A left one and a right one: their figures stand side by side on any paper. */
const FEET = 2;

/** Room for two drawings with their words, millimetres. */
const LEAST_PICTURES = 36;

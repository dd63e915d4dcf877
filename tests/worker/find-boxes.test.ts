import { describe, expect, it } from 'vitest';
import { findBoxes } from '../../src/worker/find-boxes.ts';
import { TOY } from './toy-stock.ts';

const found = (search: Partial<{ name: string; size: string; place: string }>) =>
  findBoxes(TOY, { name: '', size: '', place: '', ...search }).found.map(({ box }) => box.id);

describe('somebody looking for a box', () => {
  it('finds it by a part of the name, whatever its case', () => {
    expect(found({ name: 'heRON' })).toEqual(['h42', 'h42h']);
  });

  it('finds it by the number on the box', () => {
    expect(found({ name: 'T42' })).toEqual(['t42']);
  });

  it('finds a size in any system, or in the one named', () => {
    expect(found({ size: '8' })).toEqual(['h42', 't42']);
    expect(found({ size: 'UK 8' })).toEqual(['h42']);
    expect(found({ size: 'eu 42' })).toEqual(['h42', 't42']);
  });

  it.each(['42,5', '42.5', '42½', '42 1/2', '٤٢٫٥', '４２．５'])('takes %s for the size printed as 42 1/2', (size) => {
    expect(found({ size })).toEqual(['h42h']);
  });

  it('finds what stands where, by the beginning of the shelf', () => {
    expect(found({ place: 'c' })).toEqual(['h42', 'h42h']);
  });

  it('sees all three at once', () => {
    expect(found({ name: 'tern', size: '42', place: 'D' })).toEqual(['t42']);
    expect(found({ name: 'tern', place: 'C' })).toEqual([]);
  });

  it('is shown a page and told how many there are', () => {
    const many = Array.from({ length: 80 }, (_, at) => ({ ...(TOY.boxes[0] as (typeof TOY.boxes)[0]), id: `b${at}` }));
    const { found: shown, of } = findBoxes({ ...TOY, boxes: many }, { name: '', size: '', place: '' });
    expect([shown.length, of]).toEqual([50, 80]);
  });
});

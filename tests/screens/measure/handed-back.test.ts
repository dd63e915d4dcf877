import { describe, expect, test } from 'vitest';
import { HandedBack } from '../../../src/screens/fitter/measure/handed-back.ts';

describe('a bench that is a write behind', () => {
  test('hands back the entry before the last, and the last is not lost', () => {
    const handed = new HandedBack<number>();
    expect(handed.isNews(0)).toBe(true);
    handed.tell(1);
    handed.tell(2);
    expect(handed.isNews(0)).toBe(false);
    expect(handed.isNews(1)).toBe(false);
    expect(handed.isNews(2)).toBe(false);
  });

  test('news from another tab is taken over', () => {
    const handed = new HandedBack<number>();
    handed.isNews(0);
    handed.tell(1);
    expect(handed.isNews(7)).toBe(true);
    expect(handed.isNews(7)).toBe(false);
    expect(handed.isNews(1)).toBe(true);
  });

  test('an entry and its undoing come back as the element’s own', () => {
    const handed = new HandedBack<number>();
    handed.isNews(0);
    handed.tell(1);
    handed.tell(0);
    expect([1, 0].map((state) => handed.isNews(state))).toEqual([false, false]);
  });
});

import { describe, expect, it } from 'vitest';
import { heldBecause, taskGate, unevenTaskGate } from '../../src/profile/movement-gate.ts';
import { TOY } from './toy-knowledge.ts';

const well = { 'health-asked': 'asked', signs: ['none'], conditions: ['none'] } as const;

describe('try-on tasks', () => {
  it('all are open to somebody with nothing to hold them back', () => {
    const tasks = new Set(TOY.activities.flatMap((row) => row.tasks));
    for (const task of tasks) expect(taskGate(task, well)).toBe('open');
  });
  it('small-jumps: open when all is well, held when health was skipped; walking is always open', () => {
    expect(taskGate('walk', { 'health-asked': 'skipped' })).toBe('open');
    expect(taskGate('small-jumps', { 'health-asked': 'skipped' })).toBe('held');
    expect(taskGate('small-jumps', { 'health-asked': 'asked' })).toBe('open');
  });
  it.each([
    ['a recent sprain', { ...well, ankles: ['over-six-weeks'] }, 'ankles:over-six-weeks'],
    ['pregnancy', { ...well, conditions: ['pregnant'] }, 'conditions:pregnant'],
    ['falls', { ...well, conditions: ['falls-or-unsteady'] }, 'conditions:falls-or-unsteady'],
    ['calf pain', { ...well, 'body-calf': 'now' }, 'body:calf'],
    ['heel pain', { ...well, 'body-heel': 'this-month' }, 'body:heel'],
    ['a sore spot on a bone', { ...well, signs: ['bone-spot'] }, 'signs:bone-spot'],
    ['a visit whose health answers did not travel', { 'hold-carried': 'none', 'health-asked': 'not-reached' }, 'signs'],
  ])('%s holds back hop, shuffle, squat and jump, and says why', (_, facts, from) => {
    for (const task of ['rope-turns', 'side-step', 'squat', 'jump-land', 'jog'])
      expect(taskGate(task, facts)).toBe('held');
    for (const task of ['stand-still', 'walk']) expect(taskGate(task, facts)).toBe('open');
    expect(heldBecause(facts)).toContain(from);
  });
  it('an old ache holds nothing back', () => {
    expect(taskGate('squat', { ...well, 'body-heel': 'longer-ago' })).toBe('open');
  });
  it('a task that nobody has thought about yet is gated', () => {
    expect(taskGate('brand-new', { 'health-asked': 'skipped' })).toBe('held');
  });
  it('two different shoes only stand and walk, so stairs are held', () => {
    expect(unevenTaskGate('stairs')).toBe('held');
    expect(unevenTaskGate('walk')).toBe('open');
  });
});

import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Answer } from '../../src/flow/answers.ts';
import type { Knowledge } from '../../src/flow/knowledge.ts';
import { answersInPlay, inPlay, questionsOf } from '../../src/flow/route.ts';
import { questionOf } from '../../src/profile/from.ts';
import type { Profile, Reason } from '../../src/profile/profile.ts';
import { effectiveAnswers, withOverrides } from '../../src/visit/effective.ts';
import { HOLDS, type Visit } from '../../src/visit/visit.ts';
import { anyAnswer, anyAnswers, anyOverride, anyRoll, anyVisit } from '../profile/any-visit.ts';
import { profileFor, visitOf } from '../profile/toy-visit.ts';

/** Everything in a profile that a reason stands behind. */
function reasonsIn(profile: Profile): readonly Reason[] {
  const parts = [profile, ...(profile.split ?? [])];
  return [
    ...parts.flatMap((part) =>
      [...part.needs, ...part.musts, ...(part.preferences ?? [])].flatMap((each) => each.reasons),
    ),
    ...[...profile.cautions, ...profile.advice].flatMap((each) => each.reasons),
    ...profile.conflicts.flatMap((each) => each.between),
    ...(profile.outcomeReasons ?? []),
  ];
}

const key = (reason: Reason) => `${reason.from} ${reason.rule}`;

/** The visit without what a reason is traced to: a whole answer, one part of it, or the observation. */
function without(visit: Visit, from: string): Visit {
  if (from === 'observation') return { ...visit, observation: {} };
  const question = questionOf(from);
  const part = from === question ? undefined : from.slice(question.length + 1);
  const strip = (answer: Answer): Answer | undefined => {
    if (part === undefined) return undefined;
    if (Array.isArray(answer)) return answer.filter((each) => each !== part);
    return typeof answer === 'object'
      ? (Object.fromEntries(Object.entries(answer).filter(([each]) => each !== part)) as Answer)
      : undefined;
  };
  const answers = Object.fromEntries(
    Object.entries(visit.answers).flatMap(([id, answer]) => {
      const left = id === question ? strip(answer) : answer;
      return left === undefined ? [] : [[id, left]];
    }),
  );
  const overrides = visit.overrides.flatMap((each) => {
    const value = each.question === question ? strip(each.value) : each.value;
    return value === undefined ? [] : [{ ...each, value }];
  });
  return { ...visit, answers, overrides };
}

/** What a line-up follows from. */
const lineUpOf = ({ outcome, hold, needs, musts, preferences, split, conflicts, unknown, size }: Profile) => ({
  outcome,
  hold,
  needs,
  musts,
  preferences,
  split,
  conflicts,
  unknown,
  size,
});

/** The laws of a profile, held against one body of knowledge; most of them over so many random visits. */
export function profileLaws(knowledge: Knowledge, numRuns: number): void {
  const runs = { numRuns };
  const moreRuns = { numRuns: 2 * numRuns };

  it('any answers at all come to a profile', () => {
    const word = fc.oneof(
      fc.string(),
      fc.constantFrom('none', 'not-sure', 'constructor', '__proto__', 'mostly', 'heel'),
    );
    const quantity = fc.record({ value: fc.double(), unit: word });
    const mark = fc.record({ when: word, seen: fc.boolean() });
    const anything = fc.oneof(word, fc.array(word), quantity, fc.dictionary(word, word), fc.dictionary(word, mark));
    const ids = [...questionsOf(knowledge.flow).map(({ id }) => id), 'nonsense', 'constructor'];
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...ids), anything), anyVisit(knowledge), (answers, visit) => {
        const mixed = { ...visit, answers: { ...visit.answers, ...answers } } as Visit;
        expect(HOLDS).toContain(profileFor(mixed, knowledge).hold);
      }),
      runs,
    );
  });

  it('the order of the rules does not matter', () => {
    const turned = { ...knowledge, rules: [...knowledge.rules].reverse(), cautions: [...knowledge.cautions].reverse() };
    fc.assert(
      fc.property(anyVisit(knowledge), (visit) => {
        expect(JSON.stringify(profileFor(visit, turned))).toBe(JSON.stringify(profileFor(visit, knowledge)));
      }),
      runs,
    );
  });

  it('every rule said twice says no more', () => {
    const twice = {
      ...knowledge,
      rules: [...knowledge.rules, ...knowledge.rules.map((rule) => ({ ...rule, id: `${rule.id}-zz` }))],
    };
    const plain = (profile: Profile) => profile.needs.map(({ reasons: _, ...need }) => need);
    fc.assert(
      fc.property(anyVisit(knowledge), (visit) => {
        expect(plain(profileFor(visit, twice))).toEqual(plain(profileFor(visit, knowledge)));
      }),
      runs,
    );
  });

  it('answers off the route change nothing', () => {
    fc.assert(
      fc.property(anyAnswers(knowledge), anyAnswers(knowledge), (answers, others) => {
        const counted = answersInPlay(knowledge.flow, answers);
        const asked = inPlay(knowledge.flow, counted);
        const stray = Object.fromEntries(Object.entries(others).filter(([id]) => !asked.includes(id)));
        expect(profileFor(visitOf({ ...stray, ...counted }), knowledge)).toEqual(
          profileFor(visitOf(counted), knowledge),
        );
      }),
      runs,
    );
  });

  it('every reason names an answer or observation that is there, and goes when that goes', () => {
    fc.assert(
      fc.property(anyVisit(knowledge), fc.nat(), (visit, pick) => {
        const reasons = reasonsIn(profileFor(visit, knowledge));
        const own = answersInPlay(knowledge.flow, visit.answers);
        const there = { ...own, ...effectiveAnswers(visit, knowledge.flow) };
        for (const { from } of reasons) {
          if (from === 'observation') expect(Object.keys(visit.observation).length).toBeGreaterThan(0);
          else expect(Object.keys(there)).toContain(questionOf(from));
        }
        const one = reasons[pick % Math.max(1, reasons.length)];
        if (!one) return;
        const left = reasonsIn(profileFor(without(visit, one.from), knowledge)).map(key);
        expect(left).not.toContain(key(one));
      }),
      moreRuns,
    );
  });

  it('every need and every must has a reason', () => {
    fc.assert(
      fc.property(anyVisit(knowledge), (visit) => {
        const profile = profileFor(visit, knowledge);
        for (const part of [profile, ...(profile.split ?? [])]) {
          for (const { reasons } of [...part.needs, ...part.musts]) expect(reasons.length).toBeGreaterThan(0);
        }
      }),
      runs,
    );
  });

  it('signs to act on now or today hold whatever else is answered, changed, cleared or carried', () => {
    const urgent = stopSigns(knowledge, ['now', 'today']);
    expect(urgent.length).toBeGreaterThan(0);
    fc.assert(
      fc.property(anyVisit(knowledge), fc.constantFrom(...urgent), fc.boolean(), (visit, { sign, level }, late) => {
        const signs = visit.answers['signs'];
        const tapped = [...(Array.isArray(signs) ? signs : []), sign];
        const change = { question: 'signs', value: [sign], by: 'Fitter', reason: 'said so late' };
        const signed = late
          ? { ...visit, overrides: [change, ...visit.overrides] }
          : { ...visit, answers: { ...visit.answers, signs: tapped } };
        const profile = profileFor(signed, knowledge);
        expect(HOLDS.indexOf(profile.hold)).toBeGreaterThanOrEqual(HOLDS.indexOf(level));
        expect(profile.outcome).toBe('refer');
      }),
      moreRuns,
    );
  });

  it("no change of a fitter's makes the hold less careful", () => {
    fc.assert(
      fc.property(anyAnswers(knowledge), fc.array(anyOverride(knowledge), { maxLength: 3 }), (answers, overrides) => {
        const before = profileFor(visitOf(answers), knowledge).hold;
        const after = profileFor(visitOf(answers, { overrides }), knowledge).hold;
        // Health may be asked about after all, and an insole found to be an ordinary one; no stop is lifted by it.
        if (before !== 'skipped' && before !== 'measure-first')
          expect(HOLDS.indexOf(after)).toBeGreaterThanOrEqual(HOLDS.indexOf(before));
      }),
      runs,
    );
  });

  it('clearance lifts what stops the choosing and nothing else', () => {
    const clearance = { by: 'Fitter', reason: 'letter from a clinic' };
    fc.assert(
      fc.property(anyVisit(knowledge), (visit) => {
        const { clearance: _, ...uncleared } = visit;
        const before = profileFor(uncleared, knowledge);
        const after = profileFor({ ...visit, clearance }, knowledge);
        if (before.hold === 'before-choosing') expect(['none', 'skipped', 'measure-first']).toContain(after.hold);
        else expect(after.hold).toBe(before.hold);
        expect([after.needs, after.musts]).toEqual([before.needs, before.musts]);
      }),
      runs,
    );
  });

  it('the hold is never less careful than the one that was carried', () => {
    fc.assert(
      fc.property(anyVisit(knowledge), fc.constantFrom(...HOLDS), (visit, hold) => {
        const { clearance: _, ...uncleared } = visit;
        expect(HOLDS.indexOf(profileFor({ ...uncleared, hold }, knowledge).hold)).toBeGreaterThanOrEqual(
          HOLDS.indexOf(hold),
        );
      }),
      runs,
    );
  });

  it('roll seen while moving changes nothing on its own', () => {
    fc.assert(
      fc.property(anyVisit(knowledge), anyRoll, (visit, roll) => {
        const { roll: _, ...unseen } = visit.observation;
        const answers = effectiveAnswers(visit, knowledge.flow);
        const past = answers['past-pairs'];
        const liking = answers['liking'];
        const history = Array.isArray(past) && past.some((each) => each.startsWith('support-h'));
        const wish =
          typeof liking === 'object' &&
          ['more', 'less'].includes(String(Object.entries(liking).find(([id]) => id === 'arch')?.[1]));
        if (history && wish) return;
        const before = lineUpOf(profileFor({ ...visit, observation: unseen }, knowledge));
        expect(lineUpOf(profileFor({ ...visit, observation: { ...unseen, roll } }, knowledge))).toEqual(before);
      }),
      moreRuns,
    );
  });

  it('liking changes no must, no outcome and no hold, and nothing at all before an event', () => {
    const liking = questionsOf(knowledge.flow).find(({ id }) => id === 'liking');
    if (!liking) throw new Error('The flow asks for no liking');
    fc.assert(
      fc.property(anyAnswers(knowledge), anyAnswer(liking, knowledge), (answers, wish) => {
        const { liking: _, 'matters-most': __, ...unasked } = answers;
        const at = (more: object) => profileFor(visitOf({ ...unasked, ...more }), knowledge);
        const [before, after] = [at({}), at({ liking: wish })];
        expect([after.musts, after.outcome, after.hold]).toEqual([before.musts, before.outcome, before.hold]);
        const event = { lately: ['event-four-weeks'] };
        expect(at({ ...event, liking: wish }).needs).toEqual(at(event).needs);
      }),
      runs,
    );
  });

  it('a visit with its changes written into the answers asks for the same pairs', () => {
    fc.assert(
      fc.property(anyVisit(knowledge), (visit) => {
        const { signs: _, ...written } = withOverrides(visit);
        const changes = visit.overrides.filter(({ question }) => question !== 'signs');
        const { signs: __, ...own } = visit.answers;
        const { needs, musts } = profileFor({ ...visit, answers: own, overrides: changes }, knowledge);
        expect(profileFor({ ...visit, answers: written, overrides: [] }, knowledge)).toMatchObject({ needs, musts });
      }),
      runs,
    );
  });
}

/** The signs that alone come to one of these levels, for a grown-up or for a child. */
function stopSigns(knowledge: Knowledge, levels: readonly string[]) {
  const question = questionsOf(knowledge.flow).find(({ kind }) => kind === 'signs');
  const options =
    question?.kind === 'signs' ? question.options.filter((option) => !option.alone && !option.showWhen) : [];
  return options
    .map(({ id }) => ({ sign: id, level: profileFor(visitOf({ signs: [id] }), knowledge).hold }))
    .filter(({ level }) => levels.includes(level));
}

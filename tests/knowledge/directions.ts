import { expect } from 'vitest';
import { attribute } from '../../src/attributes/table.ts';
import type { Answers } from '../../src/flow/answers.ts';
import type { Knowledge } from '../../src/flow/knowledge.ts';
import { answering, lookInto } from './look-into.ts';

/** What each source found, and that the rules resting on it point that way. Figures as in `flows/sources.json`. */
export function directionsOf(
  knowledge: Knowledge,
): Readonly<Record<string, readonly [found: string, check: () => void]>> {
  const { ruleOf, askOf, idealOf, onlySays, levelsOf, saying, needsOf, middleOf } = lookInto(knowledge);
  return {
    'malisoux-2020': [
      'a runner is asked into the softer half, since fewer were hurt there; nothing depends on body mass',
      () => {
        const middle = (1 + 5) / 2;
        expect(idealOf('running-softer', 'cushion')[0]).toBeGreaterThan(middle);
        expect(JSON.stringify(ruleOf('running-softer'))).not.toMatch(/mass|weight-of/);
        expect(middleOf(answering('road-running'), 'cushion')).toBeGreaterThan(
          middleOf(answering('lifting'), 'cushion'),
        );
      },
    ],
    'hoogkamer-2016': [
      'a runner is asked into a lighter shoe than a walker, since mass costs oxygen in running',
      () => {
        expect(middleOf(answering('road-running'), 'mass')).toBeLessThan(
          middleOf(answering('everyday-walking'), 'mass'),
        );
        expect(idealOf('running-light', 'mass')[1]).toBeLessThan((150 + 700) / 2);
      },
    ],
    'malisoux-2016-drop': [
      'all three drops tried, 10, 6 and 0 mm, stay inside the range; only a weak voice leans low for new runners and high for regular ones',
      () => {
        const [low, high] = idealOf('running-drop-open', 'drop');
        for (const tried of [10, 6, 0]) expect(tried >= low && tried <= high).toBe(true);
        expect(idealOf('running-drop-new', 'drop')[1]).toBeLessThan(idealOf('running-drop-regular', 'drop')[0]);
        expect(ruleOf('running-drop-new').grade).toBe('weak');
        expect(ruleOf('running-drop-regular').grade).toBe('weak');
        expect(middleOf(answering('road-running', { lately: ['just-started'] }), 'drop')).toBeLessThan(
          middleOf(answering('road-running', { lately: ['none'] }), 'drop'),
        );
      },
    ],
    'agresta-2022': [
      'a runner is asked for little control of rolling in',
      () => expect(idealOf('running-little-control', 'medial-support')[0]).toBe(0),
    ],
    'lin-2022': [
      'work on the ball of the foot bends the toe joint, so a bendier front is asked, weakly, and somebody with a sore big toe joint is told',
      () => {
        expect(idealOf('forefoot-bend', 'bend')[0]).toBeGreaterThan(3);
        expect(idealOf('forefoot-bend', 'forefoot-stiffness')[1]).toBeLessThan(3);
        expect(ruleOf('forefoot-bend').grade).toBe('weak');
        const sore: Answers = { body: { 'big-toe-joint': { when: 'now', seen: true } } };
        const told = (activity: string) => saying(answering(activity, sore)).cautions.map(({ code }) => code);
        expect(told('rope-skipping')).toContain('toe-joint-bends');
        expect(told('everyday-walking')).not.toContain('toe-joint-bends');
      },
    ],
    'court-shear': [
      'much sideways force asks for firmer hold, more of it the more there is',
      () => {
        expect(idealOf('side-hold', 'midfoot-hold')[0]).toBeGreaterThan(3);
        expect(askOf('side-hold', 'midfoot-hold').per).toBe('load-side-to-side');
      },
    ],
    'sato-2012': [
      'a raised heel helped a squat a little, so a lifter may lean to more drop, weakly',
      () => {
        expect(idealOf('squat-heel', 'drop')[1]).toBeGreaterThan(12);
        expect(ruleOf('squat-heel').grade).toBe('weak');
      },
    ],
    'lu-2022': [
      'the effect of a heel lift is called controversial, so it weighs as contested and asks for no more than the weak one',
      () => {
        expect(ruleOf('squat-heel-disputed').grade).toBe('contested');
        expect(ruleOf('squat-heel-disputed').topic).toBe(ruleOf('squat-heel').topic);
        expect(idealOf('squat-heel-disputed', 'drop')).toEqual(idealOf('squat-heel', 'drop'));
      },
    ],
    'speed-2016': [
      'standing work asks for cushioning, more the longer; walkers are asked by custom, since they were not studied',
      () => {
        expect(idealOf('standing-cushion', 'cushion')[0]).toBeGreaterThanOrEqual(3);
        expect(askOf('standing-cushion', 'cushion').per).toBe('load-time-on-feet');
        const importance = (activity: string) =>
          needsOf(answering(activity)).find((need) => need.attribute === 'cushion')?.importance ?? 0;
        expect(importance('standing-work')).toBeGreaterThan(importance('indoor-cycling'));
        const rests = (activity: string) =>
          needsOf(answering(activity)).flatMap(({ reasons }) => reasons.map(({ rule }) => rule));
        expect(rests('nursing')).toContain('standing-cushion');
        expect(rests('everyday-walking')).not.toContain('standing-cushion');
      },
    ],
    'insole-work-2020': [
      'preference changed over a workday, so comfort is judged again after a shift; soft ends under an insole say nothing of a tall sole',
      () => {
        expect(onlySays('standing-judge-later')).toBe(true);
        expect(saying(answering('nursing')).advice.map(({ code }) => code)).toContain('judge-after-a-day');
        expect(saying(answering('road-running')).advice.map(({ code }) => code)).not.toContain('judge-after-a-day');
      },
    ],
    'waters-2015': [
      'long standing tires, so sitting in turn is advised and no property is asked for',
      () => {
        expect(onlySays('long-hours-change')).toBe(true);
        expect(saying(answering('standing-work')).advice.map(({ code }) => code)).toContain('sit-now-and-then');
      },
    ],
    'menz-2021': [
      'rocker soles felt comfortable, so a walker may have one; a jumper is not asked for it',
      () => {
        expect(idealOf('rolling-comfort', 'rocker')[0]).toBeGreaterThanOrEqual(1);
        expect(needsOf(answering('netball')).some((need) => need.attribute === 'rocker')).toBe(false);
      },
    ],
    'keller-1996': [
      'walking loads far less than running, so a walker needs less against impact',
      () => {
        const impact = (id: string) => knowledge.activities.find((row) => row.id === id)?.loads.impact;
        expect(impact('everyday-walking')?.measured?.value).toBe(1.2);
        expect(impact('road-running')?.measured?.value).toBe(2.5);
        expect(idealOf('walking-little-impact', 'cushion')[0]).toBeLessThan(idealOf('running-softer', 'cushion')[0]);
      },
    ],
    'malisoux-2015': [
      'two pairs in turn went with fewer injuries, observed only: advice that promises nothing',
      () => {
        expect(ruleOf('many-hours').grade).toBe('weak');
        expect(onlySays('many-hours')).toBe(true);
        expect(ruleOf('many-hours').advice).toEqual(['two-pairs-in-turn']);
      },
    ],
    'metatarsal-fracture-2019': [
      'a sudden rise in load is a trigger: go slowly, and one bony sore spot is seen before choosing',
      () => {
        expect(levelsOf('new-to-it')).toEqual(['mind']);
        expect(levelsOf('sign-bone-spot')).toEqual(['before-choosing']);
      },
    ],
    'tessutti-2012': [
      'grass lowers pressure against asphalt, so soft ground needs no softer shoe',
      () => {
        const on = (floor: string) => middleOf(answering('road-running', { floors: { [floor]: 'mostly' } }), 'cushion');
        expect(on('grass')).toBeLessThan(on('asphalt'));
        expect(idealOf('floor-soft', 'cushion')[1]).toBeLessThan(4);
      },
    ],
    'badminton-hall-rule': [
      'halls want non-marking soles, carried in',
      () => {
        const musts = saying(answering('badminton', { floors: { 'hall-vinyl': 'mostly' } })).musts;
        expect(musts.map((must) => must.attribute)).toContain('non-marking');
        expect(levelsOf('rule-indoor-only')).toEqual(['mind']);
      },
    ],
    'athletics-shoe-rules': [
      'the caps are 20 mm on the track and 40 mm on the road',
      () => {
        expect(ruleOf('rule-stack-20').musts).toEqual([{ attribute: 'stack-cap', value: 20 }]);
        expect(ruleOf('rule-stack-40').musts).toEqual([{ attribute: 'stack-cap', value: 40 }]);
      },
    ],
    'lipman-2016': [
      'tape cut blisters, so one blister is first a matter of tape and sock and changes no property',
      () => {
        expect(onlySays('trouble-one-blister')).toBe(true);
        expect(ruleOf('trouble-one-blister').advice).toContain('tape-the-spot');
      },
    ],
    'hagen-2009': [
      'lacing to the top held better, so a slipping heel is first laced, and held a little more, weakly',
      () => {
        expect(ruleOf('trouble-heel-slips').advice?.[0]).toBe('lace-for-hold');
        expect(idealOf('trouble-heel-slips', 'midfoot-hold')[0]).toBeGreaterThan(3);
      },
    ],
    'lacing-pressure-2010': [
      'less pressure on the top felt better, so numb in shoes is first laced looser and given volume',
      () => {
        expect(ruleOf('trouble-numb-in-shoes').advice?.[0]).toBe('loosen-over-the-top');
        expect(askOf('trouble-numb-in-shoes', 'instep-volume').shift).toBeGreaterThan(0);
      },
    ],
    'knapik-2014': [
      'assigning shoes by arch shape made no difference in three military trials, so roll seen alone changes no need',
      () => {
        const answers = answering('road-running', { 'past-pairs': ['none'], liking: {} });
        expect(onlySays('roll-alone')).toBe(true);
        expect(ruleOf('roll-alone').cautions).toEqual(['roll-is-normal']);
        expect(needsOf(answers, 'in')).toEqual(needsOf(answers));
        expect(needsOf(answers, 'out')).toEqual(needsOf(answers));
        const [low, high] = attribute('medial-support').range;
        expect(idealOf('past-support-no-difference', 'medial-support')).toEqual([low, high]);
      },
    ],
    'kinz-2015': [
      'under 10 mm in front of the toes was short, so size comes first; a child gets room',
      () => {
        expect(ruleOf('old-short').when).toMatchObject({ of: 'old-pair-toe-print-gap', upTo: 9.9 });
        expect(ruleOf('old-short').advice).toEqual(['size-first']);
        expect(ruleOf('child-space').advice).toEqual(['room-to-grow']);
      },
    ],
    'ansur-2012': [
      'a foot over one standard deviation wide for its length gets room, one as narrow gets hold',
      () => {
        expect(idealOf('foot-wide', 'toe-box-shape')[0]).toBeGreaterThanOrEqual(2);
        expect(idealOf('foot-narrow', 'toe-box-shape')[1]).toBeLessThanOrEqual(2);
        expect(idealOf('foot-narrow', 'midfoot-hold')[0]).toBeGreaterThan(3);
      },
    ],
    'rearfoot-video-1996': [
      'even clinicians hardly agree by eye, so seeing roll only says so',
      () => {
        expect(onlySays('roll-agreement')).toBe(true);
        expect(ruleOf('roll-agreement').cautions).toEqual(['roll-by-eye']);
      },
    ],
    'malisoux-2016-support': [
      'support helped runners whose feet roll in, in one trial of several: contested, asked only with a history and a wish',
      () => {
        expect(ruleOf('roll-with-history').grade).toBe('contested');
        expect(idealOf('roll-with-history', 'medial-support')[0]).toBeGreaterThanOrEqual(1);
        const answers = answering('road-running', { 'past-pairs': ['support-helped'], liking: { arch: 'more' } });
        const advice = saying(answers, 'in').advice;
        expect(advice.map(({ code }) => code)).toContain('compare-firmer-inner');
      },
    ],
    'buldt-2018': [
      'narrow shoes go with toe trouble, so sore toes get width and depth',
      () => {
        expect(idealOf('body-toes', 'toe-box-shape')[0]).toBeGreaterThanOrEqual(2);
        expect(idealOf('body-toes', 'toe-box-depth')[0]).toBeGreaterThanOrEqual(2);
      },
    ],
    'mundermann-2001': [
      'an insert chosen by comfort went with less pain, so a sore arch is first an insole by comfort, weakly',
      () => {
        expect(ruleOf('body-arch').advice).toEqual(['insole-by-comfort']);
        expect(ruleOf('body-arch').grade).toBe('weak');
      },
    ],
    'nhs-heel-pain': [
      'a sore heel wants a soft sole and a low heel, not flat; pain over two weeks is seen',
      () => {
        expect(idealOf('body-heel', 'cushion')[0]).toBeGreaterThanOrEqual(3);
        expect(idealOf('body-heel', 'drop')[0]).toBeGreaterThan(4);
        const sore = (seen: boolean) =>
          saying(answering('everyday-walking', { body: { heel: { when: 'now', seen } } })).cautions.map((c) => c.code);
        expect(sore(false)).toContain('pain-over-two-weeks');
        expect(sore(true)).not.toContain('pain-over-two-weeks');
      },
    ],
    'mckay-2001': [
      'an old sprain is the best predictor of the next, so it raises the caution on brace and balance',
      () => expect(ruleOf('ankle-history').cautions).toEqual(['brace-and-balance']),
    ],
    'mcguine-2011': [
      'a brace cut ankle injuries to a third, so the brace is named and no collar is',
      () => {
        expect(ruleOf('ankle-brace-works').cautions).toEqual(['brace-and-balance']);
        const sprained = answering('basketball', { ankles: ['over-before'] });
        expect(needsOf(sprained).some((need) => need.attribute === 'collar-height')).toBe(false);
      },
    ],
    'barrett-1993': [
      'high collars did not lower sprains, so after one a wish for a high collar is answered with a caution',
      () => {
        expect(onlySays('ankle-collar')).toBe(true);
        expect(ruleOf('ankle-collar').cautions).toEqual(['collar-after-sprain']);
        const wish = answering('basketball', { ankles: ['over-before'], liking: { collar: 'higher' } });
        expect(saying(wish).cautions.map(({ code }) => code)).toContain('collar-after-sprain');
      },
    ],
    'jiang-2020': [
      'collar height changed no ankle motion, so no rule but a liking asks for one',
      () => {
        const asking = knowledge.rules.filter(({ asks = [] }) => asks.some((ask) => ask.attribute === 'collar-height'));
        expect(ruleOf('ankle-collar-motion').cautions).toEqual(['collar-after-sprain']);
        expect(asking.filter(({ basis, id }) => basis !== 'liking' && id !== 'same-again')).toEqual([]);
      },
    ],
    'menant-2008': [
      'after falls: low heel, firm sole, fastening',
      () => {
        const fell = answering('everyday-walking', { conditions: ['falls-or-unsteady'] });
        const sound = answering('everyday-walking');
        for (const key of ['heel-stack', 'cushion']) expect(middleOf(fell, key)).toBeLessThan(middleOf(sound, key));
        const aged = answering('everyday-walking', { 'age-band': '65-plus' });
        for (const key of ['heel-stack', 'drop']) expect(middleOf(aged, key)).toBeLessThan(middleOf(sound, key));
        expect(levelsOf('pull-on-unsteady')).toEqual(['mind']);
        expect(askOf('older', 'heel-stack').weight).toBeLessThan(askOf('falls', 'heel-stack').weight);
        // A wish for soft is heard, and that it pulls against a steady sole is said.
        const soft = answering('everyday-walking', {
          'now-kind': 'road-tall-soft',
          conditions: ['falls-or-unsteady'],
          liking: { cushion: 'softer' },
        });
        expect(saying(soft).conflicts.map((each) => each.attribute)).toContain('cushion');
      },
    ],
    'schoolchildren-fit-2019': [
      'most children wore shoes too short, so a child is measured and given room',
      () => {
        expect(ruleOf('child').advice).toEqual(['room-to-grow']);
        expect(ruleOf('child').cautions).toEqual(['child-feet-grow']);
      },
    ],
    'segal-2013': [
      'feet grew in pregnancy, so they are measured again',
      () => expect(ruleOf('pregnancy').cautions).toEqual(['measure-again-pregnancy']),
    ],
    'iwgdf-footwear': [
      'fit is judged at the end of the day, so swelling feet are measured late and given room; feet with diabetes get height and width',
      () => {
        expect(idealOf('diabetes-room', 'toe-box-depth')[0]).toBeGreaterThanOrEqual(2);
        expect(ruleOf('swelling').advice).toEqual(['measure-late']);
        expect(idealOf('swelling', 'instep-volume')[0]).toBeGreaterThanOrEqual(2);
      },
    ],
    'iwgdf-2019': [
      'feet at risk are checked by a clinician, so diabetes is told so and stops nobody by itself',
      () => {
        expect(onlySays('diabetes-alone')).toBe(true);
        expect(levelsOf('diabetes-alone')).toEqual(['mind']);
      },
    ],
    'astm-f539': [
      'shoes are fitted in the sock to be worn',
      () => {
        expect(ruleOf('thick-sock').advice).toEqual(['bring-the-sock']);
        expect(idealOf('thick-sock', 'instep-volume')[0]).toBeGreaterThanOrEqual(2);
      },
    ],
    'nhs-leg-clot': [
      'one hot swollen leg is for the same day, with trouble breathing for the emergency number',
      () => {
        expect(levelsOf('sign-hot-leg')).toEqual(['today']);
        expect(levelsOf('sign-breathless')).toEqual(['now']);
      },
    ],
    'bachmann-2003': [
      'no four steps after an injury is for the same day',
      () => expect(levelsOf('sign-four-steps')).toEqual(['today']),
    ],
    'nhs-diabetic-foot': [
      'a wound at risk is for the same day',
      () => expect(levelsOf('sign-sore-at-risk')).toEqual(['today']),
    ],
    'boyd-2015': ['a snap at the heel is for the same day', () => expect(levelsOf('sign-snap')).toEqual(['today'])],
    'iwgdf-2023': [
      'diabetes with lost feeling or an earlier ulcer needs therapeutic footwear, so nothing is chosen here',
      () => {
        expect(levelsOf('sign-numb-diabetes')).toEqual(['before-choosing']);
        expect(levelsOf('sign-diabetes-foot-before')).toEqual(['before-choosing']);
      },
    ],
    'smith-2021': [
      'a return is decided by the ankle and not by weeks, so one that still gives way is seen first',
      () => expect(levelsOf('sign-ankle-still-giving')).toEqual(['before-choosing']),
    ],
  };
}

/** The plan in a few numbers: the verdict, what to buy, what to mix, where to start. */

import { el } from './dom.js';
import { counted, duration, jug, quantity, upTo } from './format.js';

const VERDICTS = {
  holds: ['\u2713', 'The wet edge holds', 'Every edge is met in time, with the reserve.'],
  tight: ['!', 'The wet edge is tight', 'Every edge is met in time, but the reserve is gone.'],
  breaks: ['\u2715', 'The wet edge breaks', 'An edge sets before the next ribbon meets it.'],
};

/** The verdict in a sentence. @param {any} plan */
export function sentence(plan) {
  if (isNothing(plan)) {
    return 'Nothing to pour.';
  }
  const verdict = VERDICTS[plan.pour.verdict]?.[1] ?? plan.pour.verdict;
  return `${counted(plan.quantities.bags.order, 'bag')} to order. ${verdict}.${stopsOf(plan) > 0 ? ' Read the safety notes first.' : ''}`;
}

function isNothing(plan) {
  return plan.pour.batches.length === 0;
}

/** How many notes forbid the work for another reason than the wet edge. */
function stopsOf(plan) {
  return plan.safety.filter((note) => note.severity === 'danger' || note.code.startsWith('do-not-pour')).length;
}

/** @param {any} plan */
export function verdictPart(plan) {
  const [sign, title, meaning] = isNothing(plan)
    ? ['\u2013', 'Nothing to pour', 'The floor stands no lower than the target.']
    : (VERDICTS[plan.pour.verdict] ?? ['?', plan.pour.verdict, '']);
  const stops = stopsOf(plan);
  return el('div', { class: `verdict ${plan.pour.verdict}` },
    el('span', { class: 'sign', 'aria-hidden': 'true' }, sign),
    el('div', {},
      el('h3', {}, title),
      el('p', {}, meaning),
      ...(stops > 0 ? [el('p', { class: 'stops' }, el('a', { href: '#safety-title' }, `Read first: ${counted(stops, 'safety note')} that ${stops === 1 ? 'stops' : 'stop'} the work.`))] : []),
      ...plan.pour.reasons.slice(0, 2).map((reason) => el('p', {}, reason.text))));
}

/** The numbers that matter, as cards. @param {any} plan */
export function numbersPart(plan) {
  const { units, quantities, mix, pour, depth } = plan;
  const { bags } = quantities;
  const people = pour.crew.people;
  const water = mix.needed.waterTemperature;
  return el('dl', { class: 'cards' },
    card('Bags to order', String(bags.order), `likely ${bags.likely}; ${bags.p10} to ${bags.p90} in 8 of 10 floors`),
    card('Mix water', `${jug(units, mix.waterPerBatch)} a batch`,
      `${upTo(units, 'liquid', quantities.mixWater)} in all${water === undefined ? '' : `; at ${quantity(units, 'temperature', water)} the mix comes out as the data sheet has it`}`),
    card('Working time', `${Math.floor(mix.workingTime + 1e-6)} min`,
      `an edge closes for ${Math.floor(mix.healingTime + 1e-6)} min; mix at ${quantity(units, 'temperature', mix.mixTemperature)}`),
    card('Pouring', duration(pour.minutes), `${counted(people, 'person').replace('persons', 'people')}, ${counted(pour.crew.mixers, 'mixer')}`),
    card('Start', pour.bays.length > 0 ? pour.bays[0].id : '\u2013', startText(pour)),
    card('Depth', `${quantity(units, 'height', depth.minimum)} to ${quantity(units, 'height', depth.maximum)}`,
      `mean ${quantity(units, 'height', depth.mean)} on ${quantity(units, 'area', depth.pouredArea)}; ${quantity(units, 'fill', depth.volume)}`),
    card('Primer', upTo(units, 'liquid', quantities.primer.liquid), counted(quantities.primer.coats, 'coat')),
  );
}

function startText(pour) {
  return pour.bays.length > 0
    ? `${counted(pour.bays.length, 'part')}, ${counted(pour.bays.reduce((sum, bay) => sum + bay.ribbons.length, 0), 'ribbon')}, toward the way out`
    : 'nothing to pour';
}

function card(name, value, more) {
  return el('div', { class: 'card' }, el('dt', {}, name), el('dd', { class: 'value' }, value), el('dd', { class: 'more' }, more));
}

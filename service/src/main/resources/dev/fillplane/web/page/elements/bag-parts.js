/** What the element is made of: its fields, its result, its looks. */

const NAMES = {
  metric: { area: 'm\u00b2', height: 'mm', liquid: 'L', mass: 'kg' },
  us: { area: 'ft\u00b2', height: 'in', liquid: 'qt', mass: 'lb' },
};

const LOOKS = `
:host { display: block; max-width: 26rem; font: 1rem/1.4 var(--fillplane-font, Arial, Helvetica, sans-serif);
  color: var(--fillplane-ink, #17160f); background: var(--fillplane-paper, #fff);
  border: 1px solid var(--fillplane-line, #85806f); border-radius: var(--fillplane-corner, 2px); padding: 1rem; }
:host([hidden]), [hidden] { display: none; }
form { display: grid; grid-template-columns: 1fr 1fr; gap: .6rem .8rem; }
.wide { grid-column: 1 / -1; }
label { display: block; font-size: .875rem; }
input, select { box-sizing: border-box; width: 100%; min-height: 2.6rem; font: inherit; font-size: 1rem; padding: .3rem .5rem;
  color: inherit; background: var(--fillplane-field, #fff); border: 1px solid var(--fillplane-line, #85806f);
  border-radius: var(--fillplane-corner, 2px); }
:focus-visible { outline: 3px solid var(--fillplane-accent, #1f4f79); outline-offset: 2px; }
[aria-invalid] { border: 2px solid var(--fillplane-wrong, #9b1c1c); }
#result { margin-top: .8rem; border-top: 2px solid var(--fillplane-accent, #1f4f79); padding-top: .6rem; min-height: 6rem; }
p { margin: 0 0 .3rem; }
.order { font-size: 1.6rem; font-weight: bold; color: var(--fillplane-accent, #1f4f79); }
.wrong { color: var(--fillplane-wrong, #9b1c1c); }
.small { font-size: .8125rem; }
`;

/** @returns {CSSStyleSheet} */
export function sheet() {
  const looks = new CSSStyleSheet();
  looks.replaceSync(LOOKS);
  return looks;
}

/** The form and the place of the result. @returns {Node[]} */
export function formParts() {
  const heading = document.createElement('slot');
  heading.name = 'heading';
  const form = make('form', { 'aria-label': 'Bags for an area', novalidate: '' },
    labelled('area', 'Area, ', 'area', 'wide'),
    labelled('from', 'Filled from, ', 'height'),
    labelled('to', 'to, ', 'height'),
    make('label', { class: 'wide', id: 'materials' }, 'Material', make('select', { id: 'material' })),
    make('label', { class: 'wide' }, 'Base absorbs', choice()));
  return [heading, form, make('div', { id: 'result', role: 'status', part: 'result' })];
}

function choice() {
  const select = make('select', { id: 'absorbency' });
  select.append(new Option('normally', ''), new Option('little (dense base)', 'low'), new Option('much (thirsty base)', 'high'));
  return select;
}

function labelled(id, text, dimension, look = '') {
  return make('label', { class: look }, text, make('span', { 'data-unit': dimension }),
    make('input', { id, inputmode: 'decimal', autocomplete: 'off' }));
}

/** @param {ShadowRoot} root @param {'metric' | 'us'} units */
export function showUnits(root, units) {
  for (const unit of /** @type {NodeListOf<HTMLElement>} */ (root.querySelectorAll('[data-unit]'))) {
    unit.textContent = NAMES[units][unit.dataset.unit ?? ''];
  }
}

/** What an area takes, in words. @param {any} answer @returns {Node[]} */
export function resultParts({ units, bags, mixWater, primer, mass, warnings }) {
  const upTo = (value) => Math.ceil(value - 1e-6).toLocaleString('en');
  const { liquid, mass: weight } = NAMES[units];
  const coats = primer.coats === 1 ? '1 coat' : `${primer.coats} coats`;
  return [
    make('p', { class: 'order', part: 'order' }, `${bags.order} ${bags.order === 1 ? 'bag' : 'bags'}`),
    make('p', {}, `likely ${bags.likely}; ${bags.p10} to ${bags.p90} in 8 of 10 floors`),
    make('p', {}, `${upTo(mixWater)} ${liquid} mix water, ${upTo(primer.liquid)} ${liquid} primer in ${coats}, ${Math.round(mass).toLocaleString('en')} ${weight} to carry`),
    ...warnings.map(({ detail }) => make('p', { class: 'small' }, detail)),
    make('p', { class: 'small' }, 'An estimate. Readings of the floor tell more; the data sheet decides.'),
  ];
}

function make(tag, attributes, ...children) {
  const element = document.createElement(tag);
  Object.entries(attributes).forEach(([name, value]) => element.setAttribute(name, value));
  element.append(...children);
  return element;
}

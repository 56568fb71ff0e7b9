/** Numbers for people, in the units of the request. */

const NAMES = {
  metric: {
    plan: 'm', height: 'mm', area: 'm\u00b2', fill: 'L', liquid: 'L', mass: 'kg',
    coverage: 'm\u00b2/L', temperature: '\u00b0C', time: 'min', airspeed: 'km/h', slope: 'mm/m',
  },
  us: {
    plan: 'ft', height: 'in', area: 'ft\u00b2', fill: 'ft\u00b3', liquid: 'qt', mass: 'lb',
    coverage: 'ft\u00b2/gal', temperature: '\u00b0F', time: 'min', airspeed: 'mi/h', slope: 'in/ft',
  },
};

const DIGITS = {
  metric: { plan: 1, height: 0, area: 1, fill: 0, liquid: 1, mass: 0, temperature: 0, time: 0 },
  us: { plan: 1, area: 0, fill: 1, liquid: 2, mass: 0, temperature: 0, time: 0 },
};

/** Marks of a jug, from coarse to fine: of a litre; a cup, half a cup and a fluid ounce of a quart. */
const JUG_MARKS = { metric: [0.1, 0.05, 0.01], us: [0.25, 0.125, 0.03125] };

/** From here on a digit behind the point tells nothing. */
const LARGE = 100;

/** @param {string} units @param {string} dimension */
export function unitName(units, dimension) {
  return NAMES[units][dimension] ?? '';
}

/**
 * A quantity with its unit, rounded as the trade reads it; inches to a sixteenth.
 * @param {string} units
 * @param {string} dimension
 * @param {number} value
 */
export function quantity(units, dimension, value) {
  const usual = value >= LARGE ? 0 : DIGITS[units][dimension];
  // A little is not nothing.
  const digits = value > 0 && value < 0.5 / 10 ** usual ? usual + 1 : usual;
  const number = units === 'us' && dimension === 'height' ? sixteenths(value) : fixed(value, digits);
  return `${number}\u00a0${unitName(units, dimension)}`;
}

/**
 * What must be enough, up to the next whole unit, as on the pour sheet.
 * @param {string} units
 * @param {string} dimension
 * @param {number} value
 */
export function upTo(units, dimension, value) {
  return `${fixed(Math.ceil(value - 1e-6), 0)}\u00a0${unitName(units, dimension)}`;
}

/**
 * Water to a mark of a measuring jug, as on the pour sheet: the coarsest that is off by 1 % at most.
 * @param {string} units
 * @param {number} volume
 */
export function jug(units, volume) {
  const filled = JUG_MARKS[units].map((mark) => Math.round(volume / mark) * mark);
  const best = filled.find((value) => Math.abs(value - volume) <= 0.01 * volume) ?? filled[filled.length - 1];
  const text = best.toLocaleString('en', { minimumFractionDigits: 1, maximumFractionDigits: 5 });
  return `${text}\u00a0${unitName(units, 'liquid')}`;
}

/** @param {number} value @param {number} [digits] */
export function fixed(value, digits = 1) {
  const text = value.toLocaleString('en', { maximumFractionDigits: digits, useGrouping: true });
  return text === '-0' ? '0' : text;
}

/** 2.41 as "2 3/8", the nearest sixteenth in its lowest terms. @param {number} inches */
function sixteenths(inches) {
  const all = Math.round(Math.abs(inches) * 16);
  const sign = inches < 0 && all > 0 ? '-' : '';
  const whole = Math.floor(all / 16);
  let over = all % 16;
  let under = 16;
  while (over > 0 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  if (over === 0) {
    return sign + whole;
  }
  return `${sign}${whole > 0 ? `${whole} ` : ''}${over}/${under}`;
}

/** 1 bag, 2 bags. @param {number} count @param {string} noun */
export function counted(count, noun) {
  return `${fixed(count, 0)} ${noun}${count === 1 ? '' : noun.endsWith('ch') ? 'es' : 's'}`;
}

/** Minutes as "3 h 50 min". @param {number} minutes */
export function duration(minutes) {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / 60);
  return hours === 0 ? `${whole}\u00a0min` : `${hours}\u00a0h ${whole % 60}\u00a0min`;
}

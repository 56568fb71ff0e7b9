/** Numbers as people type them, and the same quantity in other units. */

const NUMBER = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/;
const THOUSANDS = /^[+-]?\d{1,3}(,\d{3})+(\.\d+)?$/;
const FRACTION = /^([+-]?)(?:(\d+)[ -]+)?(\d+)\/(\d+)$/;

const FOOT = 0.3048;
const INCH = 25.4;
const POUND = 0.45359237;
const CUBIC_FOOT = 28.316846592;
const QUART = 0.946352946;
const SQUARE_FOOT = FOOT * FOOT;

/** How many metric units one US unit is; exact by definition (NIST SP 811). */
const METRIC_PER_US = {
  plan: FOOT,
  height: INCH,
  heightVariance: INCH * INCH,
  slope: INCH / FOOT,
  area: SQUARE_FOOT,
  fill: CUBIC_FOOT,
  fillPrice: 1 / CUBIC_FOOT,
  liquid: QUART,
  coverage: SQUARE_FOOT / (4 * QUART),
  mass: POUND,
  density: (POUND * 1000) / CUBIC_FOOT,
  temperatureDifference: 5 / 9,
  airspeed: 1.609344,
  surfaceLoad: (POUND * 9.80665) / SQUARE_FOOT / 1000,
};

/** What was typed before its units were changed, to come back to that and not to a rounded value. */
const earlier = new WeakMap();

/**
 * A number as people type it: a decimal point or comma, in US units also 2 3/8.
 * @param {string} text
 * @param {string} units
 */
export function readNumber(text, units) {
  const plain = text.trim().replace(/\u2212/g, '-').replace(/["\u2033]$/, '').trim();
  if (THOUSANDS.test(plain)) {
    throw new Error('Leave out the comma between thousands, or write a decimal point.');
  }
  if (NUMBER.test(plain)) {
    return Number(plain.replace(',', '.'));
  }
  const [, sign, whole, over, under] = (units === 'us' && plain.match(FRACTION)) || [];
  if (over !== undefined && Number(under) > 0) {
    return (sign === '-' ? -1 : 1) * (Number(whole ?? 0) + Number(over) / Number(under));
  }
  throw new Error(
    units === 'us'
      ? 'Type a number, such as 12.5 or 2 3/8.'
      : 'Type a number, such as 12.5, without its unit.',
  );
}

/**
 * A value of one dimension in the other units; there and back again gives the same number.
 * @param {string} dimension
 * @param {number} value
 * @param {string} to metric or us
 */
export function convert(dimension, value, to) {
  const factor = METRIC_PER_US[dimension];
  const converted =
    dimension === 'temperature'
      ? to === 'us' ? value * 1.8 + 32 : (value - 32) / 1.8
      : to === 'us' ? value / factor : value * factor;
  return Number(converted.toPrecision(10));
}

/**
 * Converts what is typed in a field, to four digits; what is no number stays as it is.
 * @param {{ value: string }} field
 * @param {string} dimension
 * @param {string} to metric or us
 */
export function convertField(field, dimension, to) {
  const typed = field.value;
  const { text, shown } = earlier.get(field) ?? {};
  field.value = typed === shown ? text : converted(dimension, typed, to);
  earlier.set(field, { text: typed, shown: field.value });
}

function converted(dimension, text, to) {
  try {
    const value = readNumber(text, to === 'us' ? 'metric' : 'us');
    return String(Number(convert(dimension, value, to).toPrecision(4)));
  } catch {
    return text;
  }
}

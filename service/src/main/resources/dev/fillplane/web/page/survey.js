/** What a survey holds, whichever way it was told. */

/** @typedef {import('./store.js').Store} Store */

/** Every point of a survey with a place. @param {any} survey @returns {any[]} */
export function pointsOf(survey) {
  return rowsOf(survey).filter((point) => point.x !== undefined && point.y !== undefined);
}

/** Adds a reading to the last position of the laser. @param {Store} store @param {any} reading */
export function addReading(store, reading) {
  store.change(({ survey }) => {
    const point = nextName(survey);
    if (survey.elevations) {
      const { reading: elevation, ...place } = reading;
      survey.elevations.push({ point, ...place, elevation });
      return;
    }
    const setups = (survey.setups ??= [{ id: 'A', readings: [] }]);
    const { readings } = setups[setups.length - 1];
    readings.splice(toldRows(readings).length, Infinity, { point, ...reading });
  });
}

/** A name that no point has yet. @param {any} survey */
export function nextName(survey) {
  const taken = new Set(rowsOf(survey).map(({ point }) => point));
  let i = taken.size + 1;
  while (taken.has(String(i))) {
    i++;
  }
  return String(i);
}

/** A name that no position of the laser has yet: A, B ... @param {any[]} setups */
export function nextSetup(setups) {
  const taken = setups.map(({ id }) => id);
  const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
  return letters.find((letter) => !taken.includes(letter)) ?? `position ${setups.length + 1}`;
}

/** How many points have a reading. @param {any} survey */
export function countOf(survey) {
  return toldRows(rowsOf(survey)).length + (survey.table?.values.length ?? 0);
}

/**
 * A request without what is only begun: last rows that say no reading yet, last positions without
 * rows. What stands before them keeps its place, so that a finding of the service meets its row.
 * @param {any} request
 */
export function withoutBegun(request) {
  const { survey } = request;
  const { setups, elevations } = survey;
  if (elevations) {
    return { ...request, survey: { ...survey, elevations: toldRows(elevations) } };
  }
  if (!setups) {
    return request;
  }
  const told = setups.map((setup) => ({ ...setup, readings: toldRows(setup.readings) }));
  return { ...request, survey: { ...survey, setups: upToLast(told, ({ readings }) => readings.length > 0) } };
}

function rowsOf({ setups = [], elevations }) {
  return elevations ?? setups.flatMap((setup) => setup.readings);
}

function toldRows(rows) {
  return upToLast(rows, (row) => (row.reading ?? row.elevation) !== undefined);
}

function upToLast(list, isTold) {
  return list.slice(0, list.findLastIndex(isTold) + 1);
}

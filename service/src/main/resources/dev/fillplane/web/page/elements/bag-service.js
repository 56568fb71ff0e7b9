/** Asks the service, which may be on another host than the page. */

/** Pointers of a refusal to the fields of the form. */
const FIELDS = { '#/area': 'area', '#/thickness': 'from', '#/thicknessRange/from': 'from', '#/thicknessRange/to': 'to' };

/** @typedef {{ at: string, key: string | null }} Service */

/** @param {Service} service @param {unknown} ask @param {AbortSignal} signal */
export async function countBags(service, ask, signal) {
  return call(service, 'v1/bag-counts', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(ask),
    signal,
  });
}

/** @param {Service} service @param {string} units @returns {Promise<{ id: string }[]>} */
export async function materials(service, units) {
  return (await call(service, `v1/materials?units=${units}`, {})).items;
}

/** An address with or without its last slash, also of a service below a path of a host. */
function folder(at) {
  return new URL(at.endsWith('/') ? at : `${at}/`, document.baseURI);
}

async function call(service, path, init) {
  const key = service.key ? { Authorization: `Bearer ${service.key}` } : {};
  let answer;
  try {
    answer = await fetch(new URL(path, folder(service.at)), { ...init, headers: { ...init.headers, ...key }, credentials: 'omit' });
  } catch (error) {
    throw error.name === 'AbortError' ? error : new Error('The calculator is not to be reached just now.');
  }
  if (answer.ok) {
    return answer.json();
  }
  const problem = await answer.json().catch(() => ({}));
  const [first] = problem.errors ?? [];
  const wrong = new Error(first?.detail ?? problem.detail ?? 'The calculator does not answer just now.');
  throw Object.assign(wrong, { field: FIELDS[first?.pointer] });
}

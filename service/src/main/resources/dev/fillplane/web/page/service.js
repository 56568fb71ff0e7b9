/** Talks to the service that this page came from, wherever that is: paths are below its folder. */

/** @typedef {{ code: string, pointer: string, detail: string }} Finding */

/** What the service refused, with its findings. */
export class Refused extends Error {
  /** @param {any} problem a problem document (RFC 9457) */
  constructor(problem) {
    super([problem.title, problem.detail].filter(Boolean).join(': '));
    /** @type {Finding[]} */
    this.findings = problem.errors ?? [];
    /** @type {number} */
    this.more = problem.more ?? 0;
    /** @type {number} */
    this.status = problem.status;
  }
}

const KEPT = 'What you typed is still here.';
const HOME = new URL('..', import.meta.url);

/** The key that the service asks for where it does not run on this machine; never stored. */
let key = '';

/** @param {string} value */
export function useKey(value) {
  key = value.trim();
}

/**
 * Posts a request and gives the answer.
 * @param {string} path
 * @param {unknown} request
 * @param {AbortSignal} [signal]
 * @returns {Promise<Response>}
 */
export function post(path, request, signal) {
  return send(path, { method: 'POST', body: JSON.stringify(request), signal }, 'application/json');
}

/** @param {string} path @param {string} text */
export function postTable(path, text) {
  return send(path, { method: 'POST', body: text }, 'text/csv');
}

/** @param {string} path */
export async function get(path) {
  return (await send(path, {})).json();
}

async function send(path, init, type) {
  const headers = type ? { 'Content-Type': type } : {};
  if (key) {
    headers.Authorization = `Bearer ${key}`;
  }
  let answer;
  try {
    answer = await fetch(new URL(path, HOME), { ...init, headers });
  } catch (error) {
    throw error.name === 'AbortError' ? error : new Error(`${away()} ${KEPT}`);
  }
  if (!answer.ok) {
    throw new Refused(await problem(answer));
  }
  return answer;
}

function away() {
  return navigator.onLine
    ? 'The service does not answer. Is it running, and is this device connected to it?'
    : 'This device is offline.';
}

/** A problem document, also where it is not the service that answers, but what stands before it. */
async function problem(answer) {
  const { status } = answer;
  const told = await answer.json().catch(() => ({}));
  const detail = told.detail ?? `What stands at its address answered with status ${status}. Try again in a moment.`;
  return { title: 'The service cannot answer now', ...told, status, detail: status >= 500 ? `${detail} ${KEPT}` : detail };
}

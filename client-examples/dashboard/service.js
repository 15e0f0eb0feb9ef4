// Calls to the service.

/** Where the service is: as the address says (?service=http://…), or where this page comes from. It is quoted in commands. */
export const address = new URL(
  new URLSearchParams(location.search).get('service') ?? '..',
  document.baseURI,
).href.replace(/\/*$/, '').replaceAll("'", '%27');

const LONGEST_WAIT_S = 10;

/** A call that was answered, but not with what was asked for. */
export class Refused extends Error {
  constructor(problem) {
    super(problem.detail ?? problem.title);
    this.problem = problem;
  }
}

/** Asks, comes back when the service is busy, and throws a Refused for a problem. */
export async function ask(path, options = {}) {
  for (;;) {
    const response = await fetch(address + path, options);
    if (response.ok) {
      return response;
    }
    if (response.status !== 503) {
      throw new Refused(await problem(response));
    }
    const wait = Math.min(Number(response.headers.get('Retry-After') ?? 1), LONGEST_WAIT_S);
    await pause(1000 * wait, options.signal);
  }
}

export async function json(path, options) {
  return (await ask(path, options)).json();
}

/** The options of a POST. */
export function posting(request, accept, signal) {
  return {
    method: 'POST',
    headers: { 'Content-Type': 'application/json', Accept: accept },
    body: JSON.stringify(request),
    signal,
  };
}

async function problem(response) {
  const fallback = { status: response.status, title: `The service answers ${response.status}` };
  try {
    return { ...fallback, ...(await response.json()) };
  } catch {
    return fallback;
  }
}

function pause(milliseconds, signal) {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(resolve, milliseconds);
    signal?.addEventListener('abort', () => {
      clearTimeout(timer);
      reject(signal.reason);
    });
  });
}

// The draft that the browser keeps: closing the page, or losing the service, loses nothing.

const KEY = 'trestle-aircraft';

/** The aircraft as it was left, or undefined; a browser that keeps nothing has none. */
export function kept() {
  try {
    const document = JSON.parse(localStorage.getItem(KEY) ?? 'null');
    return typeof document === 'object' && document !== null && !Array.isArray(document) ? document : undefined;
  } catch {
    return undefined;
  }
}

/** Keeps an aircraft; false where the browser does not. */
export function keep(document) {
  try {
    localStorage.setItem(KEY, JSON.stringify(document));
    return true;
  } catch {
    return false;
  }
}

/** Calls when another page of this browser has kept another aircraft. */
export function whenKeptElsewhere(tell) {
  window.addEventListener('storage', ({ key }) => {
    if (key === KEY) {
      tell();
    }
  });
}

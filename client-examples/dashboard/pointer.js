// JSON Pointers (RFC 6901) into plain values.

/** The names along a pointer. */
export function names(pointer) {
  return pointer === ''
    ? []
    : pointer.slice(1).split('/').map((name) => name.replaceAll('~1', '/').replaceAll('~0', '~'));
}

/** The pointer to a child. */
export function child(pointer, name) {
  return `${pointer}/${String(name).replaceAll('~', '~0').replaceAll('/', '~1')}`;
}

/** The pointer to what holds this; none above the whole. */
export function parent(pointer) {
  return pointer === '' ? undefined : pointer.slice(0, pointer.lastIndexOf('/'));
}

/** The last name of a pointer. */
export function last(pointer) {
  return names(pointer).at(-1);
}

/** What a pointer points to, or undefined. */
export function get(whole, pointer) {
  return names(pointer).reduce(
    (value, name) => (value !== null && typeof value === 'object' && Object.hasOwn(value, name) ? value[name] : undefined),
    whole,
  );
}

/** Puts a value in place, and makes what is to hold it. */
export function put(whole, pointer, value) {
  const path = names(pointer);
  path.reduce((holder, name, step) => {
    const isLast = step === path.length - 1;
    if (isLast || !Object.hasOwn(holder, name) || holder[name] === null) {
      const made = isLast ? value : /^\d+$/.test(path[step + 1]) ? [] : {};
      Object.defineProperty(holder, name, { value: made, writable: true, enumerable: true, configurable: true });
    }
    return holder[name];
  }, whole);
}

/** Takes a value out; the rest of a list moves up. */
export function remove(whole, pointer) {
  const holder = get(whole, parent(pointer));
  const name = last(pointer);
  if (Array.isArray(holder)) {
    holder.splice(Number(name), 1);
  } else if (holder !== undefined) {
    delete holder[name];
  }
}

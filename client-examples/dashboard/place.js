// Places in a document, in the words of its form.

import { names } from './pointer.js';
import { label } from './words.js';

/** A pointer in the words of the form, with the names of entries: "Packs, 2 · aft pack, Series". */
export function placeName(at, whole) {
  if (at === '') {
    return 'The whole document';
  }
  let value = whole;
  return names(at)
    .map((name) => {
      const isEntry = Array.isArray(value);
      value = value?.[name];
      if (!isEntry) {
        return label(name);
      }
      const called = value?.name ?? value?.run ?? value?.kind;
      return typeof called === 'string' ? called : `number ${Number(name) + 1}`;
    })
    .join(' › ');
}

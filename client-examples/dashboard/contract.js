// The OpenAPI document of the service: what a request may hold.

import { names } from './pointer.js';
import { plain, shown } from './words.js';

/** A range is said in full. */
const MOST_DIGITS = 9;

export class Contract {
  #document;

  constructor(openapi) {
    this.#document = openapi;
  }

  /** The schema of the JSON body of a POST. */
  request(path) {
    return this.resolved(this.#document.paths[path].post.requestBody.content['application/json'].schema);
  }

  /** A schema, its reference followed. */
  resolved(schema) {
    let found = schema;
    while (found?.$ref !== undefined) {
      found = names(found.$ref.slice(1)).reduce((part, name) => part[name], this.#document);
    }
    return found;
  }

  /** The schema of a field of a request, or undefined where the contract knows none. */
  field(root, pointer) {
    return names(pointer).reduce((schema, name) => {
      const here = this.resolved(schema);
      return here === undefined ? undefined : this.resolved(here.type === 'array' ? here.items : here.properties?.[name]);
    }, root);
  }

  /** The least that the service can find fault with: required groups and lists, and no invented number. */
  blank(schema) {
    const here = this.resolved(schema);
    if (here.type === 'array') {
      return here.minItems > 0 ? [this.blank(here.items)] : [];
    }
    if (here.type !== 'object') {
      return here.default;
    }
    const made = {};
    for (const name of here.required ?? []) {
      const value = this.blank(here.properties[name]);
      if (value !== undefined) {
        made[name] = value;
      }
    }
    return made;
  }
}

/** Whether a schema is filled in by one control. */
export function isScalar(schema) {
  return schema.type !== 'object' && schema.type !== 'array';
}

/** The range of a number and its default, in words. */
export function bounds(schema, unit) {
  const said = [];
  const written = (value) => (typeof value === 'number' ? shown(value, MOST_DIGITS) : plain(value));
  const measured = (value) => (unit === '' ? written(value) : `${written(value)} ${unit}`);
  if (schema.minimum !== undefined && schema.maximum !== undefined) {
    said.push(`${schema.exclusiveMinimum === true ? 'Above ' : ''}${written(schema.minimum)} to ${measured(schema.maximum)}.`);
  }
  if (schema.maxItems !== undefined) {
    said.push(`At most ${schema.maxItems}.`);
  }
  if (schema.default !== undefined) {
    said.push(`Without it: ${measured(schema.default)}.`);
  }
  return said.join(' ');
}

// The first facts: what a builder knows before anything is built. All else is estimated from them, and refined in the form.

import { bounds } from './contract.js';
import { element, shape } from './dom.js';
import { get, last } from './pointer.js';
import { count, numberOrText, plain, prose, textOrNothing, unit, wrong } from './words.js';

const CELL = '/packs/0/cell';
const CAPACITY = `${CELL}/capacity_ah`;

/** Kinds of cell as they are bought; a pouch has no usual capacity. */
const CELLS = [
  { text: '21700 cylinder, for energy', cell: { kind: 'energy', format: '21700' } },
  { text: '21700 cylinder, for power', cell: { kind: 'power', format: '21700' } },
  { text: '18650 cylinder, for energy', cell: { kind: 'energy', format: '18650' } },
  { text: '18650 cylinder, for power', cell: { kind: 'power', format: '18650' } },
  { text: '26650 iron phosphate, for power', cell: { kind: 'lfp_power', format: '26650' } },
  { text: 'lithium polymer pouch', cell: { kind: 'pouch', format: 'pouch' } },
];

/** At most ten, and the capacity of a pouch. */
const FACTS = [
  { at: '/airframe/kind', name: 'How it is built' },
  { at: '/airframe/wing/span_mm', name: 'Span' },
  { at: '/airframe/wing/mean_chord_mm', name: 'Mean chord', say: 'Wing area over span.' },
  { at: '/airframe/takeoff_mass_g', name: 'Take-off mass' },
  { at: '/packs/0/layout', name: 'Pack, as 7s3p' },
  { at: CELL, name: 'Its cells' },
  { at: CAPACITY, name: 'Capacity of a cell', only: isPouch },
  { at: '/propulsion/propeller/size', name: 'Propeller, as 15x8', say: 'Diameter by pitch, inches.' },
  { at: '/propulsion/motor/speed_constant_rpm_per_v', name: 'Speed constant of the motor', say: 'On its label, often as KV.' },
  { at: '/propulsion/motor_count', name: 'Motors', optional: true },
  { at: '/flight/airspeed_m_per_s', name: 'Flying speed' },
];

export class Begin {
  #root;
  #store;
  #contract;
  #schema;
  #faults = new Map();

  constructor(root, store, contract, schema) {
    this.#root = root;
    this.#store = store;
    this.#contract = contract;
    this.#schema = schema;
  }

  /** Draws the facts of the document as it is. */
  draw() {
    this.#faults.clear();
    this.#root.replaceChildren(...FACTS.filter(({ only }) => only?.(this.#store.document) ?? true).map((fact, index) => this.#field(fact, index)));
  }

  /** The names of what still has to be told, in the order of the page. */
  missing(document = this.#store.document) {
    return FACTS.filter(({ at, only, optional }) => !optional && (only?.(document) ?? true) && isEmpty(get(document, at))).map(({ name }) => name);
  }

  /** Writes faults at their facts. */
  note(faults) {
    for (const [at, { lines, control }] of this.#faults) {
      const mine = faults.filter((fault) => fault.at === at || (at === CELL && fault.at.startsWith(CELL) && fault.at !== CAPACITY));
      lines.replaceChildren(...mine.map((fault) => element('p', {}, shape('fault'), ` ${wrong(fault)}`)));
      control.removeAttribute('aria-invalid');
      if (mine.length > 0) {
        control.setAttribute('aria-invalid', 'true');
      }
    }
  }

  focus() {
    this.#root.querySelector('select, input')?.focus({ preventScroll: true });
  }

  #field(fact, index) {
    const { at, name, say } = fact;
    const schema = this.#contract.field(this.#schema, at);
    const id = `fact-${index}`;
    const lines = element('div', { class: 'faults', id: `${id}-faults` });
    const control = at === CELL ? this.#cells() : this.#control(at, schema);
    control.id = id;
    control.setAttribute('aria-describedby', `${id}-faults ${id}-help`);
    this.#faults.set(at, { lines, control });
    const unitText = unit(last(at));
    const help = [say, at === CELL || schema.enum !== undefined ? undefined : bounds(schema, unitText)].filter((part) => part).join(' ');
    return element(
      'div',
      { class: 'field fact', 'data-at': at },
      element('div', { class: 'label' }, element('label', { for: id }, name, unitText === '' ? undefined : element('span', { class: 'unseen' }, `, ${unitText}`))),
      element('div', { class: 'control' }, control, unitText === '' ? undefined : element('span', { class: 'unit', 'aria-hidden': 'true' }, unitText)),
      lines,
      element('p', { class: 'about', id: `${id}-help` }, help),
    );
  }

  #control(at, schema) {
    const value = get(this.#store.document, at);
    if (schema.enum !== undefined) {
      return element(
        'select',
        { change: (event) => this.#store.edit(at, textOrNothing(event.target.value)) },
        element('option', { value: '' }, 'choose'),
        ...schema.enum.map((word) => element('option', { value: word, selected: word === value, title: prose(schema.description ?? '') }, plain(word))),
      );
    }
    const isNumber = schema.type === 'number' || schema.type === 'integer';
    return element('input', {
      type: 'text',
      value: isEmpty(value) ? undefined : String(value),
      placeholder: schema.default === undefined ? undefined : String(schema.default),
      inputmode: isNumber ? 'decimal' : undefined,
      autocomplete: 'off',
      spellcheck: 'false',
      input: (event) => this.#store.edit(at, isNumber ? numberOrText(event.target.value) : textOrNothing(event.target.value.trim())),
    });
  }

  #cells() {
    const now = get(this.#store.document, CELL);
    const isNow = ({ cell }) => now?.kind === cell.kind && now?.format === cell.format;
    return element(
      'select',
      {
        change: (event) => {
          const chosen = CELLS[Number(event.target.value)];
          this.#store.edit(CELL, chosen === undefined ? undefined : { ...chosen.cell });
          this.#redrawAt(CELL);
        },
      },
      element('option', { value: '' }, 'choose'),
      ...CELLS.map((known, index) => element('option', { value: String(index), selected: isNow(known) }, known.text)),
    );
  }

  /** Another kind of cell may ask for its capacity. */
  #redrawAt(at) {
    this.draw();
    this.#faults.get(at).control.focus({ preventScroll: true });
  }
}

/** Whether a document can be told by its first facts: with items or panels they would contradict what it says already. */
export function isFirstFacts(document) {
  return get(document, '/items') === undefined && get(document, '/airframe/wing/panels') === undefined && (get(document, '/packs')?.length ?? 0) < 2;
}

/** What is to be told yet, in words. */
export function toGo(missing) {
  return `${count(missing.length, 'fact')} to go: ${missing.map((name) => name.replace(/,.*/, '').toLowerCase()).join(', ')}`;
}

function isPouch(document) {
  return get(document, `${CELL}/kind`) === 'pouch';
}

function isEmpty(value) {
  return value === undefined || value === null || value === '';
}

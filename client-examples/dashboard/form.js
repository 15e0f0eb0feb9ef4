// The form: drawn from the schema and the document, so that a new field of the contract needs no line here.

import { bounds, isScalar } from './contract.js';
import { element, mark, shape } from './dom.js';
import { child, get, last, names, parent } from './pointer.js';
import { count, label, numberOrText, plain, prose, shown, textOrNothing, unit, wrong } from './words.js';

/** Fields that an entry of a list is called by. */
const NAMING = ['name', 'run', 'kind', 'carries'];

export class Form extends EventTarget {
  #root;
  #store;
  #contract;
  #schema;
  /** Optional fields that were asked for and are still empty. */
  #asked = new Set();
  /** What the service put where the document says nothing, by pointer. */
  #estimates = new Map();
  #open;
  /** What is drawn: pointer to element, and to the place for marks and faults. */
  #drawn = new Map();
  #titles = new Map();
  #ids = 0;

  constructor(root, store, contract, schema, open) {
    super();
    this.#root = root;
    this.#store = store;
    this.#contract = contract;
    this.#schema = schema;
    this.#open = new Set(open);
    root.addEventListener('focusin', (event) => this.#help(event.target));
    root.addEventListener('focusout', (event) => {
      if (!root.contains(event.relatedTarget)) {
        this.#tellHelp('', '');
      }
    });
  }

  /** Draws the document; the focus stays on its field where that is still there. */
  draw() {
    const focused = document.activeElement?.closest?.('[data-at]')?.dataset.at;
    const hadFocus = this.#root.contains(document.activeElement);
    const typed = hadFocus && document.activeElement.type === 'text' ? document.activeElement : undefined;
    this.#drawn.clear();
    this.#titles.clear();
    this.#root.replaceChildren(...this.#sections());
    if (hadFocus && focused !== undefined) {
      const control = this.#control(focused);
      control?.focus({ preventScroll: true });
      if (typed !== undefined && control?.type === 'text') {
        control.value = typed.value;
        control.setSelectionRange(typed.selectionStart, typed.selectionEnd);
      }
    }
  }

  /** Shows estimates where they stand, until something is typed there. */
  estimated(estimates) {
    const isNew = estimates.some(({ at }) => !this.#estimates.has(at));
    estimates.forEach((estimate) => this.#estimates.set(estimate.at, estimate));
    if (isNew) {
      this.draw();
    }
    for (const [at, estimate] of this.#estimates) {
      const place = this.#drawn.get(at);
      if (place?.usual !== undefined) {
        this.#tellUsual(place, estimate);
      }
    }
  }

  #tellUsual({ control, usual }, { median, low, high }) {
    control.placeholder = shown(median);
    usual.textContent = `taken; usual ${shown(low)} to ${shown(high)}`;
    usual.hidden = control.value !== '';
  }

  /** Another document has other empty fields. */
  forget() {
    this.#asked.clear();
    this.#estimates.clear();
  }

  openAll(open) {
    for (const section of this.#root.querySelectorAll('details.section')) {
      section.open = open;
    }
  }

  /** Shows a field, or what holds it, and gives it the focus. */
  go(at) {
    const there = this.#nearest(at);
    const place = this.#drawn.get(there);
    for (let holder = place.element; holder !== this.#root; holder = holder.parentElement) {
      if (holder.tagName === 'DETAILS') {
        holder.open = true;
      }
    }
    const adder = there === at ? undefined : this.#adder(child(there, names(at)[names(there).length]));
    if (adder !== undefined) {
      adder.closest('details').open = true;
    }
    const target = adder ?? place.control ?? place.element;
    target.focus({ preventScroll: true });
    target.scrollIntoView({ block: 'center', behavior: 'auto' });
    place.element.classList.add('shown');
    setTimeout(() => place.element.classList.remove('shown'), 1600);
  }

  /** Adds an optional field with the value that holds without it, and what it stands in, and goes there. */
  add(at) {
    if (this.#drawn.has(at)) {
      this.go(at);
      return;
    }
    const missing = [];
    for (let place = at; get(this.#store.document, place) === undefined; place = parent(place)) {
      missing.unshift(place);
    }
    const schemas = missing.map((place) => this.#contract.field(this.#schema, place));
    if (missing.length > 0 && !this.#asked.has(at) && !schemas.includes(undefined)) {
      this.#store.restructure((whole) => missing.forEach((place, step) => this.#putBlank(whole, place, schemas[step])));
    }
    this.go(at);
  }

  #putBlank(whole, at, schema) {
    const value = this.#contract.blank(schema);
    if (value === undefined) {
      this.#asked.add(at);
    } else if (get(whole, at) === undefined) {
      get(whole, parent(at))[last(at)] = value;
    }
  }

  /** Writes faults at their fields, and a mark where a finding points to. */
  note(findings, faults) {
    for (const { marks, faults: lines, control } of this.#drawn.values()) {
      marks.replaceChildren();
      lines?.replaceChildren();
      control?.removeAttribute('aria-invalid');
    }
    for (const counts of this.#root.querySelectorAll('.counts')) {
      counts.replaceChildren();
    }
    for (const fault of faults) {
      const { at } = fault;
      const place = this.#drawn.get(this.#nearest(at));
      if (place.faults !== undefined && this.#drawn.has(at)) {
        place.faults.append(element('p', {}, shape('fault'), ` ${wrong(fault)}`));
        place.control.setAttribute('aria-invalid', 'true');
      } else {
        this.#pin(place, 'fault', at);
      }
      this.#countIn(at, 'fault');
    }
    findings.forEach(({ at, severity }, index) => {
      this.#pin(this.#drawn.get(this.#nearest(at)), severity, at, index);
      this.#countIn(at, severity);
    });
  }

  #pin(place, word, at, index = -1) {
    place.marks.append(
      element(
        'button',
        {
          type: 'button',
          class: 'pin',
          title: 'Show what is said about this',
          click: () => this.dispatchEvent(new CustomEvent('pinned', { detail: { word, at, index } })),
        },
        mark(word),
      ),
    );
  }

  /** The heading of a closed section tells what is inside. */
  #countIn(at, word) {
    const section = this.#drawn.get(this.#nearest(at)).element.closest('details.section');
    const counts = section?.querySelector(':scope > summary .counts');
    if (counts === null || counts === undefined) {
      return;
    }
    const known = counts.querySelector(`.${word}`);
    if (known === null) {
      counts.append(mark(word));
    }
  }

  // What is drawn

  #sections() {
    const whole = this.#store.document;
    const properties = Object.keys(this.#schema.properties);
    const scalars = properties.filter((name) => isScalar(this.#contract.resolved(this.#schema.properties[name])));
    const groups = properties.filter((name) => !scalars.includes(name) && this.#isShown(child('', name), whole[name]));
    const general = this.#section('', 'General', this.#schema, [
      this.#grid('', this.#schema, whole, scalars),
      ...this.#unknown('', this.#schema, whole),
      this.#more('', this.#schema, whole),
    ]);
    return [general, ...groups.map((name) => this.#topGroup(name))];
  }

  #topGroup(name) {
    const at = child('', name);
    const schema = this.#contract.resolved(this.#schema.properties[name]);
    const given = this.#store.document[name];
    const value = isThere(given) ? given : {};
    if (!fits(schema, value)) {
      return this.#section(at, label(name), schema, [this.#raw(at, value)]);
    }
    const inside =
      schema.type === 'array' ? [this.#list(at, schema, value)] : this.#inside(at, schema, value);
    const optional = !(this.#schema.required ?? []).includes(name);
    if (optional && isThere(given)) {
      inside.push(
        element('p', { class: 'tools' }, this.#button(`Remove ${label(name).toLowerCase()}`, () => this.#removeAt(at))),
      );
    }
    return this.#section(at, label(name), schema, inside, schema.type === 'array' ? count(value.length, 'entry', 'entries') : undefined);
  }

  #section(at, title, schema, inside, digest) {
    const marks = element('span', { class: 'marks' });
    const section = element(
      'details',
      {
        class: 'section',
        'data-at': at,
        open: this.#open.has(at),
        toggle: (event) => this.#open[event.target.open ? 'add' : 'delete'](at),
      },
      element(
        'summary',
        {},
        element('h3', {}, title),
        digest === undefined ? undefined : element('span', { class: 'digest' }, digest),
        element('span', { class: 'counts' }),
      ),
      element('div', { class: 'inside' }, element('p', { class: 'about' }, prose(schema.description ?? ''), ' ', marks), ...inside),
    );
    this.#drawn.set(at, { element: section, marks, control: section.querySelector('summary') });
    return section;
  }

  /** Scalars in a grid, then groups and lists, then what may be added. */
  #inside(at, schema, value) {
    const properties = Object.keys(schema.properties ?? {});
    const resolved = (name) => this.#contract.resolved(schema.properties[name]);
    const scalars = properties.filter((name) => isScalar(resolved(name)));
    const groups = properties.filter((name) => !isScalar(resolved(name)) && this.#isShown(child(at, name), value[name]));
    return [
      this.#grid(at, schema, value, scalars),
      ...groups.map((name) => this.#group(child(at, name), resolved(name), value[name] ?? {}, isRequired(schema, name) || !isThere(value[name]))),
      ...this.#unknown(at, schema, value),
      this.#more(at, schema, value),
    ];
  }

  /** A group that is there, or in which something is estimated. */
  #isShown(at, value) {
    return isThere(value) || [...this.#estimates.keys()].some((estimated) => estimated.startsWith(`${at}/`));
  }

  #grid(at, schema, value, scalars) {
    const fields = scalars
      .filter((name) => isRequired(schema, name) || isThere(value[name]) || this.#asked.has(child(at, name)) || this.#estimates.has(child(at, name)))
      .map((name) =>
        this.#field(child(at, name), this.#contract.resolved(schema.properties[name]), value[name], isRequired(schema, name)),
      );
    return fields.length === 0 ? undefined : element('div', { class: 'grid' }, ...fields);
  }

  #group(at, schema, value, required) {
    const title = label(last(at));
    if (!fits(schema, value)) {
      return this.#raw(at, value);
    }
    const tools = required ? [] : [this.#button('Remove', () => this.#removeAt(at), `Remove ${title.toLowerCase()}`)];
    return this.#box('group', at, title, tools, [
      schema.description ? element('p', { class: 'about' }, prose(schema.description)) : undefined,
      ...(schema.type === 'array' ? [this.#list(at, schema, value)] : this.#inside(at, schema, value)),
    ]);
  }

  /** A titled group of fields with its own tools. */
  #box(kind, at, title, tools, inside) {
    const id = this.#id();
    const marks = element('span', { class: 'marks' });
    const box = element(
      'div',
      { class: kind, 'data-at': at, role: 'group', 'aria-labelledby': id, tabindex: '-1' },
      element('div', { class: 'head' }, element('span', { id, class: 'title' }, title), marks, element('span', { class: 'tools' }, ...tools)),
      ...inside,
    );
    this.#drawn.set(at, { element: box, marks });
    return box;
  }

  #list(at, schema, entries) {
    const items = this.#contract.resolved(schema.items);
    if (items.type === 'array' || items.type === 'number') {
      return this.#numbers(at, entries);
    }
    const flat = Object.values(items.properties ?? {}).every((part) => isScalar(this.#contract.resolved(part)));
    const noun = label(last(at)).toLowerCase();
    return element(
      'div',
      { class: 'list' },
      ...entries.map((entry, index) => this.#entry(at, items, entry, index, flat)),
      element(
        'p',
        { class: 'tools' },
        this.#button(`Add to ${noun}`, () => {
          this.#store.restructure((whole) => get(whole, at).push(this.#contract.blank(items)));
          this.#goInto(child(at, get(this.#store.document, at).length - 1));
        }),
      ),
    );
  }

  /** Numbers in lists, as a map program writes them: one text, and nothing is lost while it is no list. */
  #numbers(at, value) {
    const id = this.#id();
    const faults = element('div', { class: 'faults', id: `${id}-faults` });
    const told = (event) => {
      const list = listIn(event.target.value);
      event.target[list === undefined ? 'setAttribute' : 'removeAttribute']('aria-invalid', 'true');
      faults.replaceChildren(
        ...(list === undefined ? [element('p', {}, 'This is no list of numbers in brackets: the last one that was is kept.')] : []),
      );
      if (list !== undefined) {
        this.#edit(at, list);
      }
    };
    const control = element('textarea', {
      id,
      rows: '4',
      spellcheck: 'false',
      'aria-label': label(last(at)),
      'aria-describedby': `${id}-faults`,
      input: told,
    });
    control.value = JSON.stringify(value);
    return element('div', { class: 'field numbers' }, element('div', { class: 'control' }, control), faults);
  }

  #entry(list, schema, value, index, flat) {
    const at = child(list, index);
    if (!fits(schema, value)) {
      return this.#raw(at, value);
    }
    const title = element('span', {}, titleOf(value, index));
    this.#titles.set(at, title);
    const called = titleOf(value, index);
    const tools = [
      index === 0 ? undefined : this.#button('Up', () => this.#move(list, index), `Move up ${called}`),
      this.#button('Copy', () => this.#copy(list, index), `Copy ${called}`),
      this.#button('Remove', () => this.#removeAt(at), `Remove ${called}`),
    ];
    return this.#box(flat ? 'entry flat' : 'entry', at, title, tools, this.#inside(at, schema, value));
  }

  /** Buttons for the optional fields that are not there. */
  #more(at, schema, value) {
    const isDrawn = (name) =>
      this.#isShown(child(at, name), value[name]) ||
      this.#estimates.has(child(at, name)) ||
      this.#asked.has(child(at, name)) ||
      (isRequired(schema, name) && isScalar(this.#contract.resolved(schema.properties[name])));
    const absent = Object.keys(schema.properties ?? {}).filter((name) => !isDrawn(name));
    if (absent.length === 0) {
      return undefined;
    }
    return element(
      'details',
      { class: 'more' },
      element('summary', {}, count(absent.length, 'more field')),
      element(
        'div',
        { class: 'chips' },
        ...absent.map((name) => {
          const part = this.#contract.resolved(schema.properties[name]);
          return element(
            'button',
            {
              type: 'button',
              'data-adds': child(at, name),
              'data-help': helpOf(part, name),
              title: prose(part.description ?? ''),
              'aria-label': `Add ${label(name)}`,
              click: () => this.add(child(at, name)),
            },
            `+ ${label(name)}`,
          );
        }),
      ),
    );
  }

  #field(at, schema, value, required) {
    const name = last(at);
    const id = this.#id();
    const marks = element('span', { class: 'marks' });
    const faults = element('div', { class: 'faults', id: `${id}-faults` });
    const help = element('span', { id: `${id}-help`, hidden: true }, helpOf(schema, name));
    const control = this.#controlFor(at, schema, value);
    control.id = id;
    control.setAttribute('aria-describedby', `${id}-faults ${id}-help`);
    if (required) {
      control.setAttribute('aria-required', 'true');
    }
    const unitText = unit(name);
    const isBoolean = schema.type === 'boolean';
    const estimate = this.#estimates.get(at);
    const usual = estimate === undefined ? undefined : element('p', { class: 'usual' });
    const field = element(
      'div',
      { class: `field ${schema.enum ? 'enum' : schema.type}`, 'data-at': at },
      element(
        'div',
        { class: 'label' },
        element('label', { for: id }, label(name), unitText === '' ? undefined : element('span', { class: 'unseen' }, `, ${unitText}`)),
        marks,
      ),
      element(
        'div',
        { class: 'control' },
        control,
        unitText === '' || isBoolean ? undefined : element('span', { class: 'unit', 'aria-hidden': 'true' }, unitText),
        required || (estimate !== undefined && !isThere(value)) ? undefined : this.#button('×', () => this.#removeAt(at), `Remove ${label(name).toLowerCase()}`, 'drop'),
      ),
      usual,
      faults,
      help,
    );
    this.#drawn.set(at, { element: field, marks, faults, control, usual });
    if (usual !== undefined) {
      this.#tellUsual({ control, usual }, estimate);
    }
    return field;
  }

  #controlFor(at, schema, value) {
    if (schema.enum !== undefined) {
      const known = value === undefined || value === null || schema.enum.includes(value);
      const words = known ? schema.enum : [value, ...schema.enum];
      return element(
        'select',
        { change: (event) => this.#edit(at, event.target.value === '' ? undefined : event.target.value) },
        value === undefined || value === null ? element('option', { value: '' }, 'choose') : undefined,
        ...words.map((word) => element('option', { value: word, selected: word === value }, plain(word))),
      );
    }
    if (schema.type === 'boolean' && (typeof value === 'boolean' || !isThere(value))) {
      return element('input', { type: 'checkbox', checked: value === true, change: (event) => this.#edit(at, event.target.checked) });
    }
    const isNumber = schema.type === 'number' || schema.type === 'integer';
    return element('input', {
      type: 'text',
      value: isThere(value) ? String(value) : undefined,
      // A phone's keypad for decimals has no minus.
      inputmode: !isNumber || schema.minimum < 0 ? undefined : schema.type === 'integer' ? 'numeric' : 'decimal',
      autocomplete: 'off',
      spellcheck: 'false',
      input: (event) => this.#edit(at, isNumber ? numberOrText(event.target.value) : textOrNothing(event.target.value)),
    });
  }

  /** What the contract does not know: shown as it is, and to be removed. */
  #unknown(at, schema, value) {
    return Object.keys(value)
      .filter((name) => !Object.hasOwn(schema.properties ?? {}, name))
      .map((name) => this.#raw(child(at, name), value[name]));
  }

  #raw(at, value) {
    const marks = element('span', { class: 'marks' });
    const faults = element('div', { class: 'faults' });
    const control = this.#button('Remove', () => this.#removeAt(at), `Remove ${last(at)}`);
    const raw = element(
      'div',
      { class: 'field raw', 'data-at': at },
      element('div', { class: 'label' }, element('span', {}, last(at)), marks),
      element('div', { class: 'control' }, element('code', {}, shortened(JSON.stringify(value))), control),
      faults,
    );
    this.#drawn.set(at, { element: raw, marks, faults, control });
    return raw;
  }

  // What is done

  #edit(at, value) {
    if (value === undefined) {
      this.#asked.add(at);
    }
    this.#store.edit(at, value);
    const usual = this.#drawn.get(at)?.usual;
    if (usual !== undefined) {
      usual.hidden = value !== undefined;
    }
    const holder = parent(at);
    const title = this.#titles.get(holder);
    if (title !== undefined && NAMING.includes(last(at))) {
      title.textContent = titleOf(get(this.#store.document, holder), Number(last(holder)));
    }
  }

  #removeAt(at) {
    this.#asked.delete(at);
    const holder = parent(at);
    const name = last(at);
    this.#store.restructure((whole) => {
      const from = get(whole, holder);
      if (Array.isArray(from)) {
        from.splice(Number(name), 1);
      } else {
        delete from[name];
      }
    });
    this.#goInto(holder);
  }

  #move(list, index) {
    this.#store.restructure((whole) => {
      const entries = get(whole, list);
      entries.splice(index - 1, 0, ...entries.splice(index, 1));
    });
    this.#goInto(child(list, index - 1));
  }

  #copy(list, index) {
    this.#store.restructure((whole) => {
      const entries = get(whole, list);
      entries.splice(index + 1, 0, structuredClone(entries[index]));
    });
    this.#goInto(child(list, index + 1));
  }

  /** The first control of a group. */
  #goInto(at) {
    const place = this.#drawn.get(this.#nearest(at));
    (place.element.querySelector('input, select') ?? place.element).focus();
  }

  // Small things

  #button(text, act, name, extraClass = '') {
    return element('button', { type: 'button', class: `small ${extraClass}`, 'aria-label': name, title: name, click: act }, text);
  }

  #control(at) {
    return this.#drawn.get(at)?.control;
  }

  #adder(at) {
    return this.#root.querySelector(`button[data-adds="${CSS.escape(at)}"]`) ?? undefined;
  }

  #nearest(at) {
    for (let pointer = at; pointer !== undefined; pointer = parent(pointer)) {
      if (this.#drawn.has(pointer)) {
        return pointer;
      }
    }
    return '';
  }

  #id() {
    this.#ids += 1;
    return `field-${this.#ids}`;
  }

  #help(target) {
    const adds = target.dataset?.help;
    const at = target.closest('[data-at]')?.dataset.at;
    const schema = at === undefined || at === '' ? undefined : this.#contract.field(this.#schema, at);
    const text = adds ?? (schema === undefined ? '' : helpOf(schema, last(at)));
    const title = adds === undefined && schema !== undefined && !/^\d+$/.test(last(at)) ? label(last(at)) : '';
    this.#tellHelp(title, text);
  }

  #tellHelp(title, text) {
    this.dispatchEvent(new CustomEvent('help', { detail: { title, text } }));
  }
}

function helpOf(schema, name) {
  return prose(`${schema.description ?? ''} ${bounds(schema, unit(name))}`.trim());
}

function titleOf(entry, index) {
  const naming = NAMING.find((name) => typeof entry[name] === 'string' && entry[name] !== '');
  return naming === undefined ? `${index + 1}` : `${index + 1} · ${naming === 'name' ? entry.name : plain(entry[naming])}`;
}

function isRequired(schema, name) {
  return (schema.required ?? []).includes(name);
}

function isThere(value) {
  return value !== undefined && value !== null;
}

function fits(schema, value) {
  if (schema.type === 'array') {
    return Array.isArray(value);
  }
  return schema.type !== 'object' || (typeof value === 'object' && value !== null && !Array.isArray(value));
}

function listIn(text) {
  try {
    const value = JSON.parse(text);
    return Array.isArray(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

function shortened(text) {
  return text.length > 80 ? `${text.slice(0, 79)}…` : text;
}

// What the service answers: verdict, findings, key figures, parts, assumptions.

import { checksOf, isOpen, judgedText, listed } from './checks.js';
import { element, mark, redraw } from './dom.js';
import { placeName } from './place.js';
import { count, label, measure, plain, shown, spelled, unit, wrong } from './words.js';

/** What every answer carries; the rest of it are its numbers. */
const JUDGEMENT = ['verdict', 'checks', 'findings', 'assumptions', 'estimates', 'bands', 'risks', 'cautions', 'computed_by', 'key_figures', 'workings'];

/** Figures that have a band and no place among the key figures. */
const OF_CRUISE = new Map([['endurance_h', 'Endurance in cruise'], ['ground_range_km', 'Ground range in cruise']]);

const MOST_ROWS = 200;

/** Tables are for a closer look than tiles. */
const DIGITS = 4;

/** From here on seconds are also said in hours and minutes. */
const LONG_S = 600;

/** "1 to look at, 3 notes". */
export function verdictText({ verdict, checks, findings }) {
  const of = (severity) => findings.filter((finding) => finding.severity === severity).length;
  const parts = [
    of('stop') > 0 ? `${count(of('stop'), 'limit')} exceeded` : undefined,
    of('attention') > 0 ? `${of('attention')} to look at` : undefined,
    of('note') > 0 ? count(of('note'), 'note') : undefined,
  ].filter((part) => part !== undefined);
  const words = { fit: 'Fit', attention: 'Attention', stop: 'Stop' };
  return { word: words[verdict] ?? verdict, rest: [...parts, judgedText(checks)].join(', ') };
}

export function drawFindings(root, findings, whole, go) {
  redraw(root, () => {
    root.replaceChildren(
      ...findings.map(({ severity, message, at, code }, index) =>
        element(
          'li',
          { class: `finding ${severity}`, 'data-index': index, tabindex: '-1' },
          mark(severity),
          element('p', {}, message),
          goButton(at, whole, go, `finding-${code}-${at}`),
        ),
      ),
    );
  });
}

export function drawFaults(root, faults, whole, go) {
  redraw(root, () => {
    root.replaceChildren(
      ...faults.map((fault) =>
        element(
          'li',
          { class: 'finding fault', 'data-at-fault': fault.at, tabindex: '-1' },
          mark('fault'),
          element('p', {}, wrong(fault)),
          goButton(fault.at, whole, go, `fault-${fault.at}`),
        ),
      ),
    );
  });
}

function goButton(at, whole, go, key) {
  return element('button', { type: 'button', class: 'go', 'data-key': key, click: () => go(at) }, `Go to ${placeName(at, whole)}`);
}

/** Key figures, each with its band and with what it was in the answer that is compared with. */
export function drawTiles(root, figures, before, bands = {}) {
  // The flight is that of the cruise; the best flights have figures of their own.
  const middles = Object.entries(bands).filter(([name]) => !(name in figures)).map(([name, band]) => [name, band.p50]);
  root.replaceChildren(
    ...[...Object.entries(figures), ...middles].map(([name, value]) =>
      element(
        'div',
        { class: 'tile', 'data-name': name },
        element('dt', {}, OF_CRUISE.get(name) ?? label(name)),
        element('dd', { title: String(value) }, shown(value), unit(name) === '' ? undefined : element('span', { class: 'unit' }, `${unit(name) === '°' ? '' : '\u00a0'}${unit(name)}`)),
        banded(bands[name]),
        changed(value, before?.[name], unit(name)),
      ),
    ),
  );
}

/** Where the figure lies in eight cases of ten. */
function banded(band) {
  return band === undefined
    ? undefined
    : element('dd', { class: 'band', title: 'Eight in ten such aircraft lie between these.' }, `${shown(band.p10)} to ${shown(band.p90)}`);
}

/** What was not told and had to be estimated, what widens the bands most first. */
export function drawEstimates(root, estimates, whole, add) {
  redraw(root, () => {
    root.replaceChildren(
      ...estimates.map(({ at, median, low, high, unit: unitText, from, source, narrows_percent: narrows }) =>
        element(
          'li',
          {},
          element(
            'p',
            {},
            element('b', {}, `${placeName(at, whole)}: `),
            `${measure(median, unitText ?? '', DIGITS)}, ${shown(low)} to ${shown(high)}.`,
            narrows >= 1 ? element('span', { class: 'narrows' }, ` Knowing it narrows the band by ${Math.round(narrows)} %.`) : undefined,
            element('span', { class: 'about' }, ` From ${from} (${source}).`),
          ),
          element(
            'button',
            { type: 'button', class: 'go', 'data-key': `estimated-${at}`, 'aria-label': `Set ${placeName(at, whole)}`, click: () => add(at) },
            'Set it',
          ),
        ),
      ),
    );
  });
}

function changed(value, before, unitText) {
  if (before === undefined || shown(before) === shown(value)) {
    return undefined;
  }
  return element('dd', { class: 'change' }, `was ${measure(before, unitText)}`);
}

export function drawAssumptions(root, assumptions, whole, add) {
  redraw(root, () => {
    root.replaceChildren(
      ...assumptions.map(({ at, assumed, because }) =>
        element(
          'li',
          {},
          element('p', {}, at === '' ? undefined : element('b', {}, `${placeName(at, whole)}: `), assumed, ` (${because})`),
          at === ''
            ? undefined
            : element(
                'button',
                { type: 'button', class: 'go', 'data-key': `assumed-${at}`, 'aria-label': `Set ${placeName(at, whole)}`, click: () => add(at) },
                'Set it',
              ),
        ),
      ),
    );
  });
}

/** The calculations of a review, by their names. */
export function partsOf(answer) {
  return Object.entries(answer).filter(([name]) => !JUDGEMENT.includes(name));
}

/** One folding part for each calculation; filled when it is opened. */
export class Parts {
  #root;
  #drawPicture;
  #open = new Set();

  constructor(root, drawPicture) {
    this.#root = root;
    this.#drawPicture = drawPicture;
  }

  draw(answer) {
    redraw(this.#root, () => {
      this.#root.replaceChildren(
        ...partsOf(answer).map(([name, part]) => this.#part(name, part)),
      );
    });
  }

  #part(name, part) {
    const inside = element('div', { class: 'inside' });
    const fill = () => {
      if (inside.childElementCount === 0) {
        inside.append(...this.#drawPicture(name, part), ...numbers(part, label(name)), ...listed(checksOf(part)));
      }
    };
    const drawn = element(
      'details',
      {
        class: 'part',
        'data-name': name,
        open: this.#open.has(name),
        toggle: (event) => {
          this.#open[event.target.open ? 'add' : 'delete'](name);
          if (event.target.open) {
            fill();
          }
        },
      },
      element('summary', { 'data-key': `part-${name}` }, element('h3', {}, label(name)), openCount(part), mark(verdictOf(part), plain(verdictOf(part)))),
      inside,
    );
    return drawn;
  }
}

/** How much of a calculation was not judged, beside its verdict. */
function openCount(part) {
  const open = checksOf(part).filter(isOpen).length;
  return open === 0 ? undefined : element('span', { class: 'digest' }, `${open} not judged`);
}

/** A list of answers is as good as its worst. */
function verdictOf(part) {
  if (!Array.isArray(part)) {
    return part.verdict;
  }
  const verdicts = part.map((entry) => entry.answer?.verdict ?? entry.verdict);
  // An empty list holds nothing that could have passed.
  return ['stop', 'attention', 'fit'].find((verdict) => verdicts.includes(verdict)) ?? 'not_judged';
}

/** Any answer as tables: its numbers, then each group and list under its own heading. */
function numbers(value, title) {
  if (Array.isArray(value)) {
    return value.every(isFlat) ? [table(value, title)] : value.flatMap((entry, index) => entryOf(entry, title, index));
  }
  const rows = Object.entries(value).filter(([name, entry]) => !JUDGEMENT.includes(name) && !isObject(entry) && !isNumberList(entry));
  const groups = Object.entries(value).filter(([name, entry]) => !JUDGEMENT.includes(name) && isObject(entry) && !isEmpty(entry));
  return [
    rows.length === 0 ? undefined : list(rows, title),
    ...groups.flatMap(([name, entry]) => [element('h4', {}, headed(name)), ...numbers(entry, label(name))]),
  ].filter((part) => part !== undefined);
}

/** A label with its unit. */
function headed(name) {
  return unit(name) === '' ? label(name) : `${label(name)}, ${unit(name)}`;
}

function entryOf(entry, title, index) {
  return [element('h4', {}, entry.name ?? `${title} ${index + 1}`), ...numbers(entry, entry.name ?? title)];
}

function list(rows, title) {
  return element(
    'table',
    { class: 'numbers' },
    element('caption', { class: 'unseen' }, title),
    element('tbody', {}, ...rows.map(([name, value]) => element('tr', {}, element('th', { scope: 'row' }, label(name)), element('td', {}, cell(value, unit(name)))))),
  );
}

function table(rows, title) {
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))].filter((name) => !JUDGEMENT.includes(name));
  return element(
    'div',
    { class: 'wide', tabindex: '0', role: 'region', 'aria-label': title },
    element(
      'table',
      {},
      element('thead', {}, element('tr', {}, ...columns.map((name) => element('th', { scope: 'col', class: kind(rows[0][name]) }, headed(name))))),
      element('tbody', {}, ...rows.slice(0, MOST_ROWS).map((row) => element('tr', {}, ...columns.map((name) => element('td', { class: kind(row[name]) }, cell(row[name], '')))))),
    ),
  );
}

function kind(value) {
  return typeof value === 'number' ? 'number' : 'text';
}

function cell(value, unitText) {
  if (typeof value === 'number') {
    const text = measure(value, unitText, DIGITS);
    return unitText === 's' && value >= LONG_S ? `${text} (${spelled(value)})` : text;
  }
  if (typeof value === 'boolean') {
    return value ? 'yes' : 'no';
  }
  if (Array.isArray(value)) {
    return value.map((entry) => (typeof entry === 'number' ? shown(entry, DIGITS) : plain(entry))).join(', ');
  }
  return value === undefined || value === null ? '' : plain(value);
}

function isObject(value) {
  return typeof value === 'object' && value !== null && !isNumberList(value);
}

function isNumberList(value) {
  return Array.isArray(value) && value.every((entry) => typeof entry !== 'object');
}

function isEmpty(value) {
  return Object.keys(value).length === 0;
}

/** An entry that fits into one row. */
function isFlat(entry) {
  return isObject(entry) && Object.values(entry).every((value) => !isObject(value));
}

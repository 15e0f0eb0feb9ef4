// What was judged, what did not pass, and what was not judged.

import { element, mark, redraw, shape } from './dom.js';
import { placeName } from './place.js';
import { count, measure, plain } from './words.js';

/** Tables are for a closer look than tiles. */
const DIGITS = 4;

/** "117 checks passed, 1 not passed, 8 not judged". */
export function judgedText(checks) {
  const passed = checks.filter(({ outcome }) => outcome === 'passed').length;
  const open = checks.filter(isOpen).length;
  const parts = [`${count(passed, 'check')} passed`];
  if (checks.length > passed + open) {
    parts.push(`${checks.length - passed - open} not passed`);
  }
  if (open > 0) {
    parts.push(`${open} not judged`);
  }
  return parts.join(', ');
}

/** Whether it was not judged. */
export function isOpen({ outcome }) {
  return outcome === 'not_judged';
}

/** The checks of a calculation, or of each in a list. */
export function checksOf(part) {
  return Array.isArray(part) ? part.flatMap((entry) => (entry.answer ?? entry).checks ?? []) : (part.checks ?? []);
}

/** What was not judged, each with the fields that would let it be; checks that want the same stand together. */
export function drawNotJudged(root, checks, whole, add) {
  const wanting = new Map();
  for (const check of checks.filter(isOpen)) {
    // The whole document is no field to give.
    const give = [...new Set(check.give)].filter((at) => at !== '');
    const alike = wanting.get(give.join(' ')) ?? { give, about: new Set() };
    alike.about.add(check.about);
    wanting.set(give.join(' '), alike);
  }
  redraw(root, () => {
    root.replaceChildren(
      ...[...wanting.values()].map(({ give, about }) =>
        element(
          'li',
          {},
          element('p', {}, shape('not_judged'), ' ', [...about].join('; ')),
          element(
            'p',
            { class: 'gives' },
            ...give.map((at) =>
              element('button', { type: 'button', class: 'go', 'data-key': `give-${at}`, click: () => add(at) }, `Give ${placeName(at, whole)}`),
            ),
          ),
        ),
      ),
    );
  });
}

/** Every check of the answer, in its order. */
export function drawChecks(root, checks) {
  root.replaceChildren(...(checks.length === 0 ? [] : [checkTable(checks)]));
}

/** The checks of one calculation under a heading of their own; nothing where there are none. */
export function listed(checks) {
  return checks.length === 0 ? [] : [element('h4', {}, `Checks: ${judgedText(checks)}`), checkTable(checks)];
}

function checkTable(checks) {
  return element(
    'div',
    { class: 'wide', tabindex: '0', role: 'region', 'aria-label': 'Checks' },
    element(
      'table',
      { class: 'checks' },
      element('thead', {}, element('tr', {}, ...['Check', 'Outcome, margin', 'Value', 'Limit', 'Limit from'].map((name) => element('th', { scope: 'col' }, name)))),
      element('tbody', {}, ...checks.map(checkRow)),
    ),
  );
}

function checkRow({ about, outcome, value, limit, unit: unitText = '', margin_percent: margin, basis }) {
  const number = (given) => element('td', { class: 'number' }, given === undefined ? '' : measure(given, unitText, DIGITS));
  // Beyond a limit that only a note is about a check still passes; its numbers show it.
  const kept = outcome === 'passed' && margin !== undefined && margin >= 0;
  return element(
    'tr',
    {},
    element('th', { scope: 'row' }, about),
    element('td', {}, mark(outcome, plain(outcome) + (kept ? `, ${measure(margin, '%')}` : ''))),
    number(value),
    number(limit),
    element('td', {}, limit === undefined ? '' : basis),
  );
}

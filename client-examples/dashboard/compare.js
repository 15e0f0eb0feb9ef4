// Two aircraft side by side: what differs in them, and what that does to the checks.

import { element, mark } from './dom.js';
import { placeName } from './place.js';
import { child, last } from './pointer.js';
import { plain, shown, unit } from './words.js';

/** More differences than this are counted. */
const MOST = 40;

/** Every value that one has and the other has not, or has otherwise. */
export function differences(before, now, at = '') {
  if (!isHolder(before) || !isHolder(now) || Array.isArray(before) !== Array.isArray(now)) {
    return JSON.stringify(before) === JSON.stringify(now) ? [] : [{ at, before, now }];
  }
  const names = new Set([...Object.keys(before), ...Object.keys(now)]);
  return [...names].flatMap((name) => differences(before[name], now[name], child(at, name)));
}

/** Checks that came out otherwise, or that only one of the two has. */
export function otherOutcomes(before, now) {
  const keyOf = ({ code, at, about }) => `${code} ${at} ${about}`;
  const was = new Map(before.map((check) => [keyOf(check), check]));
  const is = new Map(now.map((check) => [keyOf(check), check]));
  return [...new Set([...was.keys(), ...is.keys()])]
    .map((key) => ({ check: is.get(key) ?? was.get(key), before: was.get(key)?.outcome, now: is.get(key)?.outcome }))
    .filter((pair) => pair.before !== pair.now);
}

/** Draws both lists; a difference leads to its field. */
export function drawCompared(root, before, now, go) {
  const changed = differences(before.document, now.document);
  const outcomes = otherOutcomes(before.answer.checks, now.answer.checks);
  root.replaceChildren(
    element('p', {}, 'Verdict: ', mark(before.answer.verdict), ' before, ', mark(now.answer.verdict), ' now.'),
    element('h4', {}, changed.length === 0 ? 'Nothing differs in the aircraft' : `Differences in the aircraft: ${changed.length}`),
    listed(changed, (difference) =>
      element(
        'li',
        {},
        element('p', {}, element('b', {}, `${placeName(difference.at, now.document)}: `), `${written(difference.before)} → ${written(difference.now)} ${unit(last(difference.at))}`.trim()),
        element(
          'button',
          { type: 'button', class: 'go', 'aria-label': `Go to ${placeName(difference.at, now.document)}`, click: () => go(difference.at) },
          'Go to it',
        ),
      ),
    ),
    element('h4', {}, outcomes.length === 0 ? 'Every check comes out as before' : `Checks that come out otherwise: ${outcomes.length}`),
    listed(outcomes, ({ check, before: was, now: is }) =>
      element('li', {}, element('p', {}, `${check.about}: `, outcome(was), ' → ', outcome(is))),
    ),
  );
}

function listed(entries, draw) {
  const rest = entries.length - MOST;
  return element('ul', { class: 'plain' }, ...entries.slice(0, MOST).map(draw), rest > 0 ? element('li', {}, `and ${rest} more`) : undefined);
}

function outcome(word) {
  return word === undefined ? 'not there' : mark(word, plain(word));
}

function isHolder(value) {
  return typeof value === 'object' && value !== null;
}

function written(value) {
  if (value === undefined) {
    return 'not given';
  }
  const text = typeof value === 'number' ? shown(value, 6) : isHolder(value) ? JSON.stringify(value) : String(value);
  return text.length > 60 ? `${text.slice(0, 59)}…` : text;
}

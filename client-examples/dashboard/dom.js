// Elements without HTML text: whatever a document or an answer says stays text.

/**
 * Makes an element.
 * @param {string} tag
 * @param {object} attributes names to values; a function is a listener, true an empty attribute, false and undefined none
 * @param {...(Node|string|undefined)} children
 */
export function element(tag, attributes = {}, ...children) {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === 'function') {
      made.addEventListener(name, value);
    } else if (value === true) {
      made.setAttribute(name, '');
    } else if (value !== false && value !== undefined) {
      made.setAttribute(name, value);
    }
  }
  made.append(...children.flat().filter((part) => part !== undefined));
  return made;
}

const SHAPES = { stop: '⬣', attention: '▲', note: '●', fit: '✔', passed: '✔', not_judged: '○', fault: '✖' };

/** A severity or a verdict: a shape and a word, so that it does not hang on colour. */
export function mark(word, text = word) {
  return element('span', { class: `mark ${word}` }, shape(word), ' ', element('span', { class: 'word' }, text));
}

/** The shape alone, beside other words. */
export function shape(word) {
  return element('span', { class: `shape ${word}`, 'aria-hidden': 'true' }, SHAPES[word] ?? '●');
}

/** Draws anew and leaves the focus on the element of the same data-key. */
export function redraw(root, draw) {
  const focused = root.contains(document.activeElement) ? document.activeElement.dataset.key : undefined;
  draw();
  if (focused !== undefined) {
    root.querySelector(`[data-key="${CSS.escape(focused)}"]`)?.focus({ preventScroll: true });
  }
}

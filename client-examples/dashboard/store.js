// The document that is edited, with what it was before.

import * as pointers from './pointer.js';

const MOST_STEPS_BACK = 100;

/** Edits of one field within this time are taken back together, ms. */
const ONE_EDIT_MS = 1500;

export class Store extends EventTarget {
  #document = {};
  #saved = '{}';
  #before = [];
  #after = [];
  #lastEdit = { at: undefined, time: 0 };
  #begun = false;

  get document() {
    return this.#document;
  }

  get text() {
    return JSON.stringify(this.#document, undefined, 2);
  }

  get canUndo() {
    return this.#before.length > 0;
  }

  get canRedo() {
    return this.#after.length > 0;
  }

  get isSaved() {
    return this.#saved === JSON.stringify(this.#document);
  }

  /** Another document; the one before comes back by undo. */
  open(document) {
    if (this.#begun) {
      this.#remember();
    }
    this.#begun = true;
    this.#document = document;
    this.saved();
    this.#tell('opened');
  }

  /** The document is in a file, as it is now. */
  saved() {
    this.#saved = JSON.stringify(this.#document);
  }

  /** The whole document, from its text. */
  rewrite(document) {
    this.#rememberEdit('');
    this.#document = document;
    this.#tell('rewritten');
  }

  /** One value; undefined takes it out. */
  edit(at, value) {
    this.#rememberEdit(at);
    if (value === undefined) {
      pointers.remove(this.#document, at);
    } else {
      pointers.put(this.#document, at, value);
    }
    this.#tell('edited');
  }

  /** A change that adds, removes or moves fields. */
  restructure(change) {
    this.#remember();
    change(this.#document);
    this.#tell('restructured');
  }

  undo() {
    this.#step(this.#before, this.#after);
  }

  redo() {
    this.#step(this.#after, this.#before);
  }

  #step(from, to) {
    to.push(JSON.stringify(this.#document));
    this.#document = JSON.parse(from.pop());
    this.#lastEdit = { at: undefined, time: 0 };
    this.#tell('restructured');
  }

  #rememberEdit(at) {
    const now = performance.now();
    if (this.#lastEdit.at !== at || now - this.#lastEdit.time > ONE_EDIT_MS) {
      this.#remember();
    }
    this.#after = [];
    this.#lastEdit = { at, time: now };
  }

  #remember() {
    this.#after = [];
    this.#before.push(JSON.stringify(this.#document));
    this.#before.splice(0, this.#before.length - MOST_STEPS_BACK);
    this.#lastEdit = { at: undefined, time: 0 };
  }

  #tell(what) {
    this.dispatchEvent(new CustomEvent('change', { detail: what }));
  }
}

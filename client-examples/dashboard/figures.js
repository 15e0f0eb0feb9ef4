// Pictures of the parts, drawn by the service.

import { element } from './dom.js';
import { ask, posting, Refused } from './service.js';

/** The service says with these that it does not draw this. */
const NOT_DRAWN = [400, 404, 406, 422];

export class Figures {
  #document;
  #theme = 'auto';
  #refused = new Set();
  #pictures = new Map();

  /** Pictures of another document; those of the last are let go. */
  of(document, theme) {
    for (const picture of this.#pictures.values()) {
      picture.then((drawn) => drawn && URL.revokeObjectURL(drawn.url));
    }
    this.#pictures.clear();
    this.#document = structuredClone(document);
    this.#theme = theme;
  }

  /** The path that draws one part of the answer. */
  path(at) {
    return `/v1/build-review?as=svg&pick=${encodeURIComponent(at)}&theme=${this.#theme}`;
  }

  /** A place for a picture, which comes when it is drawn and stays hidden where none is. */
  place(at, title) {
    const figure = element('figure', { hidden: true });
    this.#picture(at).then((drawn) => {
      if (drawn !== undefined) {
        figure.replaceChildren(element('img', { src: drawn.url, alt: drawn.text || title }));
        figure.hidden = false;
      }
    });
    return figure;
  }

  #picture(at) {
    if (this.#refused.has(at)) {
      return Promise.resolve(undefined);
    }
    if (!this.#pictures.has(at)) {
      this.#pictures.set(at, this.#fetch(at));
    }
    return this.#pictures.get(at);
  }

  async #fetch(at) {
    try {
      const response = await ask(this.path(at), posting(this.#document, 'image/svg+xml'));
      const svg = await response.text();
      return { url: URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' })), text: described(svg) };
    } catch (failure) {
      if (failure instanceof Refused && NOT_DRAWN.includes(failure.problem.status)) {
        this.#refused.add(at);
      }
      return undefined;
    }
  }
}

/** What a figure says of itself to those who do not see it. */
function described(svg) {
  const drawing = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
  return drawing.querySelector('desc')?.textContent ?? drawing.querySelector('title')?.textContent ?? '';
}

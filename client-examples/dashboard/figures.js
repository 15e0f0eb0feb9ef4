// Pictures of the parts, drawn by the service.

import { element } from './dom.js';
import { ask, posting, Refused } from './service.js';

/** The service says with these that it does not draw this. */
const NOT_DRAWN = [400, 404, 406, 422];

/** The path that draws one calculation of a review. */
export function pathOf(at, theme) {
  return `/v1/build-review?as=svg&pick=${at}&theme=${theme}`;
}

export class Figures {
  #document;
  #theme = 'auto';
  #asking = new AbortController();
  /** What each place shows, until the next is drawn. */
  #shown = new Map();
  /** What is drawn of this document, or will be. */
  #drawn = new Map();

  /** Pictures of another document; what was asked about the last is no longer wanted. */
  of(document, theme) {
    this.#asking.abort();
    this.#asking = new AbortController();
    this.#drawn.clear();
    this.#document = structuredClone(document);
    this.#theme = theme;
  }

  /** A place for a picture: the last one until the new one is drawn, hidden where there is none. */
  place(at, title) {
    const figure = element('figure', { hidden: true });
    const { signal } = this.#asking;
    show(figure, this.#shown.get(at), title);
    this.#picture(at).then((picture) => {
      if (!signal.aborted) {
        show(figure, picture, title);
        this.#replace(at, picture);
      }
    });
    return figure;
  }

  #picture(at) {
    if (!this.#drawn.has(at)) {
      this.#drawn.set(at, this.#fetch(at, this.#asking.signal));
    }
    return this.#drawn.get(at);
  }

  async #fetch(at, signal) {
    try {
      const response = await ask(pathOf(at, this.#theme), posting(this.#document, 'image/svg+xml', signal));
      const svg = await response.text();
      return { url: URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' })), text: described(svg) };
    } catch (failure) {
      if (!signal.aborted && !(failure instanceof Refused && NOT_DRAWN.includes(failure.problem.status))) {
        console.warn(`no drawing of ${at}:`, failure.message);
      }
      return undefined;
    }
  }

  #replace(at, picture) {
    const last = this.#shown.get(at);
    if (last !== undefined && last !== picture) {
      URL.revokeObjectURL(last.url);
    }
    this.#shown.set(at, picture);
  }
}

function show(figure, picture, title) {
  figure.hidden = picture === undefined;
  figure.replaceChildren(...(picture === undefined ? [] : [element('img', { src: picture.url, alt: picture.text || title })]));
}

/** What a figure says of itself to those who do not see it. */
function described(svg) {
  const drawing = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
  return drawing.querySelector('desc')?.textContent ?? drawing.querySelector('title')?.textContent ?? '';
}

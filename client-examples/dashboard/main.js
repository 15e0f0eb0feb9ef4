// The page: what is edited is posted to the service, and what it answers is shown.

import { drawAssumptions, drawFaults, drawFindings, drawTiles, Parts, partsOf, verdictText } from './answer.js';
import { copy, curl, python } from './calls.js';
import { Contract } from './contract.js';
import { element, mark } from './dom.js';
import { Figures, pathOf } from './figures.js';
import { Form } from './form.js';
import { address, ask, json, posting, Refused } from './service.js';
import { Store } from './store.js';
import { count, label } from './words.js';

const REVIEW = '/v1/build-review';

/** A pause in typing that is long enough to compute, ms. */
const PAUSE_MS = 250;

const by = (id) => document.getElementById(id);
const isWide = window.matchMedia('(min-width: 62rem)');

const store = new Store();
const figures = new Figures();
const parts = new Parts(by('parts'), pictures);
let form;
let answer;
let baseline;
let timer;
let asking = new AbortController();

start();

async function start() {
  by('home').href = `${address}/`;
  try {
    const [openapi, example] = await Promise.all([json('/openapi.json'), json(`${REVIEW}/example`)]);
    const contract = new Contract(openapi);
    form = new Form(by('form'), store, contract, contract.request(REVIEW), isWide.matches ? ['', '/airframe'] : ['']);
    form.addEventListener('help', showHelp);
    form.addEventListener('pinned', showPinned);
    store.addEventListener('change', changed);
    wire(contract, example);
    store.open(example);
  } catch (failure) {
    say('fault', 'No answer', `${address} cannot be reached (${failure.message})`);
  }
}

// The document

function changed({ detail }) {
  if (detail === 'opened') {
    answer = undefined;
    baseline = undefined;
    by('answer').classList.add('without');
    form.forget();
  }
  if (detail !== 'edited') {
    form.draw();
    note();
  }
  if (detail !== 'rewritten') {
    by('json').value = store.text;
    by('json-fault').textContent = '';
  }
  by('undo').disabled = !store.canUndo;
  clearTimeout(timer);
  timer = setTimeout(compute, detail === 'opened' ? 0 : PAUSE_MS);
}

/** The last change wins: an answer that was overtaken is not shown. */
async function compute() {
  asking.abort();
  asking = new AbortController();
  const { signal } = asking;
  by('verdict').classList.add('busy');
  const asked = structuredClone(store.document);
  try {
    const response = await ask(REVIEW, posting(asked, 'application/json', signal));
    const answered = await response.json();
    if (!signal.aborted) {
      show(answered, asked);
    }
  } catch (failure) {
    if (!signal.aborted) {
      refused(failure);
    }
  }
  if (!signal.aborted) {
    by('verdict').classList.remove('busy');
  }
}

// The answer

function show(answered, asked) {
  answer = answered;
  baseline ??= answered.key_figures;
  figures.of(asked, by('theme').value);
  by('answer').classList.remove('without');
  by('stale').hidden = true;
  by('faults-part').hidden = true;
  by('faults').replaceChildren();
  const verdict = verdictText(answered);
  say(answered.verdict, verdict.word, verdict.rest);
  drawFindings(by('findings'), answered.findings, asked, (at) => go(at));
  if (answered.findings.length === 0) {
    by('findings').replaceChildren(element('li', {}, 'Nothing was found.'));
  }
  drawTiles(by('tiles'), answered.key_figures, baseline);
  parts.draw(answered);
  drawAssumptions(by('assumptions'), answered.assumptions, asked, (at) => {
    showTab('form');
    form.add(at);
  });
  by('assumptions-count').textContent = String(answered.assumptions.length);
  by('cautions').replaceChildren(...answered.cautions.map((caution) => element('li', {}, caution)));
  by('cautions-count').textContent = String(answered.cautions.length);
  by('models').replaceChildren(...answered.computed_by.models.map((model) => element('li', {}, model)));
  by('version').textContent = `version ${answered.computed_by.version}`;
  note();
  offerCalls();
}

function refused(failure) {
  const problem = failure instanceof Refused ? failure.problem : undefined;
  const faults = problem?.errors ?? [];
  by('stale').hidden = answer === undefined;
  by('faults-part').hidden = problem === undefined;
  const listed = faults.length > 0 ? faults : [{ at: '', message: problem?.detail ?? problem?.title ?? '' }];
  drawFaults(by('faults'), listed, store.document, (at) => go(at));
  const rest = problem === undefined ? `${address} cannot be reached` : `${count(listed.length, 'thing')} to put right first`;
  say('fault', 'No answer', rest);
  form.note([], faults);
  offerCalls();
}

function note() {
  if (by('faults-part').hidden && answer !== undefined) {
    form.note(answer.findings, []);
  }
}

/** Said aloud only when it is news. */
function say(kind, word, rest) {
  by('verdict').className = `verdict ${kind}`;
  const text = by('verdict-text');
  if (text.dataset.said !== word + rest) {
    text.dataset.said = word + rest;
    text.replaceChildren(element('b', {}, mark(kind, word)), ` ${rest}`);
  }
}

function go(at) {
  showTab('form');
  form.go(at);
}

function showPinned({ detail: { word, at, index } }) {
  const list = word === 'fault' ? by('faults') : by('findings');
  const wanted = word === 'fault' ? `[data-at-fault="${CSS.escape(at)}"]` : `[data-index="${index}"]`;
  const entry = list.querySelector(wanted);
  entry?.focus({ preventScroll: true });
  entry?.scrollIntoView({ block: 'center' });
}

function pictures(name, part) {
  return Array.isArray(part)
    ? part.map((entry, index) => figures.place(`/${name}/${index}`, entry.name))
    : [figures.place(`/${name}`, label(name))];
}

// Help, tabs, files, colours, calls

function showHelp({ detail: { title, text } }) {
  by('help').hidden = text === '';
  by('help').replaceChildren(title === '' ? '' : element('b', {}, `${title}: `), text);
}

function showTab(name) {
  for (const tab of ['form', 'json']) {
    by(`tab-${tab}`).setAttribute('aria-selected', String(tab === name));
    by(`tab-${tab}`).tabIndex = tab === name ? 0 : -1;
    by(`panel-${tab}`).hidden = tab !== name;
  }
  by('unfold').hidden = name !== 'form';
}

function rewrite() {
  try {
    const written = JSON.parse(by('json').value);
    if (typeof written !== 'object' || written === null || Array.isArray(written)) {
      throw new SyntaxError('the document must be an object: { … }');
    }
    by('json-fault').textContent = '';
    store.rewrite(written);
  } catch (failure) {
    by('json-fault').textContent = `Not read: ${failure.message}`;
  }
}

async function openFile() {
  const [file] = by('file').files;
  by('file').value = '';
  if (file === undefined) {
    return;
  }
  try {
    const opened = JSON.parse(await file.text());
    if (typeof opened !== 'object' || opened === null || Array.isArray(opened)) {
      throw new SyntaxError('it holds no document');
    }
    store.open(opened);
  } catch (failure) {
    say('fault', 'Not opened', `${file.name}: ${failure.message}`);
  }
}

function saveFile() {
  const name = String(store.document.name ?? '').toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '');
  const url = URL.createObjectURL(new Blob([`${store.text}\n`], { type: 'application/json' }));
  element('a', { href: url, download: `${name || 'aircraft'}.json` }).click();
  setTimeout(() => URL.revokeObjectURL(url));
  store.saved();
}

/** Everything that the service can be asked about this document. */
function calls() {
  const theme = by('theme').value;
  const ofPart = ([name, part]) =>
    Array.isArray(part)
      ? part.map((entry, index) => ({ text: `${label(name)}: ${entry.name}`, path: pathOf(`/${name}/${index}`, theme), file: `${name}-${index}.svg` }))
      : [{ text: label(name), path: pathOf(`/${name}`, theme), file: `${name}.svg` }];
  return {
    'The whole': [
      { text: 'The review', path: REVIEW },
      { text: 'A sheet to print', path: `${REVIEW}?as=html`, file: 'sheet.html' },
      { text: 'The verdict alone', path: `${REVIEW}?as=text&pick=/verdict` },
    ],
    'One number': Object.keys(answer?.key_figures ?? {}).map((name) => ({ text: label(name), path: `${REVIEW}?as=text&pick=/key_figures/${name}` })),
    'A drawing': partsOf(answer ?? {}).flatMap(ofPart),
  };
}

function offerCalls() {
  const chosen = by('call').value;
  by('call').replaceChildren(
    ...Object.entries(calls())
      .filter(([, group]) => group.length > 0)
      .map(([name, group]) =>
        element('optgroup', { label: name }, ...group.map(({ text, path }) => element('option', { value: path, selected: path === chosen }, text))),
      ),
  );
  showCall();
}

function showCall() {
  const write = by('language').value === 'curl' ? curl : python;
  const call = Object.values(calls()).flat().find(({ path }) => path === by('call').value);
  by('snippet').textContent = call === undefined ? '' : write({ url: address + call.path, body: store.document, file: call.file });
  by('copied').textContent = '';
}

/** The page is opened at once, for browsers let no page open later. */
async function openSheet() {
  const page = window.open('', '_blank');
  try {
    const sheet = await ask(`${REVIEW}?as=html`, posting(store.document, 'text/html'));
    page.location = URL.createObjectURL(new Blob([await sheet.text()], { type: 'text/html;charset=utf-8' }));
  } catch (failure) {
    page?.close();
    refused(failure);
  }
}

function wire(contract, example) {
  by('open').addEventListener('click', () => by('file').click());
  by('file').addEventListener('change', openFile);
  by('save').addEventListener('click', saveFile);
  by('undo').addEventListener('click', () => store.undo());
  by('example').addEventListener('click', () => store.open(structuredClone(example)));
  by('empty').addEventListener('click', () => store.open(contract.blank(contract.request(REVIEW))));
  by('json').addEventListener('input', rewrite);
  by('unfold').addEventListener('click', () => {
    const open = by('unfold').textContent === 'Open all';
    form.openAll(open);
    by('unfold').textContent = open ? 'Close all' : 'Open all';
  });
  by('compare').addEventListener('click', () => {
    baseline = answer?.key_figures;
    drawTiles(by('tiles'), baseline ?? {}, baseline);
  });
  for (const tab of ['form', 'json']) {
    by(`tab-${tab}`).addEventListener('click', () => showTab(tab));
    by(`tab-${tab}`).addEventListener('keydown', (event) => {
      if (event.key === 'ArrowLeft' || event.key === 'ArrowRight') {
        const other = tab === 'form' ? 'json' : 'form';
        showTab(other);
        by(`tab-${other}`).focus();
      }
    });
  }
  by('theme').addEventListener('change', (event) => {
    document.documentElement.dataset.theme = event.target.value;
    if (answer !== undefined) {
      show(answer, store.document);
    }
  });
  by('sheet').addEventListener('click', openSheet);
  by('call').addEventListener('change', showCall);
  by('language').addEventListener('change', showCall);
  by('copy').addEventListener('click', async () => {
    by('copied').textContent = (await copy(by('snippet').textContent)) ? 'Copied.' : 'Select the text below and copy it.';
  });
  window.addEventListener('beforeunload', (event) => {
    if (!store.isSaved) {
      event.preventDefault();
    }
  });
}

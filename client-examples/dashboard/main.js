// The page: what is edited is posted to the service, and what it answers is shown.

import { drawAssumptions, drawEstimates, drawFaults, drawFindings, drawTiles, Parts, partsOf, verdictText } from './answer.js';
import { Begin, isFirstFacts, toGo } from './begin.js';
import { copy, curl, python } from './calls.js';
import { drawChecks, drawNotJudged, judgedText } from './checks.js';
import { drawCompared } from './compare.js';
import { Contract } from './contract.js';
import { element, mark } from './dom.js';
import { keep, kept, whenKeptElsewhere } from './draft.js';
import { Figures, pathOf } from './figures.js';
import { Form } from './form.js';
import { renamed } from './renames.js';
import { address, ask, json, posting, Refused } from './service.js';
import { Store } from './store.js';
import { count, label, plain } from './words.js';

/** An estimate that narrows the band by less is not worth a day at the bench. */
const WORTH_MEASURING_PERCENT = 1;

const REVIEW = '/v1/build-review';

/** A pause in typing that is long enough to compute, ms. */
const PAUSE_MS = 250;

/** An answer that takes this long leaves the last one marked as such, ms. */
const LATE_MS = 1500;

/** No answer takes longer; the service is not there, ms. */
const LONGEST_MS = 30_000;

/** How often a service that was not there is asked again, ms. */
const RETRY_MS = 3000;

const TABS = ['begin', 'form', 'json'];

const by = (id) => document.getElementById(id);
const isWide = window.matchMedia('(min-width: 62rem)');

const store = new Store();
const figures = new Figures();
const parts = new Parts(by('parts'), pictures);
let contract;
let form;
let begin;
/** Whether the document is still being told by its first facts: nothing is asked and nothing is missing until they are there. */
let beginning = false;
let isKept = true;
let answer;
/** The document that the shown answer is of. */
let answered;
let baseline;
/** What is compared with: a document and its answer; undefined while nothing is. */
let before;
/** JSON that could not be read, as it was typed. */
let unread;
let timer;
let asking = new AbortController();
let lateTimer;
let retryTimer;

start();

async function start() {
  by('home').href = `${address}/`;
  try {
    const [openapi, example] = await Promise.all([json('/openapi.json'), json(`${REVIEW}/example`)]);
    contract = new Contract(openapi);
    form = new Form(by('form'), store, contract, contract.request(REVIEW), isWide.matches ? ['', '/airframe'] : ['']);
    begin = new Begin(by('begin'), store, contract, contract.request(REVIEW));
    form.addEventListener('help', showHelp);
    form.addEventListener('pinned', showPinned);
    store.addEventListener('change', changed);
    wire(example);
    const draft = kept();
    if (draft === undefined) {
      beginAnew();
    } else {
      beginning = isFirstFacts(draft) && begin.missing(draft).length > 0;
      store.open(draft);
      showTab(beginning ? 'begin' : 'form');
      tell('The aircraft as this browser kept it. ', element('button', { type: 'button', class: 'small', click: beginAnew }, 'Begin anew'));
    }
  } catch (failure) {
    say('fault', 'No answer', `${address} cannot be reached (${failure.message})`);
  }
}

// The document

/** Nothing is known yet, and nothing is wrong. */
function beginAnew() {
  beginning = true;
  store.open({});
  showTab('begin');
}

function openDocument(document) {
  beginning = false;
  store.open(document);
}

function changed({ detail }) {
  clearTimeout(retryTimer);
  if (detail === 'rewritten') {
    beginning = false;
  }
  if (detail === 'opened') {
    answer = undefined;
    answered = undefined;
    baseline = before?.answer.key_figures;
    unread = undefined;
    tell();
    by('answer').classList.add('without');
    form.forget();
  }
  if (detail !== 'edited') {
    form.draw();
    begin.draw();
    note();
  }
  by('tab-begin').hidden = !isFirstFacts(store.document);
  if (by('tab-begin').hidden && by('tab-begin').getAttribute('aria-selected') === 'true') {
    showTab('form');
  }
  isKept = keep(store.document);
  if (detail !== 'rewritten') {
    keepUnread();
    by('json').value = store.text;
    by('json-fault').textContent = '';
  }
  by('undo').disabled = !store.canUndo;
  by('redo').disabled = !store.canRedo;
  clearTimeout(timer);
  clearTimeout(lateTimer);
  const missing = beginning && answer === undefined ? begin.missing() : [];
  if (missing.length > 0) {
    asking.abort();
    asking = new AbortController();
    by('verdict').classList.remove('busy');
    by('faults-part').hidden = true;
    begin.note([]);
    form.note([], []);
    say('none', 'No answer yet', toGo(missing));
    return;
  }
  by('verdict').classList.add('busy');
  lateTimer = setTimeout(markStale, LATE_MS);
  timer = setTimeout(compute, detail === 'opened' ? 0 : PAUSE_MS);
}

/** The last change wins: an answer that was overtaken is not shown. */
async function compute() {
  asking.abort();
  asking = new AbortController();
  const mine = asking;
  const { signal } = mine;
  const limit = setTimeout(() => mine.abort(), LONGEST_MS);
  const asked = structuredClone(store.document);
  try {
    const response = await ask(REVIEW, posting(asked, 'application/json', signal));
    const given = await response.json();
    if (!signal.aborted) {
      show(given, asked);
    }
  } catch (failure) {
    if (mine === asking) {
      refused(signal.aborted ? new Error(`no answer within ${LONGEST_MS / 1000} s`) : failure);
      if (!(failure instanceof Refused)) {
        retryTimer = setTimeout(compute, RETRY_MS);
      }
    }
  }
  clearTimeout(limit);
  if (mine === asking) {
    clearTimeout(lateTimer);
    by('verdict').classList.remove('busy');
  }
}

/** Says so where the shown answer is not that of the document as it is now. */
function markStale() {
  const stale = answer !== undefined && JSON.stringify(answered) !== JSON.stringify(store.document);
  by('stale').hidden = !stale && unread === undefined;
  by('verdict').classList.toggle('old', stale);
}

// The answer

function show(given, asked) {
  answer = given;
  answered = asked;
  begin.note([]);
  baseline ??= given.key_figures;
  figures.of(asked, by('theme').value);
  by('answer').classList.remove('without');
  markStale();
  by('faults-part').hidden = true;
  by('faults').replaceChildren();
  const verdict = verdictText(given);
  say(given.verdict, verdict.word, verdict.rest);
  drawFindings(by('findings'), given.findings, asked, (at) => go(at));
  if (given.findings.length === 0) {
    by('findings').replaceChildren(element('li', {}, 'Nothing was found.'));
  }
  drawNotJudged(by('not-judged'), given.checks, asked, give);
  by('not-judged-part').hidden = by('not-judged').childElementCount === 0;
  drawChecks(by('checks'), given.checks);
  by('checks-count').textContent = judgedText(given.checks);
  drawTiles(by('tiles'), given.key_figures, baseline, given.bands);
  compared();
  estimated(given.estimates ?? [], asked);
  form.estimated(given.estimates ?? []);
  order(given.verdict);
  parts.draw(given);
  drawAssumptions(by('assumptions'), given.assumptions, asked, give);
  by('assumptions-count').textContent = String(given.assumptions.length);
  by('cautions').replaceChildren(...given.cautions.map((caution) => element('li', {}, caution)));
  by('cautions-count').textContent = `${count(given.cautions.length, 'caution')} for this aircraft`;
  by('models').replaceChildren(...given.computed_by.models.map((model) => element('li', {}, model)));
  by('version').textContent = `version ${given.computed_by.version}`;
  note();
  offerCalls();
}

function compared() {
  by('compared-part').hidden = before === undefined;
  if (before !== undefined) {
    drawCompared(by('compared'), before, { document: answered, answer }, go);
  }
}

/** While most is estimated, the bands and what to measure first lead, unless something stops the flight. */
function order(verdict) {
  const isRough = verdict !== 'stop' && isFirstFacts(store.document);
  const [first, second] = isRough ? [by('estimates-part'), by('findings-part')] : [by('not-judged-part'), by('figures-part')];
  if (first.nextElementSibling !== second) {
    by(isRough ? 'faults-part' : 'not-judged-part').after(by('figures-part'), by('estimates-part'));
  }
}

/** What hardly moves the answer is folded away. */
function estimated(estimates, asked) {
  const first = estimates.filter(({ narrows_percent: narrows }) => narrows >= WORTH_MEASURING_PERCENT);
  const rest = estimates.filter((estimate) => !first.includes(estimate));
  by('estimates-part').hidden = estimates.length === 0;
  drawEstimates(by('estimates'), first, asked, give);
  drawEstimates(by('estimates-small'), rest, asked, give);
  by('estimates-rest').hidden = rest.length === 0;
  by('estimates-count').textContent = String(rest.length);
}

function refused(failure) {
  const problem = failure instanceof Refused ? failure.problem : undefined;
  const faults = problem?.errors ?? [];
  markStale();
  by('faults-part').hidden = problem === undefined;
  const listed = faults.length > 0 ? faults : [{ at: '', message: problem?.detail ?? problem?.title ?? '' }];
  drawFaults(by('faults'), listed, store.document, (at) => go(at));
  const rest = problem === undefined ? `${address} cannot be reached (${failure.message})` : `${count(listed.length, 'thing')} to put right first`;
  say('fault', 'No answer', rest);
  form.note([], faults);
  begin.note(faults);
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

/** Puts a field in, and goes there. */
function give(at) {
  showTab('form');
  form.add(at);
}

/** A line above the answer about the document itself; none without words. */
function tell(...words) {
  by('opened').hidden = words.length === 0;
  by('opened').replaceChildren(...words);
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

/** A part that no calculation of its own answers, such as a go-around, has no figure to ask for. */
function pictures(name, part) {
  if (!Array.isArray(part) && part.verdict === undefined) {
    return [];
  }
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
  for (const tab of TABS) {
    by(`tab-${tab}`).setAttribute('aria-selected', String(tab === name));
    by(`tab-${tab}`).tabIndex = tab === name ? 0 : -1;
    by(`panel-${tab}`).hidden = tab !== name;
  }
  by('unfold').hidden = name !== 'form';
  if (name === 'begin') {
    begin.draw();
  }
}

function rewrite() {
  try {
    const written = JSON.parse(by('json').value);
    if (typeof written !== 'object' || written === null || Array.isArray(written)) {
      throw new SyntaxError('the document must be an object: { … }');
    }
    by('json-fault').textContent = '';
    unread = undefined;
    store.rewrite(written);
  } catch (failure) {
    by('json-fault').textContent = `Not read: ${failure.message}`;
    unread = by('json').value;
    clearTimeout(timer);
    asking.abort();
    asking = new AbortController();
    by('verdict').classList.remove('busy');
    say('fault', 'Not read', 'the JSON has to be put right first');
    markStale();
  }
}

/** Text that was not read is not lost to a change in the form. */
function keepUnread() {
  const text = unread;
  unread = undefined;
  if (text !== undefined) {
    const back = element('button', { type: 'button', class: 'small', click: () => bringBack(text) }, 'Bring it back');
    tell('The JSON that could not be read has made way for the form. ', back);
  }
}

function bringBack(text) {
  tell();
  showTab('json');
  by('json').value = text;
  rewrite();
}

async function openFile() {
  const [file] = by('file').files;
  by('file').value = '';
  if (file === undefined) {
    return;
  }
  try {
    const read = JSON.parse(await file.text());
    if (typeof read !== 'object' || read === null || Array.isArray(read)) {
      throw new SyntaxError('it holds no document');
    }
    const { document, renames } = renamed(read, contract, contract.request(REVIEW));
    openDocument(document);
    showTab('form');
    if (renames.size > 0) {
      const said = [...renames].map(([old, now]) => `“${plain(old)}” is now “${plain(now)}”`);
      tell(`${file.name} is of an earlier version: ${said.join(', ')}. Save it to keep the new names.`);
    }
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

function wire(example) {
  by('open').addEventListener('click', () => by('file').click());
  by('file').addEventListener('change', openFile);
  by('save').addEventListener('click', saveFile);
  by('undo').addEventListener('click', () => store.undo());
  by('redo').addEventListener('click', () => store.redo());
  by('example').addEventListener('click', () => {
    openDocument(structuredClone(example));
    showTab('form');
  });
  by('empty').addEventListener('click', () => {
    beginAnew();
    begin.focus();
  });
  whenKeptElsewhere(() =>
    tell(
      'Another page of this browser has changed the aircraft that is kept. ',
      element('button', { type: 'button', class: 'small', click: () => openDocument(kept() ?? store.document) }, 'Take that one'),
    ),
  );
  by('json').addEventListener('input', rewrite);
  by('unfold').addEventListener('click', () => {
    const open = by('unfold').textContent === 'Open all';
    form.openAll(open);
    by('unfold').textContent = open ? 'Close all' : 'Open all';
  });
  by('compare').addEventListener('click', () => {
    if (answer !== undefined) {
      before = { document: answered, answer };
      baseline = answer.key_figures;
      drawTiles(by('tiles'), baseline, baseline, answer.bands);
      compared();
    }
  });
  by('compare-end').addEventListener('click', () => {
    before = undefined;
    compared();
  });
  for (const tab of TABS) {
    by(`tab-${tab}`).addEventListener('click', () => showTab(tab));
    by(`tab-${tab}`).addEventListener('keydown', (event) => {
      if (event.key === 'ArrowLeft' || event.key === 'ArrowRight') {
        const seen = TABS.filter((name) => !by(`tab-${name}`).hidden);
        const step = event.key === 'ArrowLeft' ? seen.length - 1 : 1;
        const other = seen[(seen.indexOf(tab) + step) % seen.length];
        showTab(other);
        by(`tab-${other}`).focus();
      }
    });
  }
  by('theme').addEventListener('change', (event) => {
    document.documentElement.dataset.theme = event.target.value;
    if (answer !== undefined) {
      figures.of(answered, event.target.value);
      parts.draw(answer);
      offerCalls();
    }
  });
  by('sheet').addEventListener('click', openSheet);
  by('call').addEventListener('change', showCall);
  by('language').addEventListener('change', showCall);
  by('copy').addEventListener('click', async () => {
    by('copied').textContent = (await copy(by('snippet').textContent)) ? 'Copied.' : 'Select the text below and copy it.';
  });
  window.addEventListener('beforeunload', (event) => {
    if (!isKept && !store.isSaved) {
      event.preventDefault();
    }
  });
}

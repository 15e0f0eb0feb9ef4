// Numbers beside the figures. Each card has one address, that of its figure; asked for JSON it gives the numbers.
// The service must let this page's origin ask: java -jar trestle.jar --allowed-origins http://127.0.0.1:9000

const cards = [...document.querySelectorAll('.card')];

/** Value at a JSON Pointer. */
function at(answer, pointer) {
  return pointer.slice(1).split('/').reduce((value, name) => value?.[name], answer);
}

/** How the checks came out, and the cautions of the answer; nothing without one. */
function show(card, answer) {
  const outcomes = answer?.checks.map((check) => check.outcome) ?? [];
  const of = (...wanted) => outcomes.filter((outcome) => wanted.includes(outcome)).length;
  card.querySelector('.checked').textContent =
    answer && `Checks: ${of('passed')} passed, ${of('attention', 'stop')} not passed, ${of('not_judged')} not judged.`;
  const cautions = card.querySelector('.cautions');
  cautions.hidden = answer === undefined;
  cautions.querySelector('ul').replaceChildren(
    ...(answer?.cautions ?? []).map((caution) => Object.assign(document.createElement('li'), { textContent: caution })),
  );
}

async function fill(card) {
  const url = new URL(card.querySelector('img').src);
  url.searchParams.delete('as');
  const says = card.querySelector('.says');
  try {
    const response = await fetch(url);
    const answer = await response.json();
    // A refusal is a problem (RFC 9457) that names every wrong field.
    const wrong = answer.errors?.map((error) => error.message) ?? [answer.detail ?? answer.title];
    show(card, response.ok ? answer : undefined);
    says.textContent = response.ok ? answer.findings.map((finding) => finding.message).join(' ') : wrong.join('; ');
    for (const place of card.querySelectorAll('[data-at]')) {
      const value = response.ok ? at(answer, place.dataset.at) : undefined;
      place.textContent = typeof value === 'number' ? value.toFixed(Number(place.dataset.digits)) : (value ?? '–');
    }
  } catch {
    show(card, undefined);
    says.textContent = 'The service does not answer, or does not let this page ask.';
  }
}

/** The day's weather goes into every address that has the field. */
function weather(input) {
  for (const card of cards) {
    const image = card.querySelector('img');
    const url = new URL(image.src);
    const fields = input.dataset.sets.split(' ').filter((field) => url.searchParams.has(field));
    if (fields.length > 0) {
      fields.forEach((field) => url.searchParams.set(field, input.value));
      image.src = url;
      fill(card);
    }
  }
}

document.getElementById('day').addEventListener('change', (event) => weather(event.target));
document.getElementById('day').addEventListener('submit', (event) => event.preventDefault());
cards.forEach(fill);

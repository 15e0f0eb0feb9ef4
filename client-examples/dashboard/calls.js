// The calls of this page, to be typed elsewhere.

/** A command line: the document comes from its own text, so that nothing has to be saved first. */
export function curl({ url, body, accept }) {
  const type = accept === 'application/json' ? '' : ` -H 'Accept: ${accept}'`;
  if (body === undefined) {
    return `curl -s${type} '${url}'\n`;
  }
  return `curl -s${type} --json @- '${url}' <<'JSON'\n${JSON.stringify(body, undefined, 2)}\nJSON\n`;
}

/** A script for the standard library of Python. */
export function python({ url, body, accept }) {
  const reads = accept === 'application/json' ? 'print(json.dumps(json.load(answer), indent=2))' : 'print(answer.read().decode())';
  if (body === undefined) {
    return `import json
import urllib.request

with urllib.request.urlopen('${url}') as answer:
    ${reads}
`;
  }
  // Raw text keeps the backslashes of JSON; an apostrophe could end it.
  const document = JSON.stringify(body, undefined, 2).replaceAll("'", '\\u0027');
  return `import json
import urllib.request

document = json.loads(r'''
${document}
''')
request = urllib.request.Request(
    '${url}',
    json.dumps(document).encode(),
    {'Content-Type': 'application/json', 'Accept': '${accept}'},
)
with urllib.request.urlopen(request) as answer:
    ${reads}
`;
}

/** Puts text on the clipboard; true when it is there. Without a secure context there is only the old way. */
export async function copy(text) {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    const area = document.createElement('textarea');
    const focused = document.activeElement;
    area.value = text;
    area.className = 'unseen';
    document.body.append(area);
    area.select();
    const copied = document.execCommand('copy');
    area.remove();
    focused?.focus();
    return copied;
  }
}

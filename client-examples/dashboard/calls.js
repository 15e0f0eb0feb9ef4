// The calls of this page, to be typed elsewhere.

/** A command line for a Unix shell and any curl: the document comes from its own text, so that nothing has to be saved first. */
export function curl({ url, body, file }) {
  const out = file === undefined ? '' : ` -o ${file}`;
  return `curl -s${out} -H 'Content-Type: application/json' --data-binary @- '${url}' <<'JSON'\n${JSON.stringify(body, undefined, 2)}\nJSON\n`;
}

/** A script for the standard library of Python. */
export function python({ url, body, file }) {
  // Raw text keeps the backslashes of JSON; an apostrophe could end it.
  const document = JSON.stringify(body, undefined, 2).replaceAll("'", '\\u0027');
  const keep = file === undefined ? 'print(answer.read().decode())' : `open('${file}', 'wb').write(answer.read())`;
  return `import urllib.request

document = r'''
${document}
'''
request = urllib.request.Request('${url}', document.encode(), {'Content-Type': 'application/json'})
with urllib.request.urlopen(request) as answer:
    ${keep}
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

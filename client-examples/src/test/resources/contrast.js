// Text whose contrast with what is behind it is below 4.5 (WCAG 2.2, success criterion 1.4.3).
const LEAST = 4.5;

function parsed(colour) {
  const [red, green, blue, alpha = 1] = colour.match(/[\d.]+/g).map(Number);
  return { red, green, blue, alpha };
}

function over(front, back) {
  const mixed = (part) => front[part] * front.alpha + back[part] * (1 - front.alpha);
  return { red: mixed('red'), green: mixed('green'), blue: mixed('blue'), alpha: 1 };
}

function behind(element) {
  if (element === null) {
    return { red: 255, green: 255, blue: 255, alpha: 1 };
  }
  const own = parsed(getComputedStyle(element).backgroundColor);
  return own.alpha === 1 ? own : over(own, behind(element.parentElement));
}

function luminance({ red, green, blue }) {
  const linear = [red, green, blue].map((part) => (part / 255 <= 0.04045 ? part / 255 / 12.92 : ((part / 255 + 0.055) / 1.055) ** 2.4));
  return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
}

const pale = new Set();
const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
for (let text = walker.nextNode(); text !== null; text = walker.nextNode()) {
  const element = text.parentElement;
  if (text.textContent.trim() === '' || !element.checkVisibility() || element.closest('.unseen, noscript, option') || element.closest(':disabled')) {
    continue;
  }
  const back = behind(element);
  const [lighter, darker] = [luminance(over(parsed(getComputedStyle(element).color), back)), luminance(back)].sort((a, b) => b - a);
  const ratio = (lighter + 0.05) / (darker + 0.05);
  if (ratio < LEAST) {
    pale.add(`${ratio.toFixed(1)} ${element.tagName}.${element.className}: ${text.textContent.trim().slice(0, 40)}`);
  }
}
return [...pale];

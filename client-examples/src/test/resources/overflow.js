// What sticks out of the window, or out of its own box, where nothing scrolls.
const out = [];
if (document.documentElement.scrollWidth > innerWidth) {
  out.push(`the page is ${document.documentElement.scrollWidth} px wide`);
}
for (const element of document.querySelectorAll('body *')) {
  if (!element.checkVisibility() || element.closest('.unseen, .skip, .wide, pre, textarea, svg') || element.closest('[class*="word"]')) {
    continue;
  }
  const box = element.getBoundingClientRect();
  if (box.width > 0 && (box.right > innerWidth + 1 || box.left < -1)) {
    out.push(`${element.tagName}.${element.className} ends at ${box.right}`);
  }
  const parent = element.parentElement.getBoundingClientRect();
  if (element.matches('button, input, select, label, legend, h3, h4, p, dd, dt, .field') && box.right > parent.right + 2) {
    out.push(`${element.tagName}.${element.className} sticks out by ${box.right - parent.right}: ${element.textContent.slice(0, 40)}`);
  }
}
return out;

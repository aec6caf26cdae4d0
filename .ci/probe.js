// Finds what is wrong with a sheet as a browser lays it out, one line each.
const wrong = new Set();
const short = (text) => JSON.stringify(text.trim().slice(0, 40));

// Lettering over other lettering in a drawing, or outside of it. A tenth of a
// millimetre is what rounding may take.
for (const svg of document.querySelectorAll("svg.drawing")) {
  const name = svg.dataset.drawing, sheet = svg.viewBox.baseVal;
  const texts = [...svg.querySelectorAll("text")].map((t) => ({ words: t.textContent, box: t.getBBox(), size: parseFloat(getComputedStyle(t).fontSize) }));
  // A box is as high as the face's tallest letter and deepest tail; what is read is
  // from the baseline up to the capitals.
  for (const t of texts) t.box = { left: t.box.x, right: t.box.x + t.box.width, top: t.box.y + 0.2 * t.size, bottom: t.box.y + t.box.height - 0.2 * t.size };
  texts.forEach((a, i) => {
    if (a.box.left < -0.1 || a.box.right > sheet.width + 0.1 || a.box.top < -0.1 || a.box.bottom > sheet.height + 0.1)
      wrong.add(`${name}: ${short(a.words)} is outside the drawing`);
    for (const b of texts.slice(i + 1))
      if (a.box.left + 0.1 < b.box.right && b.box.left + 0.1 < a.box.right && a.box.top + 0.1 < b.box.bottom && b.box.top + 0.1 < a.box.bottom)
        wrong.add(`${name}: ${short(a.words)} lies over other lettering, ${short(b.words)}`);
  });
}

// Elements that stick out of the window or out of what holds them, but where that
// scrolls.
const scrolls = (e) => e && e !== document.body && (["auto", "scroll"].includes(getComputedStyle(e).overflowX) || scrolls(e.parentElement));
const width = document.documentElement.clientWidth;
for (const e of document.body.querySelectorAll("*:not(script)")) {
  if (e.closest("svg") || scrolls(e)) continue;
  if (e.getBoundingClientRect().right > width + 1) wrong.add(`<${e.localName}> ${short(e.textContent)} is outside the window`);
  if (e.clientWidth > 0 && e.scrollWidth > e.clientWidth + 1) wrong.add(`<${e.localName}> ${short(e.textContent)} runs outside its box`);
}

// Every word has to be on every print-out, whole or over a line break.
const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
const words = new Set();
for (let t = texts.nextNode(); t; t = texts.nextNode())
  if (!t.parentElement.closest("title, desc, script, .on-screen"))
    for (const word of t.data.replace(/</g, " ").split(/\s+/)) if (word.length < 60) words.add(word);
for (const paper of document.querySelectorAll(".printed")) {
  const printed = paper.textContent.replace(/[\s\u00ad]+/g, "");
  for (const word of words) if (!printed.includes(word)) wrong.add(`${short(word)} is not on the print-out on ${paper.dataset.paper}`);
}

const list = document.createElement("pre");
list.id = "probed";
list.className = "probed";
list.textContent = "\n" + [...wrong].join("\n") + "\n";
document.body.append(list);

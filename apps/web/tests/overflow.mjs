// What does not fit on the screen: a page wider than the screen, text cut off by its own box, text that leaves its control or its
// drawing, a word broken in two, and text that lies over other text. Runs in the page.
export async function overflows(page, allowed) {
  const first = await misfits(page, allowed);
  if (first.length === 0) return first;
  await page.waitForTimeout(400);  // what measures itself may be a frame late
  return misfits(page, allowed);
}

function misfits(page, allowed) {
  return page.evaluate((allowed) => {
    const found = [];
    const name = (element) => `${element.tagName.toLowerCase()}.${String(element.getAttribute('class') ?? '').replace(/ ?svelte-\w+/g, '')} "${element.textContent.trim().replace(/\s+/g, ' ').slice(0, 60)}"`;
    const isAllowed = (element) => allowed.some((selector) => element.closest(selector));
    const shown = (element) => element.checkVisibility({ opacityProperty: true, visibilityProperty: true }) && !element.closest('.unseen, .skip');
    const floats = (element) => {
      for (let around = element; around && around.tagName !== 'DIALOG'; around = around.parentElement) if (['sticky', 'fixed'].includes(getComputedStyle(around).position)) return true;
      return false;
    };
    /** Not scrolled out of a list that scrolls by itself. */
    const inSight = (element, rect) => {
      for (let around = element; around && around !== document.body; around = around.parentElement) {
        if (getComputedStyle(around).overflowY === 'visible') continue;
        const frame = around.getBoundingClientRect();
        if (rect.bottom <= frame.top + 1 || rect.top >= frame.bottom - 1 || rect.right <= frame.left || rect.left >= frame.right) return false;
      }
      return true;
    };
    if (document.scrollingElement.scrollWidth > innerWidth) found.push(`the page is ${document.scrollingElement.scrollWidth} px wide on ${innerWidth}`);
    for (const dialog of document.querySelectorAll('dialog[open]')) if (dialog.scrollWidth > dialog.clientWidth + 1) found.push(`a dialog is ${dialog.scrollWidth} px wide in ${dialog.clientWidth}`);

    for (const element of document.querySelectorAll('body *:not(svg *)')) {
      if (element.clientWidth === 0 || !shown(element) || isAllowed(element) || element instanceof HTMLInputElement) continue;
      const style = getComputedStyle(element);
      const cuts = style.overflowX === 'hidden' || style.overflowX === 'clip' || style.textOverflow === 'ellipsis';
      if (cuts && element.scrollWidth > element.clientWidth + 1) found.push(`cut off sideways: ${name(element)} ${element.scrollWidth} in ${element.clientWidth}`);
      if ((style.overflowY === 'hidden' || style.overflowY === 'clip') && element.textContent.trim() && element.scrollHeight > element.clientHeight + 2) found.push(`cut off below: ${name(element)} ${element.scrollHeight} in ${element.clientHeight}`);
    }

    const controls = 'button, label, a, legend, th, td, summary, input';
    const lines = [];
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walk.nextNode()) {
      const node = walk.currentNode;
      const parent = node.parentElement;
      if (!/\p{L}/u.test(node.textContent) || !shown(parent) || isAllowed(parent) || parent.closest('script, style, noscript')) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const box = range.getBoundingClientRect();
      if (box.width === 0) continue;
      const svg = parent.closest('svg');
      if (!svg && !parent.closest('code, .hash, .mono')) {
        for (const word of node.textContent.matchAll(/\p{L}{4,}/gu)) {
          range.setStart(node, word.index);
          range.setEnd(node, word.index + word[0].length);
          if (new Set([...range.getClientRects()].map((rect) => Math.round(rect.top))).size > 1) found.push(`broken in two: "${word[0]}" of "${node.textContent.trim().slice(0, 60)}"`);
        }
        range.selectNodeContents(node);
      }
      // What floats above the page lies over text on purpose, and so do the names on a drawing over one another's halo.
      if (!svg && !floats(parent)) for (const rect of range.getClientRects()) if (inSight(parent, rect)) lines.push({ rect, text: node.textContent.trim(), layer: parent.closest('dialog') });
      const around = svg ?? parent.closest(controls);
      if (!around) continue;
      const frame = around.getBoundingClientRect();
      if (box.left < frame.left - 1 || box.right > frame.right + 1) found.push(`leaves its ${svg ? 'drawing' : around.tagName.toLowerCase()}: "${node.textContent.trim().slice(0, 60)}" ${box.left.toFixed(0)} to ${box.right.toFixed(0)} in ${frame.left.toFixed(0)} to ${frame.right.toFixed(0)}`);
    }
    for (let i = 0; i < lines.length; i++) {
      for (let k = i + 1; k < lines.length; k++) {
        const [a, b] = [lines[i], lines[k]];
        if (a.layer !== b.layer) continue;
        const across = Math.min(a.rect.right, b.rect.right) - Math.max(a.rect.left, b.rect.left);
        // The box of a line is taller than its letters.
        const letters = ({ rect }) => [rect.top + 0.2 * rect.height, rect.bottom - 0.2 * rect.height];
        const down = Math.min(letters(a)[1], letters(b)[1]) - Math.max(letters(a)[0], letters(b)[0]);
        if (across > 2 && down > 1) found.push(`"${a.text.slice(0, 40)}" lies over "${b.text.slice(0, 40)}"`);
      }
    }
    return [...new Set(found)];
  }, allowed);
}

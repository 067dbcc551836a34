// What does not fit on the screen: a page wider than the screen, text cut off by its own box, text that leaves its control,
// and text of a drawing that leaves the drawing. Runs in the page.
export async function overflows(page, allowed) {
  return page.evaluate((allowed) => {
    const found = [];
    const name = (element) => `${element.tagName.toLowerCase()}.${String(element.getAttribute('class') ?? '').replace(/ ?svelte-\w+/g, '')} "${element.textContent.trim().replace(/\s+/g, ' ').slice(0, 60)}"`;
    const isAllowed = (element) => allowed.some((selector) => element.closest(selector));
    const shown = (element) => element.checkVisibility({ opacityProperty: true, visibilityProperty: true }) && !element.closest('.unseen, .skip');
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
      const around = svg ?? parent.closest(controls);
      if (!around) continue;
      const frame = around.getBoundingClientRect();
      if (box.left < frame.left - 1 || box.right > frame.right + 1) found.push(`leaves its ${svg ? 'drawing' : around.tagName.toLowerCase()}: "${node.textContent.trim().slice(0, 60)}" ${box.left.toFixed(0)} to ${box.right.toFixed(0)} in ${frame.left.toFixed(0)} to ${frame.right.toFixed(0)}`);
    }
    return [...new Set(found)];
  }, allowed);
}

/** Scrolls a list that scrolls by itself until its pressed row is in view; the page stays where it is. */
export function chosenInView(list: HTMLElement | undefined): void {
  const row = list?.querySelector('[aria-pressed="true"]');
  if (!list || !row) return;
  const frame = list.getBoundingClientRect();
  const box = row.getBoundingClientRect();
  if (box.top < frame.top) list.scrollTop += box.top - frame.top;
  else if (box.bottom > frame.bottom) list.scrollTop += box.bottom - frame.bottom;
}

/**
 * Action of a list that scrolls by itself: scrolls it until its pressed row is in view, anew when `what` it depends on
 * changes. The page stays where it is.
 */
export function chosenInView(list: HTMLElement, _what: unknown): { update: () => void } {
  function update(): void {
    const row = list.querySelector('[aria-pressed="true"]');
    if (!row) return;
    const frame = list.getBoundingClientRect();
    const box = row.getBoundingClientRect();
    if (box.top < frame.top) list.scrollTop += box.top - frame.top;
    else if (box.bottom > frame.bottom) list.scrollTop += box.bottom - frame.bottom;
  }
  update();
  return { update };
}

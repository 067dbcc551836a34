/** Acts once the browser has drawn what has changed so far. A hidden page draws nothing: there it acts at once. */
export function afterPicture(act: () => void): void {
  if (document.visibilityState === 'hidden') setTimeout(act);
  else requestAnimationFrame(() => setTimeout(act));
}

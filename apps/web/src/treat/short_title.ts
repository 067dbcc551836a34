// The name of an edge for a glance: its first word and its last ones, without those it can do without.
export function shortTitle(title: string, fillers: string[], words = 4): string {
  const kept = title.replaceAll(',', ' ').split(/\s+/).filter((word) => word !== '' && !fillers.includes(word.toLowerCase()));
  const figure = (word: string) => /^\d+$/.test(word);
  let count = kept.filter((word) => !figure(word)).length;
  // What it is stands first, where it is stands last: the middle goes.
  return kept.filter((word, i) => i === 0 || figure(word) || count-- <= words).join(' ');
}

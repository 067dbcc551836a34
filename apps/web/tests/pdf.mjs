// What a PDF says of itself, read from its bytes: enough to see that it is tagged, in which language, on which paper.
// Chromium writes the objects concerned uncompressed.
const k_points_rounded = (text) => Math.round(Number(text));

export function facts(pdf) {
  const text = Buffer.from(pdf).toString('latin1');
  return {
    tagged: /\/MarkInfo\s*<<[^>]*\/Marked true/.test(text) && /\/StructTreeRoot\s+\d+ 0 R/.test(text) && /\/Type\s*\/StructTreeRoot/.test(text),
    language: text.match(/\/Lang\s*\(([^)]*)\)/)?.[1] ?? null,
    title: text.match(/\/Title\s*\(([^)]*)\)/)?.[1] ?? null,
    headings: (text.match(/\/S\s*\/H[1-6]\b/g) ?? []).length,
  };
}

export function pages(pdf) {
  return (Buffer.from(pdf).toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;
}

export function paper(pdf) {
  const box = Buffer.from(pdf).toString('latin1').match(/\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)\s*\]/);
  return box ? [k_points_rounded(box[1]), k_points_rounded(box[2])] : null;
}

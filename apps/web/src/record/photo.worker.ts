// Makes photos smaller, away from the page: a picture of many megapixels never holds up a finger. What the camera wrote
// beside the pixels, the position among it, is left behind.
const k_longest_side = 2048;  // pixels: a bug of 5 mm filling a tenth of the picture still has 200 (judgement)
const k_quality = 0.85;

export type Smaller = { ok: true; bytes: Blob; width: number; height: number } | { ok: false; why: 'unreadable' | 'empty' };

async function smaller(file: Blob): Promise<Smaller> {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => null);
  if (!picture) return { ok: false, why: 'unreadable' };
  const share = Math.min(1, k_longest_side / Math.max(picture.width, picture.height));
  const width = Math.max(1, Math.round(picture.width * share)), height = Math.max(1, Math.round(picture.height * share));
  const canvas = new OffscreenCanvas(width, height);
  const paint = canvas.getContext('2d');
  if (!paint) return { ok: false, why: 'unreadable' };
  paint.drawImage(picture, 0, 0, width, height);
  picture.close();
  const pixels = paint.getImageData(0, 0, Math.min(64, width), Math.min(64, height)).data;
  if (pixels.every((value, i) => i % 4 !== 3 || value === 0)) return { ok: false, why: 'empty' };
  return { ok: true, bytes: await canvas.convertToBlob({ type: 'image/jpeg', quality: k_quality }), width, height };
}

self.onmessage = async ({ data }: MessageEvent<{ file: Blob }>) => {
  self.postMessage(await smaller(data.file).catch((): Smaller => ({ ok: false, why: 'unreadable' })));
};

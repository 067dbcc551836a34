// A photo on its way into the record: made smaller, its position data and everything else of the camera left behind.
// Blobs are kept before the fact that names them, so that no fact names what is not there.
import { words } from '../words/words';
import { job } from './job.svelte';
import { worker } from './record';
import { uuidv7 } from './uuid';

const k_longest_side = 2048;  // pixels: a bug of 5 mm filling a tenth of the picture still has 200 (judgement)
const k_quality = 0.85;

export interface Where { room?: string; item?: string; edge?: string; of?: string }

async function smaller(file: Blob): Promise<{ bytes: Blob; width: number; height: number }> {
  const size = await createImageBitmap(file, { imageOrientation: 'from-image' });
  const share = Math.min(1, k_longest_side / Math.max(size.width, size.height));
  const width = Math.max(1, Math.round(size.width * share)), height = Math.max(1, Math.round(size.height * share));
  const canvas = new OffscreenCanvas(width, height);
  const paint = canvas.getContext('2d');
  if (!paint) throw new Error(words.inspect.photos.notDrawn);
  paint.drawImage(size, 0, 0, width, height);
  size.close();
  const pixels = paint.getImageData(0, 0, Math.min(64, width), Math.min(64, height)).data;
  const empty = pixels.every((value, i) => i % 4 === 3 ? value === 0 : true);
  if (empty) throw new Error(words.inspect.photos.cameEmpty);
  return { bytes: await canvas.convertToBlob({ type: 'image/jpeg', quality: k_quality }), width, height };
}

/** Keeps a photo and states where it was taken. Throws an Error with a plain sentence when the file is no picture. */
export async function keepPhoto(file: Blob, where: Where): Promise<string> {
  if (!job.id) throw new Error(words.inspect.photos.noJob);
  const { bytes, width, height } = await smaller(file).catch((error: unknown) => {
    throw new Error(error instanceof Error && error.message === words.inspect.photos.cameEmpty ? error.message : words.inspect.photos.notAPicture);
  });
  const { hash } = await worker.say('keepBlob', { job: job.id, bytes });
  const id = uuidv7();
  await job.write('photo/1', id, { ...where, blob: hash, media_type: bytes.type, width, height, bytes: bytes.size });
  return id;
}

/** The picture behind a photo, or null when its blob is not on this device. */
export async function photoUrl(blob: string): Promise<string | null> {
  if (!job.id) return null;
  const bytes = await worker.say('blob', { job: job.id, hash: blob });
  return bytes ? URL.createObjectURL(bytes) : null;
}

// UUID version 7 (RFC 9562 section 5.7): 48 bits of milliseconds, then random bits. The clock only orders ids roughly;
// nothing in the record depends on it, so a wrong clock never stops a fact from being saved.
export function uuidv7(milliseconds = Date.now()): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  let rest = Math.max(0, Math.floor(Number.isFinite(milliseconds) ? milliseconds : 0));
  for (let i = 5; i >= 0; i--) {
    bytes[i] = rest % 256;
    rest = Math.floor(rest / 256);
  }
  bytes[6] = 0x70 | (bytes[6]! & 0x0f);
  bytes[8] = 0x80 | (bytes[8]! & 0x3f);
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`;
}

/** Milliseconds of the moment an id was made; NaN for ids of other versions. */
export function timeOf(id: string): number {
  return /^[0-9a-f]{8}-[0-9a-f]{4}-7/.test(id) ? parseInt(id.slice(0, 8) + id.slice(9, 13), 16) : NaN;
}

/** The device's wall time as RFC 3339 text with its own offset; the epoch when the clock is broken. */
export function wallTime(now = new Date()): string {
  if (Number.isNaN(now.getTime())) return '1970-01-01T00:00:00Z';
  const minutes = -now.getTimezoneOffset();
  const two = (value: number) => String(Math.floor(Math.abs(value))).padStart(2, '0');
  const local = new Date(now.getTime() + minutes * 60000).toISOString().slice(0, 19);
  return `${local}${minutes < 0 ? '-' : '+'}${two(minutes / 60)}:${two(minutes % 60)}`;
}

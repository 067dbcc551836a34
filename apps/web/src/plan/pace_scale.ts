// The log scale every pace bar of the plan shares: 1 to 100 mm/s.
export const k_least = 0.001;
export const k_most = 0.1;
export const k_inch_per_second = 0.0254;
/** The range of paces that the engine looks at (treatments/steam/pace/pace.h). */
export const k_slowest_looked_at = 0.002;
export const k_fastest_looked_at = 0.045;
export const k_glide_floor = 0.01;

/** Share of the bar's width, 0 to 1, clamped to the scale. */
export function along(metresPerSecond: number): number {
  const share = Math.log(metresPerSecond / k_least) / Math.log(k_most / k_least);
  return Math.min(1, Math.max(0, share));
}

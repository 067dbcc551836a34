// Words of a variety of a language: only the entries that differ, laid over the whole.
export type Overlay<Whole> = {
  [Key in keyof Whole]?: Whole[Key] extends (...args: never[]) => unknown ? Whole[Key]
    : Whole[Key] extends readonly unknown[] ? Whole[Key]
    : Whole[Key] extends Record<string, unknown> ? Overlay<Whole[Key]>
    : Whole[Key];
};

/** `whole` with the entries of `over` in their places. Lists and functions are replaced as a whole. */
export function overlaid<Whole extends object>(whole: Whole, over: Overlay<Whole>): Whole {
  const result = { ...whole };
  for (const key of Object.keys(over) as (keyof Whole)[]) {
    const value = over[key] as Whole[typeof key];
    const nested = typeof value === 'object' && value !== null && !Array.isArray(value);
    result[key] = nested ? overlaid(whole[key] as object, value as object) as Whole[typeof key] : value;
  }
  return result;
}

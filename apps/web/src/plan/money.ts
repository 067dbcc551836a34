import { locale } from '../words/language';

/** An amount in its currency, without cents; a currency the browser does not know is written after it. */
export function money(amount: number, currency: string): string {
  try {
    return new Intl.NumberFormat(locale, { style: 'currency', currency, maximumFractionDigits: 0 }).format(amount);
  } catch {
    return `${Math.round(amount)} ${currency}`;
  }
}

// The page's words in Spanish: plain, of no one country, to a person addressed as usted or to nobody. Terms follow
// docs/decisions/081-words-of-the-page.md. Numbers keep the decimal point, as the engine's sentences do.
import type { Words } from './en';
import { everywhere } from './es/everywhere';
import { inspect } from './es/inspect';
import { kit } from './es/kit';
import { plan } from './es/plan';
import { prove } from './es/prove';
import { record } from './es/record';
import { report } from './es/report';
import { treat } from './es/treat';
import { visit } from './es/visit';

export const es: Words = { ...everywhere, inspect, kit, plan, treat, prove, record, report, visit };

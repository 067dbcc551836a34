// The page's words in US English, place by place. Another language is a second object of type `Words`. Sentences about
// results come from the engine's own catalogue; these are names, questions and cautions of the screen.
import { everywhere } from './en/everywhere';
import { inspect } from './en/inspect';
import { kit } from './en/kit';
import { plan } from './en/plan';
import { prove } from './en/prove';
import { record } from './en/record';
import { report } from './en/report';
import { treat } from './en/treat';
import { visit } from './en/visit';

export const en = { ...everywhere, inspect, kit, plan, treat, prove, record, report, visit };

export type Words = typeof en;

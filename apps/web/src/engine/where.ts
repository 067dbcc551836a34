// Where the engine and the Spanish of its sentences lie, as a worker is told once. The engine comes with English; Spanish
// is a file of its own, so that the engine of everybody else is not the heavier for it.
import engineFile from '#built/lastegg.wasm?url';
import spanishFile from '../../../../words/data/es.json?url';
import { language } from '../words/language';
import type { Language } from '../words/languages';

/** `words`: the file of sentences that the engine has to be handed for this language, or null when it has them. */
export interface Where { url: string; words: string | null; language: Language }

const address = (file: string) => new URL(file, document.baseURI).href;

export const where: Where = { url: address(engineFile), words: language === 'es' ? address(spanishFile) : null, language };

// The kits that other jobs on this device offer to a job that has none yet, and the taking of one: its facts are stated again.
import { shownDate } from '../look/days';
import { worker } from '../record/record';
import { dataOf } from '../record/facts';
import { isEmptyKit, type KitOffer } from '../record/firm_kit';
import { job } from '../record/job.svelte';
import { uuidv7 } from '../record/uuid';
import { words } from '../words/words';

class Kits {
  offers = $state.raw<KitOffer[]>([]);
  private asked: string | null = null;

  /** Call from an effect: it follows the open job. */
  want(): void {
    if (!job.id || !isEmptyKit(job.state)) {
      this.offers = [];
      this.asked = null;
      return;
    }
    if (this.asked === job.id) return;
    const about = (this.asked = job.id);
    void worker.say('kits', { besides: about }).then((offers) => { if (this.asked === about) this.offers = offers; }, () => { this.asked = null; });
  }

  /** False: the store refused the facts; they are held as every unsaved fact is. */
  async take(offer: KitOffer): Promise<boolean> {
    const heads = new Map(offer.facts.filter((one) => one.kind === 'head/1').map((one) => [one.subject, String(one.data.title ?? words.kit.head)]));
    const lines = offer.facts.map(({ kind, subject, data }) => job.fact(kind, subject, kind === 'fold_test/1' ? { ...data, title: titleOf(data, heads) } : data));
    if (Object.keys(offer.settings).length > 0) {
      const old = job.state.settings;
      lines.push(job.fact('settings/1', old?.id ?? uuidv7(), { ...(old ? dataOf(old) : {}), ...offer.settings }, typeof old?.event === 'string' ? old.event : undefined));
    }
    return job.writeLines(lines);
  }
}

/** A fold test is called anew: its old name may speak of somebody's sofa. */
function titleOf(data: Record<string, unknown>, heads: Map<string, string>): string {
  const head = heads.get(String(data.head)) ?? words.kit.test;
  return typeof data.on === 'string' ? words.kit.take.testTitle(head, shownDate(data.on)) : head;
}

export const kits = new Kits();

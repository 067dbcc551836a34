// The name of a job that is being started. It survives an opening of the page anew, such as for another language.
import { job } from './job.svelte';

const k_memory = 'lastegg-new-job';

class NewJob {
  naming = $state(false);
  title = $state('');

  constructor() {
    const carried = sessionStorage.getItem(k_memory);
    sessionStorage.removeItem(k_memory);
    if (carried !== null) {
      this.naming = true;
      this.title = carried;
    }
  }

  /** Starts it. A name whose job could not be started stays in the field. */
  async start(): Promise<boolean> {
    const title = this.title.trim();
    if (!title) return false;
    await job.start(title);
    if (job.failure) return false;
    this.naming = false;
    this.title = '';
    return true;
  }

  carry(): void {
    if (this.naming) sessionStorage.setItem(k_memory, this.title);
  }
}

export const newJob = new NewJob();

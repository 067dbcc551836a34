// Installing the page as an app, where the browser offers it.
interface InstallEvent extends Event { prompt(): Promise<{ outcome: 'accepted' | 'dismissed' }> }

class Install {
  private offer: InstallEvent | null = null;
  ready = $state(false);

  listen(): void {
    addEventListener('beforeinstallprompt', (event) => {
      event.preventDefault();
      this.offer = event as InstallEvent;
      this.ready = true;
    });
    addEventListener('appinstalled', () => { this.ready = false; });
  }

  async ask(): Promise<void> {
    this.ready = false;
    await this.offer?.prompt();
    this.offer = null;
  }
}

export const install = new Install();

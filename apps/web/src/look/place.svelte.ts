// Where the person is: the address after `#`, as a list of names. Every place of the page has an address. What was tapped
// lights up in the next picture; the place itself follows after it, however long it takes to draw.
import { afterPicture } from './after_picture';

export const k_places = ['inspect', 'kit', 'plan', 'treat', 'prove', 'record'] as const;
export type PlaceName = (typeof k_places)[number];

function read(): string[] {
  const names = location.hash.replace(/^#\/?/, '').split('/').filter(Boolean).map(decodeURIComponent);
  return (k_places as readonly string[]).includes(names[0] ?? '') ? names : ['inspect'];
}

class Place {
  path = $state.raw<string[]>(read());
  /** The place that was asked for: what is shown, or what is about to be. */
  going = $state<PlaceName>(read()[0] as PlaceName);

  get name(): PlaceName {
    return this.path[0] as PlaceName;
  }

  listen(): void {
    let tapped: HTMLElement | null = null;
    const light = (link: HTMLElement | null): void => {
      tapped?.removeAttribute('data-going');
      tapped = link;
      tapped?.setAttribute('data-going', '');
    };
    addEventListener('click', ({ target }) => {
      const link = (target as Element).closest<HTMLElement>('a[href^="#/"]');
      if (link && link.getAttribute('href') !== location.hash) light(link);
    });
    addEventListener('hashchange', () => {
      this.going = read()[0] as PlaceName;
      afterPicture(() => {
        light(null);
        const before = this.path[0];
        this.path = read();
        if (this.path[0] !== before || this.path.length < 3) scrollTo(0, 0);
      });
    });
  }
}

export const place = new Place();

export function address(...names: string[]): string {
  return '#/' + names.map(encodeURIComponent).join('/');
}

export function go(...names: string[]): void {
  location.hash = address(...names).slice(1);
}

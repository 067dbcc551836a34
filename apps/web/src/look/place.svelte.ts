// Where the person is: the address after `#`, as a list of names. Every place of the page has an address.
export const k_places = ['inspect', 'kit', 'plan', 'treat', 'prove', 'record'] as const;
export type PlaceName = (typeof k_places)[number];

function read(): string[] {
  const names = location.hash.replace(/^#\/?/, '').split('/').filter(Boolean).map(decodeURIComponent);
  return (k_places as readonly string[]).includes(names[0] ?? '') ? names : ['inspect'];
}

class Place {
  path = $state.raw<string[]>(read());

  get name(): PlaceName {
    return this.path[0] as PlaceName;
  }

  listen(): void {
    addEventListener('hashchange', () => {
      const before = this.path[0];
      this.path = read();
      if (this.path[0] !== before || this.path.length < 3) scrollTo(0, 0);
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

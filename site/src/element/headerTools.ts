/** The header: the language link keeps the inputs; what is kept offline, how large, and a way to change it. */

import { OFFLINE_ENGLISH, type OfflineWords } from '../lib/language/offlineWords.js';

const MB = (bytes: number) => `${(bytes / 1e6).toFixed(1)} MB`;

customElements.define(
  'site-language',
  class extends HTMLElement {
    connectedCallback(): void {
      this.addEventListener('click', (event) => {
        const link = (event.target as Element).closest('a');
        if (link && !link.title.includes(':')) link.search = location.search;
      });
    }
  },
);

interface Sizes {
  readonly core: number;
  readonly rest: number;
}

customElements.define(
  'offline-state',
  class extends HTMLElement {
    #words: OfflineWords = OFFLINE_ENGLISH;

    connectedCallback(): void {
      // The page brings the words of its language; the bar of a newer version reads them here too.
      this.#words = JSON.parse(this.dataset['words'] ?? 'null') ?? OFFLINE_ENGLISH;
      this.addEventListener('click', (event) => {
        const what = (event.target as Element).closest<HTMLElement>('[data-offline]')?.dataset[
          'offline'
        ];
        if (what) void this.#set(what);
      });
      document.addEventListener('keydown', (event) => {
        const details = this.querySelector('details');
        if (event.key === 'Escape' && details?.open) {
          details.open = false;
          details.querySelector('summary')?.focus();
        }
      });
      navigator.serviceWorker?.addEventListener('message', () => void this.#show());
      void this.#show();
    }

    async #sizes(): Promise<Sizes | undefined> {
      return fetch('/offline.json')
        .then((answer) => (answer.ok ? (answer.json() as Promise<Sizes>) : undefined))
        .catch(() => undefined);
    }

    #put(name: string, text: string): void {
      const home = this.querySelector(`[data-offline-${name}]`);
      if (home) home.textContent = text;
    }

    async #show(): Promise<void> {
      const sizes = await this.#sizes();
      const names = (await globalThis.caches?.keys().catch(() => [])) ?? [];
      const whole = await Promise.all(
        names.map(async (name) =>
          (await caches.match('/.kept', { cacheName: name })) ? name : '',
        ),
      );
      const has = (kind: string) => whole.some((name) => name.startsWith(`slantpath-${kind}-`));
      const kept = has('core') ? (has('rest') ? 'all' : 'core') : 'none';
      const size = sizes ? (kept === 'all' ? sizes.core + sizes.rest : sizes.core) : 0;
      this.#put('sign', kept === 'none' ? '○' : '●');
      this.#put(
        'word',
        kept === 'none'
          ? this.#words.notKept
          : this.#words.kept.replace('{size}', sizes ? MB(size) : '').trim(),
      );
      this.#put('says', this.#words[kept]);
      if (sizes) {
        this.#put('core', `(${MB(sizes.core)})`);
        this.#put('all', `(${MB(sizes.core + sizes.rest)})`);
      }
    }

    async #set(what: string): Promise<void> {
      const status = this.querySelector('.offline-status');
      const say = (text: string) => {
        if (status) status.textContent = text;
      };
      if (!('serviceWorker' in navigator)) return say(this.#words.cannot);
      if (what === 'none') {
        localStorage.setItem('slantpath-keep', 'no');
        for (const one of await navigator.serviceWorker.getRegistrations()) await one.unregister();
        for (const name of await caches.keys())
          if (name.startsWith('slantpath-')) await caches.delete(name);
        say(this.#words.removed);
      } else {
        localStorage.setItem('slantpath-keep', what);
        say(this.#words.fetching);
        await navigator.serviceWorker.register('/sw.js').catch(() => undefined);
        const { active } = await navigator.serviceWorker.ready;
        if (what === 'all') active?.postMessage('keep the rest');
        say(what === 'all' ? this.#words.fetchingRest : this.#words.done);
      }
      await this.#show();
    }
  },
);

/** The town search of a place input: a combobox over the list of towns, which is fetched at first use. */

import { findTowns, readTowns, type Town } from '../lib/inputs/towns.js';
import { words } from '../lib/language/language.js';

let towns: Promise<readonly Town[]> | undefined;

function load(): Promise<readonly Town[]> {
  towns ??= fetch('/towns.txt')
    .then((response) => (response.ok ? response.text() : Promise.reject(new Error('missing'))))
    .then(readTowns)
    .catch((error: unknown) => {
      towns = undefined;
      throw error;
    });
  return towns;
}

const countries = new Intl.DisplayNames([document.documentElement.lang || 'en'], {
  type: 'region',
  fallback: 'code',
});

function text({ name, country, latitudeDeg, longitudeDeg }: Town): string {
  return `${name}, ${countries.of(country)} (${latitudeDeg.toFixed(2)}, ${longitudeDeg.toFixed(2)})`;
}

/** Brings the search in `box` to life; `found` is called with the chosen town. */
export function listenToTownSearch(
  box: HTMLElement,
  found: (town: Town) => void,
  say: (text: string) => void,
): void {
  const input = box.querySelector('input');
  const list = box.querySelector('ul');
  if (!input || !list) return;
  let hits: readonly Town[] = [];
  let active = -1;

  const draw = () => {
    list.replaceChildren(
      ...hits.map((town, index) => {
        const option = document.createElement('li');
        option.id = `${list.id}-${index}`;
        option.role = 'option';
        option.textContent = text(town);
        option.ariaSelected = String(index === active);
        return option;
      }),
    );
    list.hidden = hits.length === 0;
    input.ariaExpanded = String(hits.length > 0);
    if (active < 0) input.removeAttribute('aria-activedescendant');
    else input.setAttribute('aria-activedescendant', `${list.id}-${active}`);
  };
  const close = () => {
    hits = [];
    active = -1;
    draw();
  };
  const choose = (index: number) => {
    const town = hits[index];
    if (!town) return;
    input.value = town.name;
    close();
    found(town);
  };

  input.addEventListener('focus', () => {
    load().catch(() => say(words().townsMissing));
  });
  input.addEventListener('input', async (event) => {
    event.stopPropagation();
    const typed = input.value;
    const all = await load().catch(() => []);
    if (typed !== input.value) return;
    hits = findTowns(all, typed);
    active = hits.length > 0 ? 0 : -1;
    draw();
  });
  input.addEventListener('keydown', (event) => {
    if (event.key === 'Escape') close();
    else if (event.key === 'Enter') {
      event.preventDefault();
      choose(active);
    } else if ((event.key === 'ArrowDown' || event.key === 'ArrowUp') && hits.length > 0) {
      event.preventDefault();
      active = (active + (event.key === 'ArrowDown' ? 1 : -1) + hits.length) % hits.length;
      draw();
    }
  });
  input.addEventListener('blur', () => window.setTimeout(close, 150));
  list.addEventListener('pointerdown', (event) => {
    const option = (event.target as Element).closest('li');
    if (!option) return;
    event.preventDefault();
    choose([...list.children].indexOf(option));
  });
}

/** The place of the job: a town by its name, or the position of the device. */

import { groundHeightM } from '../../element/places.js';
import { listenToTownSearch } from '../../element/townSearch.js';
import { words as frameWords } from '../../lib/language/language.js';
import type { Draft } from '../state/draft.js';
import type { DeskHome } from './home.js';

/** The draft at another place. */
const placed = (
  draft: Draft,
  station: { latitudeDeg: number; longitudeDeg: number; heightM?: number },
): Draft => ({ ...draft, station: { ...draft.station, ...station } });

function note(home: DeskHome, text: string): void {
  const place = home.querySelector('[data-town-note]');
  if (place) place.textContent = text;
}

/** The position of the device. */
function locate(home: DeskHome): void {
  if (!navigator.geolocation) {
    note(home, frameWords().noPosition);
    return;
  }
  note(home, frameWords().waitForPosition);
  navigator.geolocation.getCurrentPosition(
    ({ coords }) => {
      home.change(
        placed(home.draft, {
          latitudeDeg: Number(coords.latitude.toFixed(5)),
          longitudeDeg: Number(coords.longitude.toFixed(5)),
          ...(coords.altitude === null ? {} : { heightM: Math.round(coords.altitude) }),
        }),
        true,
      );
      const within = `${frameWords().within} ${Math.round(coords.accuracy)} m.`;
      note(home, coords.altitude === null ? `${within} ${frameWords().noHeight}` : within);
    },
    () => note(home, frameWords().positionFailed),
    { enableHighAccuracy: true, timeout: 20_000 },
  );
}

/** Listens to the place; the search for a town comes to life when its field is used first. */
export function listenToPlace(home: DeskHome): void {
  home.addEventListener('focusin', ({ target }) => {
    const box = (target as Element).closest<HTMLElement>('[data-towns]');
    if (!box || box.dataset['ready'] !== undefined) return;
    box.dataset['ready'] = '';
    listenToTownSearch(
      box,
      async ({ latitudeDeg, longitudeDeg, name }) => {
        const heightM = await groundHeightM(latitudeDeg, longitudeDeg);
        const draft = placed(home.draft, { latitudeDeg, longitudeDeg, heightM });
        home.change({ ...draft, station: { ...draft.station, name } }, true);
        note(home, frameWords().townHeight);
      },
      (text) => note(home, text),
    );
    box.querySelector('input')?.dispatchEvent(new Event('focus'));
  });
  home.addEventListener('click', ({ target }) => {
    if ((target as Element).closest('[data-do="here"]')) locate(home);
  });
}

/** Place inputs: preset places, towns by name, the position of the device. */

import { typedPair } from '../lib/inputs/angles.js';
import { PRESETS } from '../lib/inputs/places.js';
import { PLACE_FIELDS, type Raw } from '../lib/inputs/state.js';
import type { Town } from '../lib/inputs/towns.js';
import { localNumber, words } from '../lib/language/language.js';
import { typed } from '../lib/language/text.js';
import { controlOf } from './form.js';
import { listenToTownSearch } from './townSearch.js';

/** Pasted, dropped or filled at once, not typed sign by sign. */
const isPaste = (event: Event) =>
  !(event instanceof InputEvent) || !/^(insertText|insertComp|delete)/.test(event.inputType);

const fieldsIn = (group: HTMLElement) => (group.dataset['place'] ?? '').split(' ');

/** Shows in each place input which preset its coordinates are, if any. */
export function showPresets(root: Element, raw: Raw): void {
  for (const group of root.querySelectorAll<HTMLElement>('[data-place]')) {
    const fields = fieldsIn(group);
    const index = PRESETS.findIndex((preset) =>
      PLACE_FIELDS.every((field, i) => typed(raw[fields[i] ?? ''] ?? '') === preset[field]),
    );
    const select = group.querySelector<HTMLSelectElement>('[data-preset]');
    if (select) select.value = index < 0 ? '' : String(index);
  }
}

/** Listens within `root`; `changed` is called after a place was set. */
export function listenToPlaces(root: HTMLElement, changed: () => void): void {
  const set = (group: HTMLElement, place: readonly number[]) => {
    fieldsIn(group).forEach((field, index) => {
      const control = controlOf(root, field);
      if (control && place[index] !== undefined) control.value = localNumber(String(place[index]));
    });
    changed();
  };
  // Before the example's own listener, which would set the choice back to what the coordinates say.
  const choose = (event: Event) => {
    const select = event.target;
    if (!(select instanceof HTMLSelectElement) || select.dataset['preset'] === undefined) return;
    const preset = select.value === '' ? undefined : PRESETS[Number(select.value)];
    const group = select.closest<HTMLElement>('[data-place]');
    if (preset && group)
      set(
        group,
        PLACE_FIELDS.map((field) => preset[field]),
      );
  };
  root.addEventListener('input', choose, { capture: true });
  // A pair typed or pasted into latitude or longitude fills both.
  const part = (event: Event) => {
    const control = event.target;
    if (!(control instanceof HTMLInputElement) || control.dataset['number'] === undefined) return;
    const group = control.closest<HTMLElement>('[data-place]');
    const pair = group && fieldsIn(group).indexOf(control.name) < 2 && typedPair(control.value);
    // While somebody types, the second half is not whole: only what is pasted, or left, is parted.
    if (!group || !pair || (event.type === 'input' && !isPaste(event))) return;
    set(group, [pair.latitudeDeg, pair.longitudeDeg]);
  };
  root.addEventListener('input', part, { capture: true });
  root.addEventListener('change', part, { capture: true });
  root.addEventListener('click', (event) => {
    const button = (event.target as Element).closest<HTMLElement>('[data-locate], [data-town]');
    const group = button?.closest<HTMLElement>('[data-place]');
    if (!button || !group) return;
    const note = (message: string) => tell(group, message);
    if (button.dataset['town'] === undefined) locate((place) => set(group, place), note);
    else
      openTowns(
        button,
        async ({ latitudeDeg, longitudeDeg }) => {
          const heightM = await groundHeightM(latitudeDeg, longitudeDeg);
          set(group, [latitudeDeg, longitudeDeg, heightM]);
          note(words().townHeight);
        },
        note,
      );
  });
}

/** Height of the ground from the climate grid, smoothed over a degree or so; 0 where that cannot be had. */
export async function groundHeightM(latitudeDeg: number, longitudeDeg: number): Promise<number> {
  try {
    const { climateAt } = await import('slantpath/climate');
    const ground = climateAt({ latitudeDeg, longitudeDeg, heightM: 0 }).groundHeightM;
    return Math.max(0, Math.round(ground / 10) * 10);
  } catch {
    return 0;
  }
}

/** A remark under the fields of a place. */
function tell(group: HTMLElement, message: string): void {
  const note = group.querySelector<HTMLElement>('[data-place-note]');
  if (!note) return;
  note.textContent = message;
  note.hidden = false;
}

/** Shows or hides the town search of a place; it comes to life when it is first shown. */
function openTowns(
  button: HTMLElement,
  found: (town: Town) => void,
  note: (message: string) => void,
): void {
  const box = document.getElementById(button.dataset['town'] ?? '');
  if (!box) return;
  box.hidden = !box.hidden;
  button.ariaExpanded = String(!box.hidden);
  if (box.dataset['ready'] === undefined) {
    box.dataset['ready'] = '';
    listenToTownSearch(box, found, note);
  }
  if (!box.hidden) box.querySelector('input')?.focus();
}

function locate(found: (place: readonly number[]) => void, note: (message: string) => void): void {
  if (!navigator.geolocation) {
    note(words().noPosition);
    return;
  }
  note(words().waitForPosition);
  navigator.geolocation.getCurrentPosition(
    ({ coords }) => {
      found([
        Number(coords.latitude.toFixed(5)),
        Number(coords.longitude.toFixed(5)),
        Math.round(coords.altitude ?? 0),
      ]);
      const within = `${words().within} ${Math.round(coords.accuracy)} m.`;
      note(coords.altitude === null ? `${within} ${words().noHeight}` : within);
    },
    ({ message }) => note(message || words().positionFailed),
    { enableHighAccuracy: true, timeout: 20_000 },
  );
}

/** Place inputs: preset places and the position of the device. */

import { PRESETS } from '../lib/places.js';
import { PLACE_FIELDS, type Raw } from '../lib/state.js';
import { typed } from '../lib/text.js';
import { controlOf } from './form.js';

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
      if (control && place[index] !== undefined) control.value = String(place[index]);
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
  root.addEventListener('click', (event) => {
    const button = (event.target as Element).closest('[data-locate]');
    const group = button?.closest<HTMLElement>('[data-place]');
    if (group) locate(group, (place) => set(group, place));
  });
}

function locate(group: HTMLElement, found: (place: readonly number[]) => void): void {
  const slot = group.querySelector<HTMLElement>('[data-place-error]');
  const fail = (message: string) => {
    if (!slot) return;
    slot.textContent = message;
    slot.hidden = false;
  };
  if (!navigator.geolocation) {
    fail('This device gives no position.');
    return;
  }
  navigator.geolocation.getCurrentPosition(
    ({ coords }) =>
      found([
        Number(coords.latitude.toFixed(5)),
        Number(coords.longitude.toFixed(5)),
        Math.round(coords.altitude ?? 0),
      ]),
    ({ message }) => fail(message || 'The position could not be read.'),
    { enableHighAccuracy: true, timeout: 20_000 },
  );
}

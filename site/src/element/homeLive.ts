/** `<home-live>`: the home page's fields, its answer, and the mark that is dragged along the arc. */

import { DomainError } from 'slantpath';
import { lookAngles } from 'slantpath/pointing';
import type { Example } from '../lib/example.js';
import {
  HOME_DEFAULTS,
  type HomeAnswer,
  type HomeInput,
  homeAnswer,
  homeSky,
  markPlace,
  readPlace,
  readReflector,
  readSlot,
  renderSettings,
} from '../lib/homeAnswer.js';
import type { Place } from '../lib/inputs/inputs.js';
import { defaultsOf, readValues } from '../lib/inputs/state.js';
import { longitudeText } from '../lib/language/text.js';
import { nearestSlot } from '../lib/pictures/arc.js';
import { groundHeightM } from './places.js';
import { listenToTownSearch } from './townSearch.js';

const modules = import.meta.glob<{ default: Example }>('../examples/*.ts');
const year = () => {
  const now = new Date();
  return now.getUTCFullYear() + now.getUTCMonth() / 12;
};

class HomeLive extends HTMLElement {
  #place: Place = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
  #input: HomeInput | undefined;
  #answer: HomeAnswer | undefined;
  #later = 0;
  /** The town that was chosen, as it stands in the field. */
  #town = '';

  #unknownPlace(): void {
    this.#blame('place', 'Choose a town from the list, or write coordinates such as 46.4, 9.6.');
    this.querySelector('.home-answer')?.setAttribute('data-stale', '');
  }

  connectedCallback(): void {
    const field = (name: string) => this.querySelector<HTMLInputElement>(`#home-${name}`);
    const query = new URLSearchParams(location.search);
    for (const name of ['place', 'slot', 'reflector']) {
      const control = field(name);
      const asked = query.get(name);
      if (control && asked !== null) control.value = asked;
    }
    this.querySelector('form')?.addEventListener('submit', (event) => event.preventDefault());
    for (const name of ['slot', 'reflector'])
      field(name)?.addEventListener('input', () => this.#update());
    const place = field('place');
    place?.addEventListener('input', () => {
      const found = readPlace(place.value);
      if (!found) return;
      this.#place = found;
      this.#update();
      void this.#withHeight(found);
    });
    place?.addEventListener('focus', () => place.select());
    const box = this.querySelector<HTMLElement>('.home-with');
    if (box)
      listenToTownSearch(
        box,
        (town) => {
          this.#place = {
            latitudeDeg: town.latitudeDeg,
            longitudeDeg: town.longitudeDeg,
            heightM: 0,
          };
          this.#update();
          void this.#withHeight(this.#place);
          this.#town = place?.value ?? '';
        },
        (text) => this.#blame('place', text),
      );
    this.querySelector('[data-here]')?.addEventListener('click', () => this.#here());
    this.#listenToMark();
    new ResizeObserver(() => this.#draw()).observe(this);
    const asked = place ? readPlace(place.value) : undefined;
    if (asked && place?.value !== HOME_DEFAULTS.place) this.#place = asked;
    this.#update(location.search !== '');
    // A link that names no coordinates gets no answer for another place.
    if (place && !asked) this.#unknownPlace();
    place?.addEventListener('change', () => {
      if (!readPlace(place.value) && place.value !== this.#town) this.#unknownPlace();
    });
    delete this.dataset['computing'];
    this.dataset['ready'] = '';
  }

  /** The height of the ground, fetched with the climate grid only when a place was chosen; it moves the angles by hundredths. */
  async #withHeight(place: Place): Promise<void> {
    const heightM = await groundHeightM(place.latitudeDeg, place.longitudeDeg);
    if (this.#place !== place) return;
    this.#place = { ...place, heightM };
    this.#update();
  }

  #here(): void {
    navigator.geolocation?.getCurrentPosition(
      ({ coords }) => {
        const control = this.querySelector<HTMLInputElement>('#home-place');
        this.#place = {
          latitudeDeg: coords.latitude,
          longitudeDeg: coords.longitude,
          heightM: Math.round(coords.altitude ?? 0),
        };
        if (control)
          control.value = `${coords.latitude.toFixed(4)}, ${coords.longitude.toFixed(4)}`;
        this.#update();
      },
      () => this.#blame('place', 'The position could not be read: type a town or coordinates.'),
      { enableHighAccuracy: true, timeout: 20_000 },
    );
  }

  #blame(name: string, text: string): void {
    const slot = this.querySelector<HTMLElement>(`#home-${name}-error`);
    if (!slot) return;
    slot.textContent = text;
    slot.hidden = text === '';
    const control = this.querySelector(`#home-${name}`);
    if (text) control?.setAttribute('aria-invalid', 'true');
    else control?.removeAttribute('aria-invalid');
  }

  #update(keep = true): void {
    for (const name of ['place', 'slot', 'reflector']) this.#blame(name, '');
    const text = (name: string) =>
      this.querySelector<HTMLInputElement>(`#home-${name}`)?.value ?? '';
    try {
      this.#input = {
        place: this.#place,
        slotDeg: readSlot(text('slot')),
        offsetAngleDeg: readReflector(text('reflector')),
      };
      this.#answer = homeAnswer(this.#input, year());
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      const name = error.parameter === 'slot' ? 'slot' : 'reflector';
      this.#blame(name, `Write ${error.allowed}.`);
      this.querySelector('.home-answer')?.setAttribute('data-stale', '');
      return;
    }
    this.querySelector('.home-answer')?.removeAttribute('data-stale');
    const says = this.querySelector('.home-says');
    const settings = this.querySelector('.home-settings');
    if (says) says.textContent = this.#answer.says;
    if (settings) settings.innerHTML = renderSettings(this.#answer);
    this.#draw();
    clearTimeout(this.#later);
    if (keep)
      this.#later = window.setTimeout(() => {
        const query = new URLSearchParams();
        for (const name of ['place', 'slot', 'reflector']) query.set(name, text(name));
        const { latitudeDeg, longitudeDeg } = this.#place;
        if (!readPlace(text('place'))) query.set('place', `${latitudeDeg}, ${longitudeDeg}`);
        history.replaceState(history.state, '', `?${query}`);
        const status = this.querySelector('[role="status"]');
        if (status && this.#answer) status.textContent = this.#answer.says;
        void this.#follow();
      }, 350);
  }

  /** The picture in use now, drawn at the size it has. */
  #draw(): void {
    const picture = [...this.querySelectorAll<HTMLElement>('.home-picture')].find(
      (one) => one.offsetWidth > 0,
    );
    const mark = this.querySelector<HTMLElement>('.home-mark');
    if (!picture || !this.#input || !this.#answer || !mark) return;
    const size = { width: picture.offsetWidth, height: picture.offsetWidth > 600 ? 300 : 210 };
    picture.innerHTML = homeSky(this.#input, this.#answer, size).svg;
    const [x, y] = markPlace(this.#answer, size);
    mark.hidden = !this.#answer.visible;
    mark.style.left = `${picture.offsetLeft + x * size.width}px`;
    mark.style.top = `${picture.offsetTop + y * picture.offsetHeight}px`;
    mark.ariaValueNow = this.#input.slotDeg.toFixed(1);
    mark.setAttribute('aria-valuetext', this.#answer.says);
  }

  #setSlot(slotDeg: number): void {
    const control = this.querySelector<HTMLInputElement>('#home-slot');
    const rounded = Math.round(10 * (((((slotDeg + 180) % 360) + 360) % 360) - 180)) / 10;
    if (!control || lookAngles(this.#place, rounded).kind === 'below-horizon') return;
    control.value = longitudeText(rounded).replace('°', '');
    this.#update();
  }

  #listenToMark(): void {
    const mark = this.querySelector<HTMLElement>('.home-mark');
    if (!mark) return;
    mark.addEventListener('keydown', (event) => {
      const steps: Readonly<Record<string, number>> = {
        ArrowLeft: 0.1,
        ArrowRight: -0.1,
        ArrowUp: 0.1,
        ArrowDown: -0.1,
        PageUp: 1,
        PageDown: -1,
      };
      const step = steps[event.key];
      if (step === undefined || !this.#input) return;
      event.preventDefault();
      // To the left is east in the northern sky, west in the southern.
      const sense =
        event.key.startsWith('Arrow') && /Left|Right/.test(event.key) && this.#place.latitudeDeg < 0
          ? -1
          : 1;
      this.#setSlot(this.#input.slotDeg + sense * step);
    });
    mark.addEventListener('pointerdown', (event) => {
      mark.setPointerCapture(event.pointerId);
      mark.dataset['held'] = '';
    });
    mark.addEventListener('pointermove', (event) => {
      if (mark.dataset['held'] === undefined) return;
      const slot = this.#slotUnder(event);
      if (slot !== undefined) this.#setSlot(slot);
    });
    for (const end of ['pointerup', 'pointercancel'])
      mark.addEventListener(end, () => delete mark.dataset['held']);
  }

  /** The slot whose place on the arc is nearest to the pointer. */
  #slotUnder({ clientX, clientY }: PointerEvent): number | undefined {
    const picture = [...this.querySelectorAll<HTMLElement>('.home-picture')].find(
      (one) => one.offsetWidth > 0,
    );
    if (!picture || !this.#answer) return undefined;
    const box = picture.getBoundingClientRect();
    const size = { width: box.width, height: box.height };
    const answer = this.#answer;
    return nearestSlot(this.#place, (from) => {
      const [x, y] = markPlace({ ...answer, mark: from }, size);
      return Math.hypot(box.left + x * box.width - clientX, box.top + y * box.height - clientY);
    });
  }

  /** The steps below take the place along: their links, and the pictures that are cheap to draw. */
  async #follow(): Promise<void> {
    const input = this.#input;
    if (!input) return;
    for (const card of document.querySelectorAll<HTMLElement>('.steps [data-example]')) {
      const name = card.dataset['example'] ?? '';
      const takes = (card.dataset['takes'] ?? '').split(' ').filter(Boolean);
      const link = card.querySelector('a');
      if (!link || takes.length === 0) continue;
      const query = new URLSearchParams();
      const { latitudeDeg, longitudeDeg, heightM } = input.place;
      if (takes.includes('station')) {
        query.set('latitudeDeg', String(Number(latitudeDeg.toFixed(5))));
        query.set('longitudeDeg', String(Number(longitudeDeg.toFixed(5))));
        query.set('heightM', String(heightM));
      }
      if (takes.includes('slot')) query.set('orbitalLongitudeDeg', String(input.slotDeg));
      link.search = query.toString();
      if (card.dataset['cheap'] === undefined) continue;
      const example = (await modules[`../examples/${name}.ts`]?.())?.default;
      const picture = card.querySelector('.step-picture');
      if (!example || !picture) continue;
      try {
        const values = {
          ...readValues(example.inputs, defaultsOf(example.inputs)),
          station: input.place,
          orbitalLongitudeDeg: input.slotDeg,
        };
        const svg = example.view(example.compute(values as never), values as never).figures?.[0]
          ?.svg;
        if (svg) picture.innerHTML = svg;
      } catch (error) {
        if (!(error instanceof DomainError)) throw error;
      }
    }
  }
}

customElements.define('home-live', HomeLive);

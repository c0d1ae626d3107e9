/** Listens to everything that is typed, chosen and pressed on the page. */

import { ownInto } from '../state/ownFields.js';
import { valueAt } from '../state/paths.js';
import { pressedIn } from '../state/pressed.js';
import { STAGES, type StageName } from '../state/stages.js';
import { type ReadAs, typedInto } from '../state/typedFields.js';
import type { DeskHome } from './home.js';
import { listenToPlace } from './place.js';

type Control = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

const isControl = (target: EventTarget | null): target is Control =>
  target instanceof HTMLInputElement ||
  target instanceof HTMLSelectElement ||
  target instanceof HTMLTextAreaElement;

const textIn = (control: Control) =>
  control instanceof HTMLInputElement && control.type === 'checkbox'
    ? control.checked
      ? 'yes'
      : ''
    : control.value;

const isStage = (name: string): name is StageName => (STAGES as readonly string[]).includes(name);

/** A field of the job file was changed. */
function edited(home: DeskHome, control: Control, left: boolean): void {
  const { path = '', as = 'text' } = control.dataset;
  // A name is taken over when its field is left: half a name must not become another one's.
  if ((as === 'name') !== left && !(as === 'angle' && left)) return;
  const text = textIn(control);
  if (as === 'angle' && left && String(valueAt(home.draft, path) ?? '') === text.trim()) return;
  const { draft, reshaped, refused } = typedInto(home.draft, path, as as ReadAs, text);
  if (refused) {
    home.say(refused === 'taken' ? home.words.nameTaken(text.trim()) : home.words.nameEmpty);
    control.value = String(valueAt(home.draft, path) ?? '');
    return;
  }
  if (draft !== home.draft) home.change(draft, reshaped);
}

/** A field of the page's own was changed. */
function ownEdited(home: DeskHome, control: Control): void {
  const made = ownInto(home.desk, control.dataset['own'] ?? '', control.value);
  if (made) home.change(made.draft ?? home.draft, made.reshaped === true, made.beside);
}

/** Where the cursor goes after a row was added: its first field. */
function focusNew(home: DeskHome, what: string, at: string): void {
  if (what !== 'add' && what !== 'same') return;
  const count = (valueAt(home.draft, at) as readonly unknown[] | undefined)?.length ?? 0;
  home.querySelector<HTMLElement>(`[data-path^="${CSS.escape(`${at}[${count - 1}]`)}"]`)?.focus();
}

function pressed(home: DeskHome, what: string, at: string): void {
  switch (what) {
    case 'new-job':
      home.choose(true);
      return;
    case 'cancel':
      home.choose(false);
      return;
    case 'begin':
      void home.begin(home.querySelector<HTMLSelectElement>('[data-begin]')?.value ?? '');
      return;
    case 'open':
      home.querySelector<HTMLInputElement>('[data-file]')?.click();
      return;
    case 'undo':
      home.undo();
      return;
    case 'remove-job':
      void home.removeJob();
      return;
    case 'save':
      home.save(at);
      return;
    case 'print':
      home.print(at === 'after' ? 'after' : 'before');
      return;
    case 'link':
      void home.link();
      return;
    case 'save-damaged':
      home.saveDamaged(at);
      return;
    case 'remove-damaged':
      void home.removeDamaged(at);
      return;
    case 'go':
      if (isStage(at)) home.go(at);
      return;
    default: {
      const made = pressedIn(home.desk, {
        what,
        at,
        field: (name) =>
          home.querySelector<Control>(`[data-own="${CSS.escape(name)}"]`)?.value ?? '',
        today: new Date().toISOString().slice(0, 10),
        words: home.words,
      });
      if (!made) return;
      home.change(made, true);
      focusNew(home, what, at);
    }
  }
}

/** Listens within the page. */
export function listenToEdits(home: DeskHome): void {
  home.addEventListener('input', ({ target }) => {
    if (!isControl(target)) return;
    if (target.dataset['path'] !== undefined) edited(home, target, false);
    else if (target.dataset['own'] !== undefined && !(target instanceof HTMLSelectElement))
      ownEdited(home, target);
  });
  home.addEventListener('change', ({ target }) => {
    if (!isControl(target)) return;
    if (target.dataset['jobs'] !== undefined) home.show(target.value);
    else if (target.dataset['file'] !== undefined) {
      const file = (target as HTMLInputElement).files?.[0];
      target.value = '';
      if (file) void home.open(file);
    } else if (target.dataset['path'] !== undefined) edited(home, target, true);
    else if (target instanceof HTMLSelectElement && target.dataset['own'] !== undefined)
      ownEdited(home, target);
  });
  home.addEventListener('click', ({ target }) => {
    const button = (target as Element).closest<HTMLElement>('[data-do]');
    if (button) pressed(home, button.dataset['do'] ?? '', button.dataset['at'] ?? '');
  });
  home.addEventListener('submit', (event) => event.preventDefault());
  // Enter in a level notes it: one hand, one key.
  home.addEventListener('keydown', (event) => {
    const own = (event.target as HTMLElement).dataset['own'] ?? '';
    if (event.key !== 'Enter' || !own.startsWith('level:')) return;
    event.preventDefault();
    pressed(home, 'note-level', own.slice('level:'.length));
  });
  home.addEventListener(
    'toggle',
    ({ target }) => {
      const stage = target instanceof HTMLDetailsElement ? target.dataset['stage'] : undefined;
      if (stage !== undefined && isStage(stage) && (target as HTMLDetailsElement).open)
        home.fill(stage);
    },
    { capture: true },
  );
  listenToPlace(home);
}

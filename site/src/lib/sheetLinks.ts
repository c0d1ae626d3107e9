/** Addresses of a sheet: the learner's page, and the trainer's settings for a code. */

import { type Worksheet, worksheetOfCode } from 'slantpath/teaching';

/** The page for learners: it holds neither the settings nor a key. */
export function learnerLink({ code }: Worksheet, use: 'practice' | 'test', lang: string): string {
  const folder = lang.startsWith('de') ? '/de' : '';
  const query = new URLSearchParams({ sheet: code, for: use });
  return `${location.origin}${folder}/start/your-sheet/?${query}`;
}

/** The trainer's settings that make the sheet of a code. */
export function queryOf(code: string): string {
  const sheet = worksheetOfCode(code);
  const kinds = code.split('.')[3]?.split('+') ?? [];
  return new URLSearchParams({
    seed: String(sheet.seed),
    count: String(sheet.exercises.length),
    level: String(sheet.level),
    form: sheet.form,
    kinds: kinds.join('*'),
  }).toString();
}

/** What a learner's address asks for. */
export function askedSheet(query: string): {
  readonly code: string;
  readonly use: 'practice' | 'test';
} {
  const asked = new URLSearchParams(query);
  return {
    code: asked.get('sheet') ?? '',
    use: asked.get('for') === 'test' ? 'test' : 'practice',
  };
}

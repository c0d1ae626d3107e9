/** Towns of the world by name, from the compact list in `public/towns.txt` (see site/scripts/gazetteer.ts). */

/** A town. */
export interface Town {
  readonly name: string;
  /** ISO 3166 code. */
  readonly country: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

interface Entry extends Town {
  /** Name without marks and capitals. */
  readonly plain: string;
  readonly size: number;
}

/** Text as it is compared: no capitals, no accents, single spaces. */
export function plainText(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

const hundredths = (text: string) => Number.parseInt(text, 36) / 100;

/** The towns of a list. */
export function readTowns(list: string): readonly Town[] {
  return list.split('\n\n').flatMap((block) => {
    const [country = '', ...lines] = block.split('\n');
    return lines.map((line): Entry => {
      const [head = '', latitude = '', longitude = ''] = line.split('|');
      const name = head.slice(1);
      return {
        name,
        country,
        plain: plainText(name),
        size: Number.parseInt(head[0] ?? '0', 36),
        latitudeDeg: hundredths(latitude),
        longitudeDeg: hundredths(longitude),
      };
    });
  });
}

/** The towns whose name, or a word of it, begins with what was typed; whole names first, then by size. */
export function findTowns(towns: readonly Town[], typed: string, count = 8): Town[] {
  const wanted = plainText(typed);
  if (wanted.length < 2) return [];
  const hits: { readonly town: Town; readonly rank: number }[] = [];
  for (const town of towns as readonly Entry[]) {
    const first = town.plain.startsWith(wanted);
    if (!first && !town.plain.includes(` ${wanted}`)) continue;
    const whole = town.plain === wanted;
    hits.push({ town, rank: (whole ? 200 : first ? 100 : 0) + town.size });
  }
  return hits
    .sort((a, b) => b.rank - a.rank)
    .slice(0, count)
    .map(({ town }) => town);
}

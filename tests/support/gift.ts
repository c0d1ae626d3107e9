/**
 * A strict reader of numerical questions in GIFT, from the format's documentation (Moodle documentation, 'GIFT format'):
 * questions are apart by an empty line, `::name::`, `[format]text`, `{#answers}`, each answer `=%share%value:tolerance#feedback`,
 * the feedback of the question after `####`, a line that begins with `//` is a comment, and `~ = # { } :` and the backslash
 * stand in a text only after a backslash.
 */

/** A question as it was read. */
export interface GiftQuestion {
  readonly name: string;
  readonly format: string;
  readonly text: string;
  readonly answers: readonly {
    readonly share: number;
    readonly value: number;
    readonly tolerance: number;
    readonly feedback: string;
  }[];
  readonly generalFeedback: string;
}

/** A text without its escapes; refuses a sign of the format that has none. */
function unescaped(text: string): string {
  return text.replace(/\\(.?)|[~=#{}:\n]/gs, (whole, sign: string | undefined) => {
    if (sign === 'n') return '\n';
    if (sign && '~=#{}:\\'.includes(sign)) return sign;
    throw new Error(`${JSON.stringify(whole)} is not escaped as the format asks, in: ${text}`);
  });
}

/** A piece of text up to a sign of the format, in which escapes may stand. */
const TEXT = String.raw`((?:\\.|[^\\~=#{}:\n])*)`;
const NUMBER = String.raw`(-?\d+(?:\.\d+)?)`;
const QUESTION = new RegExp(
  String.raw`^::${TEXT}::(?:\[(html|moodle|plain|markdown)\])?${TEXT}\{#\n((?:\t=.*\n)+)\t####(.*)\n\}$`,
);
const ANSWER = new RegExp(String.raw`^\t=%(\d+)%${NUMBER}:${NUMBER}#${TEXT}$`);

function read<T>(text: string, pattern: RegExp, of: (groups: readonly string[]) => T): T {
  const found = pattern.exec(text);
  if (!found) throw new Error(`not as the format asks: ${text}`);
  return of(found.slice(1).map((group) => group ?? ''));
}

/** Category and questions of a file. */
export function readGift(file: string) {
  const [first = '', ...blocks] = file
    .split(/\n\s*\n/)
    .map((block) => block.trim())
    .filter((block) => block !== '');
  const questions = blocks.map((block) => {
    if (block.split('\n').some((line) => line.trim().startsWith('//')))
      throw new Error('a line of a question would be taken for a comment');
    return read(
      block,
      QUESTION,
      ([name = '', format = '', text = '', answers = '', feedback = '']): GiftQuestion => ({
        name: unescaped(name),
        format,
        text: unescaped(text),
        generalFeedback: unescaped(feedback),
        answers: answers
          .trimEnd()
          .split('\n')
          .map((line) =>
            read(line.replace(/^=/, '\t='), ANSWER, ([share, value, tolerance, told = '']) => ({
              share: Number(share),
              value: Number(value),
              tolerance: Number(tolerance),
              feedback: unescaped(told),
            })),
          ),
      }),
    );
  });
  return { category: read(first, /^\$CATEGORY: (.+)$/, ([path = '']) => path), questions };
}

/** What the library names as allowed, in German; anything else stays as the library says it. */

const ALLOWED: readonly (readonly [RegExp, string])[] = [
  [/^(\S+) or more$/, 'mindestens $1'],
  [/^(\S+) or less$/, 'höchstens $1'],
  [/^from (\S+) to (\S+)$/, 'von $1 bis $2'],
  [/^of length (\d+) or more$/, 'eine Liste mit mindestens $1 Einträgen'],
  [/^of length (\d+) or less$/, 'eine Liste mit höchstens $1 Einträgen'],
  [/^of length (\d+)$/, 'eine Liste mit $1 Einträgen'],
  [/^a finite number$/, 'eine Zahl'],
  [/^a text$/, 'ein Text'],
  [/^true or false$/, 'ja oder nein'],
  [/^a list$/, 'eine Liste'],
  [/^a day as YYYY-MM-DD$/, 'ein Tag in der Form JJJJ-MM-TT'],
  [/^a time of day as HH:MM$/, 'eine Uhrzeit in der Form HH:MM'],
  [/^more than blanks$/, 'mehr als Leerzeichen'],
  [/^printable text without control characters$/, 'Text ohne Steuerzeichen'],
  [/^left out: no such field is known here$/, 'weggelassen (dieses Feld gibt es hier nicht)'],
  [/^a name of its own$/, 'ein eigener Name'],
  [/^given where a wall is$/, 'angegeben, wo eine Wand angegeben ist'],
  [/^given where an outside diameter is$/, 'angegeben, wo ein Außendurchmesser angegeben ist'],
  [/^at most half the outside diameter$/, 'höchstens der halbe Außendurchmesser'],
  [/^given where a carrier is$/, 'angegeben, wo ein Träger angegeben ist'],
  [/^given where no bracketing is$/, 'angegeben, wo keine Umkehr in Umdrehungen angegeben ist'],
  [/^a slot of one of the mounts$/, 'eine Position, die auf einer der Halterungen steht'],
  [
    /^one slot: a schedule follows one satellite$/,
    'eine Position: nachgeführt wird einem Satelliten',
  ],
  [/^at most 16 slots on one reflector$/, 'höchstens 16 Positionen an einem Reflektor'],
  [
    /^given: every slot has another mount$/,
    'angegeben (jede Position hat schon eine andere Halterung)',
  ],
];

const SLIPS: Readonly<Record<string, string>> = {
  'is the number in quotes?': 'Steht die Zahl in Anführungszeichen?',
  'were latitude and longitude swapped?': 'Sind Breite und Länge vertauscht?',
  'was it given in MHz?': 'War es in MHz?',
  'was it given in GHz?': 'War es in GHz?',
  'was it given in centimetres?': 'War es in Zentimetern?',
  'was it given in kilobaud?': 'War es in Kilobaud?',
  'was it given in per cent?': 'War es in Prozent?',
  'is it in mm?': 'Ist es in mm?',
};

/** What is allowed. */
export function allowedGerman(allowed: string): string {
  const found = ALLOWED.find(([pattern]) => pattern.test(allowed));
  const said = found ? allowed.replace(found[0], found[1]) : allowed;
  return said.replace(/(?<![\w.])(\d+)\.(\d+)(?![\w.])/g, '$1,$2');
}

/** The likely slip. */
export const slipGerman = (slip: string): string => SLIPS[slip] ?? slip;

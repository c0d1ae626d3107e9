/** A parameter of the library in words, where no field of the page stands for it. */

const UNITS =
  /(Deg|Km|Mm|M|GHz|MHz|Dbm|Dbuv|Dbw|Dbi|DbPerK|DbPerKm|Db|Percent|Ratio|MmPerH|NUnits|MBd|Mbps|Turns|K|V|A|W|S|Min|H|C)$/;

/** `samples[2].levelDbm` becomes `level, row 3`; `systemNoiseK` becomes `system noise`. */
export function parameterWords(parameter: string): string {
  const name =
    parameter
      .split('.')
      .at(-1)
      ?.replace(/\[\d+\]/g, '') ?? '';
  const row = /\[(\d+)\]/.exec(parameter)?.[1];
  const words = name
    .replace(UNITS, '')
    .replace(/([a-z])([A-Z0-9])/g, '$1 $2')
    .toLowerCase();
  return row === undefined ? words : `${words}, row ${Number(row) + 1}`;
}

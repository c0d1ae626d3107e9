/** Terrestrial radio that lies in or near the intermediate frequencies and C band, as data. */

/** A band of terrestrial radio. */
export interface TerrestrialBand {
  /** Name: the band number of 3GPP, or what it is used for. */
  readonly name: string;
  /** What the handset (or base of a cordless phone) sends on, in MHz. */
  readonly handset: readonly [fromMHz: number, toMHz: number];
  /** What the mast sends on, in MHz; the same where both share one band. */
  readonly mast: readonly [fromMHz: number, toMHz: number];
  /** `read` in a text that quotes 3GPP TS 36.101 or 38.101-1, or `from-memory`. */
  readonly status: 'read' | 'from-memory';
}

const shared = (
  name: string,
  fromMHz: number,
  toMHz: number,
  status: TerrestrialBand['status'],
): TerrestrialBand => ({ name, handset: [fromMHz, toMHz], mast: [fromMHz, toMHz], status });

/**
 * Terrestrial bands that installers meet. Which of them are on the air depends on the country.
 *
 * Source: 3GPP TS 36.101, Table 5.5-1, and TS 38.101-1, Table 5.2-1, as quoted in open texts; `status` says which are from memory.
 */
export const terrestrialBands: readonly TerrestrialBand[] = [
  { name: 'B28', handset: [703, 748], mast: [758, 803], status: 'read' },
  { name: 'B20', handset: [832, 862], mast: [791, 821], status: 'read' },
  { name: 'B8', handset: [880, 915], mast: [925, 960], status: 'read' },
  { name: 'B3', handset: [1710, 1785], mast: [1805, 1880], status: 'read' },
  shared('DECT', 1880, 1900, 'from-memory'),
  shared('B39', 1880, 1920, 'read'),
  { name: 'B1', handset: [1920, 1980], mast: [2110, 2170], status: 'read' },
  shared('B40', 2300, 2400, 'from-memory'),
  { name: 'B7', handset: [2500, 2570], mast: [2620, 2690], status: 'from-memory' },
  shared('B38', 2570, 2620, 'from-memory'),
  shared('B41', 2496, 2690, 'read'),
  shared('B42', 3400, 3600, 'from-memory'),
  shared('B43', 3600, 3800, 'from-memory'),
  shared('n78', 3300, 3800, 'read'),
  shared('n77', 3300, 4200, 'read'),
];

/**
 * Recommendation ITU-R P.838-3 (03/2005), Tables 1 to 4: the regression coefficients of k and alpha.
 *
 * log10 k and alpha are each a sum of bells in log10 f plus a straight line:
 * sum a_j exp(-((log10 f - b_j) / c_j)^2) + m log10 f + c.
 */

/** Coefficients k and alpha of specific attenuation for the two linear polarizations. */
export interface RainCoefficients {
  /** k for horizontal polarization, dB/km at 1 mm/h. */
  readonly kHorizontal: number;
  /** k for vertical polarization, dB/km at 1 mm/h. */
  readonly kVertical: number;
  /** Exponent alpha for horizontal polarization. */
  readonly alphaHorizontal: number;
  /** Exponent alpha for vertical polarization. */
  readonly alphaVertical: number;
}

/** One curve: rows (a, b, c) of the bells, then slope and offset of the line. */
interface Curve {
  readonly bells: readonly (readonly [a: number, b: number, c: number])[];
  readonly slope: number;
  readonly offset: number;
}

const K_HORIZONTAL: Curve = {
  bells: [
    [-5.3398, -0.10008, 1.13098],
    [-0.35351, 1.2697, 0.454],
    [-0.23789, 0.86036, 0.15354],
    [-0.94158, 0.64552, 0.16817],
  ],
  slope: -0.18961,
  offset: 0.71147,
};

const K_VERTICAL: Curve = {
  bells: [
    [-3.80595, 0.56934, 0.81061],
    [-3.44965, -0.22911, 0.51059],
    [-0.39902, 0.73042, 0.11899],
    [0.50167, 1.07319, 0.27195],
  ],
  slope: -0.16398,
  offset: 0.63297,
};

const ALPHA_HORIZONTAL: Curve = {
  bells: [
    [-0.14318, 1.82442, -0.55187],
    [0.29591, 0.77564, 0.19822],
    [0.32177, 0.63773, 0.13164],
    [-5.3761, -0.9623, 1.47828],
    [16.1721, -3.2998, 3.4399],
  ],
  slope: 0.67849,
  offset: -1.95537,
};

const ALPHA_VERTICAL: Curve = {
  bells: [
    [-0.07771, 2.3384, -0.76284],
    [0.56727, 0.95545, 0.54039],
    [-0.20238, 1.1452, 0.26809],
    [-48.2991, 0.791669, 0.116226],
    [48.5833, 0.791459, 0.116479],
  ],
  slope: -0.053739,
  offset: 0.83433,
};

function curveAt({ bells, slope, offset }: Curve, logFrequency: number): number {
  let sum = slope * logFrequency + offset;
  for (const [a, b, c] of bells) sum += a * Math.exp(-(((logFrequency - b) / c) ** 2));
  return sum;
}

/** Coefficients at a frequency in GHz that is already checked. */
export function rainCoefficients(frequencyGHz: number): RainCoefficients {
  const logFrequency = Math.log10(frequencyGHz);
  return {
    kHorizontal: 10 ** curveAt(K_HORIZONTAL, logFrequency),
    kVertical: 10 ** curveAt(K_VERTICAL, logFrequency),
    alphaHorizontal: curveAt(ALPHA_HORIZONTAL, logFrequency),
    alphaVertical: curveAt(ALPHA_VERTICAL, logFrequency),
  };
}

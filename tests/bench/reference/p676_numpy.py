"""Plain NumPy reference of P.676-13, Annex 1, section 2.2: a loop over the layers, the lines as vectors.

Prints the attenuation in dB and the median time of one path in nanoseconds:
    python3 p676_numpy.py FREQUENCY_GHZ ELEVATION_DEG
The line tables are read from the library's own source, so that both ways use the same figures.
"""

import pathlib
import re
import statistics
import sys
import time

import numpy as np

source = pathlib.Path(__file__).parents[3] / 'src/propagation/p676-13/lines.ts'
tables = [
    np.array([float(x) for x in re.findall(r'-?\d+\.?\d*(?:e-?\d+)?', block)])
    for block in re.findall(r'readonly number\[\] = \[(.*?)\];', source.read_text(), re.S)
]
F_O, A1, A2, A3, A5, A6 = tables[0].reshape(-1, 6).T
F_W, B1, B2, B3, B4, B5, B6 = tables[1].reshape(-1, 7).T


def atmosphere(h):
    """P.835-6, mean annual global reference atmosphere: total pressure, temperature, vapour density."""
    hp = 6356.766 * h / (6356.766 + h)
    bases = [(0, 288.15, -6.5, 1013.25), (11, 216.65, 0, 226.3226), (20, 216.65, 1, 54.7498),
             (32, 228.65, 2.8, 8.680422), (47, 270.65, 0, 1.109106), (51, 270.65, -2.8, 0.6694167),
             (71, 214.65, -2, 0.03956649)]
    if h < 86:
        base, t0, lapse, p0 = [b for b in bases if hp > b[0] or b[0] == 0][-1]
        t = t0 + lapse * (hp - base)
        p = p0 * (np.exp(-34.1632 * (hp - base) / t0) if lapse == 0 else (t0 / t) ** (34.1632 / lapse))
    else:
        t = 186.8673 if h <= 91 else 263.1905 - 76.3232 * np.sqrt(1 - ((h - 91) / 19.9429) ** 2)
        p = np.exp(95.571899 - 4.011801 * h + 6.424731e-2 * h**2 - 4.78966e-4 * h**3 + 1.340543e-6 * h**4)
    rho = 7.5 * np.exp(-h / 2)
    if rho * t / 216.7 / p < 2e-6:
        rho = 2e-6 * 216.7 * p / t
    return p, t, rho


def specific(f, p, e, theta):
    width = np.sqrt((A3 * 1e-4 * (p * theta**0.8 + 1.1 * e * theta)) ** 2 + 2.25e-6)
    delta = (A5 + A6 * theta) * 1e-4 * (p + e) * theta**0.8
    shape = f / F_O * ((width - delta * (F_O - f)) / ((F_O - f) ** 2 + width**2)
                       + (width - delta * (F_O + f)) / ((F_O + f) ** 2 + width**2))
    n = np.sum(A1 * 1e-7 * p * theta**3 * np.exp(A2 * (1 - theta)) * shape)
    d = 5.6e-4 * (p + e) * theta**0.8
    n += f * p * theta**2 * (6.14e-5 / (d * (1 + (f / d) ** 2)) + 1.4e-12 * p * theta**1.5 / (1 + 1.9e-5 * f**1.5))
    width = B3 * 1e-4 * (p * theta**B4 + B5 * e * theta**B6)
    width = 0.535 * width + np.sqrt(0.217 * width**2 + 2.1316e-12 * F_W**2 / theta)
    shape = f / F_W * (width / ((F_W - f) ** 2 + width**2) + width / ((F_W + f) ** 2 + width**2))
    n += np.sum(B1 * 0.1 * e * theta**3.5 * np.exp(B2 * (1 - theta)) * shape)
    return 0.182 * f * n


def slant(f, elevation):
    total = 0.0
    invariant = None
    for i in range(1, 923):
        thickness = 1e-4 * np.exp((i - 1) / 100)
        bottom = 1e-4 * (np.exp((i - 1) / 100) - 1) / (np.exp(0.01) - 1)
        pressure, t, rho = atmosphere(bottom + thickness / 2)
        e = rho * t / 216.7
        p = pressure - e
        n = 1 + 1e-6 * (77.6 * p / t + 72 * e / t + 3.75e5 * e / t**2)
        r = 6371 + bottom
        if invariant is None:
            invariant = n * r * np.cos(np.radians(elevation))
        cosine = np.sqrt(1 - (invariant / (n * r)) ** 2)
        a = -r * cosine + np.sqrt((r * cosine) ** 2 + 2 * r * thickness + thickness**2)
        total += a * specific(f, p, e, 300 / t)
    return total


if __name__ == '__main__':
    frequency, elevation = float(sys.argv[1]), float(sys.argv[2])
    value = slant(frequency, elevation)
    times = []
    for _ in range(7):
        begin = time.process_time()
        slant(frequency, elevation)
        times.append(1e9 * (time.process_time() - begin))
    print(repr(float(value)), statistics.median(times))

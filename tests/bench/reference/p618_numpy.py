"""Vectorised NumPy reference of P.618-14, section 2.2.1.1 with P.838-3.

The inputs are what the library gets: a column for each input that differs from site to site, one number for frequency,
tilt and percentage, so that their share is computed once here as there.

Prints the sum of all attenuations and the median processor time of one site in nanoseconds:
    python3 p618_numpy.py SITES [per-site]
In columns, every operation runs over all sites at once. With `per-site` the function is spread over the sites by
`numpy.vectorize`, as general-purpose implementations of the recommendation do.
The sites follow a fixed rule, the same as in propagation.bench.ts.
"""

import statistics
import sys
import time

import numpy as np

K_H = ([-5.3398, -0.35351, -0.23789, -0.94158], [-0.10008, 1.2697, 0.86036, 0.64552],
       [1.13098, 0.454, 0.15354, 0.16817], -0.18961, 0.71147)
K_V = ([-3.80595, -3.44965, -0.39902, 0.50167], [0.56934, -0.22911, 0.73042, 1.07319],
       [0.81061, 0.51059, 0.11899, 0.27195], -0.16398, 0.63297)
A_H = ([-0.14318, 0.29591, 0.32177, -5.3761, 16.1721], [1.82442, 0.77564, 0.63773, -0.9623, -3.2998],
       [-0.55187, 0.19822, 0.13164, 1.47828, 3.4399], 0.67849, -1.95537)
A_V = ([-0.07771, 0.56727, -0.20238, -48.2991, 48.5833], [2.3384, 0.95545, 1.1452, 0.791669, 0.791459],
       [-0.76284, 0.54039, 0.26809, 0.116226, 0.116479], -0.053739, 0.83433)


def curve(table, log_f):
    a, b, c, m, offset = table
    total = m * log_f + offset
    for aj, bj, cj in zip(a, b, c):
        total = total + aj * np.exp(-(((log_f - bj) / cj) ** 2))
    return total


def rain_attenuation(lat, hs, hr, r001, f, el, tau, p):
    theta = np.radians(el)
    sine, cosine = np.sin(theta), np.cos(theta)
    log_f = np.log10(f)
    kh, kv = 10 ** curve(K_H, log_f), 10 ** curve(K_V, log_f)
    ah, av = curve(A_H, log_f), curve(A_V, log_f)
    mix = cosine**2 * np.cos(2 * np.radians(tau))
    k = (kh + kv + (kh - kv) * mix) / 2
    alpha = (kh * ah + kv * av + (kh * ah - kv * av) * mix) / (2 * k)
    gamma = k * r001**alpha
    dh = hr - hs
    ls = np.where(el >= 5, dh / sine, 2 * dh / (np.sqrt(sine**2 + 2 * dh / 8500) + sine))
    lg = ls * cosine
    r = 1 / (1 + 0.78 * np.sqrt(lg * gamma / f) - 0.38 * (1 - np.exp(-2 * lg)))
    zeta = np.degrees(np.arctan2(dh, lg * r))
    lr = np.where(zeta > el, lg * r / cosine, dh / sine)
    chi = np.where(np.abs(lat) < 36, 36 - np.abs(lat), 0)
    v = 1 / (1 + np.sqrt(sine) * (31 * (1 - np.exp(-(el / (1 + chi)))) * np.sqrt(lr * gamma) / f**2 - 0.45))
    a001 = gamma * lr * v
    beta = np.where((p >= 1) | (np.abs(lat) >= 36), 0,
                    np.where(el >= 25, -0.005 * (np.abs(lat) - 36),
                             -0.005 * (np.abs(lat) - 36) + 1.8 - 4.25 * sine))
    return a001 * (p / 0.01) ** -(0.655 + 0.033 * np.log(p) - 0.045 * np.log(a001) - beta * (1 - p) * sine)


if __name__ == '__main__':
    count = int(sys.argv[1])
    i = np.arange(count, dtype=float)
    site = dict(lat=-60 + (i * 7.31) % 120, hs=((i * 13.7) % 1200) / 1000, hr=2 + (i * 0.0371) % 3,
                r001=10 + (i * 1.73) % 100, el=6 + (i * 3.77) % 80)
    site |= dict(f=20.0, tau=45.0, p=0.01)
    predict = np.vectorize(rain_attenuation) if len(sys.argv) > 2 else rain_attenuation
    value = predict(**site).sum()
    times = []
    repeat = 1 if len(sys.argv) > 2 else max(3, 100000 // count)
    for _ in range(7):
        begin = time.process_time()
        for _ in range(repeat):
            predict(**site)
        times.append(1e9 * (time.process_time() - begin) / repeat / count)
    print(repr(float(value)), statistics.median(times))

"""Polynomials that interpolate a function at Chebyshev nodes, for the fits of this folder. Standard library only."""
import math


def interpolate(function, low, high, degree):
    """Power series in s = (x - middle) / half of the interpolant of a function over low..high."""
    n = degree + 1
    nodes = [math.cos(math.pi * (k + 0.5) / n) for k in range(n)]
    values = [function((low + high) / 2 + (high - low) / 2 * s) for s in nodes]
    chebyshev = [2 / n * math.fsum(values[k] * math.cos(math.pi * j * (k + 0.5) / n) for k in range(n))
                 for j in range(n)]
    chebyshev[0] /= 2
    powers = [0.0] * n
    before, now = [1.0] + [0.0] * degree, [0.0, 1.0] + [0.0] * (degree - 1)
    for j in range(n):
        polynomial = before if j == 0 else now
        for i in range(n):
            powers[i] += chebyshev[j] * polynomial[i]
        if j >= 1:
            before, now = now, [2 * (now[i - 1] if i else 0.0) - before[i] for i in range(n)]
    return powers


def value(powers, s):
    """A power series at s."""
    out = 0.0
    for c in reversed(powers):
        out = out * s + c
    return out

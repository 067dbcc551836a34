#!/usr/bin/env python3
"""Fits the polynomials of the lanes: single precision, so a few parts in ten million are enough.

exp2 and log (physics/numerics/lanes.h) and the density of saturated vapour (treatments/steam/lanes/lane_cells.h), each
interpolated at Chebyshev nodes and written as a power series. The density is that of the reference,
M psat(T) / (R T) with psat of IAPWS-IF97, so that both engines solve the same equations; what is fitted is its
fourth root, which is nearly a polynomial and asks for no exponential.

    tools/fit_lane_functions.py                     prints coefficients and the largest errors
    tools/fit_lane_functions.py --check FILE ...    exit 1 unless every coefficient stands in one of these files
Needs only the standard library.
"""
import math
import pathlib
import sys

sys.path.insert(0, str(pathlib.Path(__file__).parent))
from chebyshev import interpolate, value  # noqa: E402
from fit_saturation import saturation_pressure  # noqa: E402  the same curve as the reference's

MOLAR_MASS, GAS_CONSTANT = 0.018015268, 8.314462618
CENTRE, HALF_WIDTH, DENSITY_DEGREE = 42.5, 72.5, 7
EXP2_DEGREE, LOG_DEGREE = 6, 6


def density(celsius):
    return saturation_pressure(celsius) * MOLAR_MASS / (GAS_CONSTANT * (celsius + 273.15))


def log_tail(f):
    """(log(1 + f) - f + f^2/2) / f^3, by its series near 0."""
    if abs(f) < 1e-2:
        return math.fsum((-1) ** k * f ** k / (k + 3) for k in range(12))
    return (math.log1p(f) - f + f * f / 2) / f ** 3


def fits():
    low, high = CENTRE - HALF_WIDTH, CENTRE + HALF_WIDTH
    rho = interpolate(lambda t: density(t) ** 0.25, low, high, DENSITY_DEGREE)
    exp2 = interpolate(lambda x: 2 ** (x / 2), -1, 1, EXP2_DEGREE)  # 2^f for f = s / 2
    exp2 = [c * 2 ** k for k, c in enumerate(exp2)]  # as a series in f
    root = math.sqrt(2)
    middle, half = (root + 1 / root) / 2 - 1, (root - 1 / root) / 2
    tail = interpolate(log_tail, middle - half, middle + half, LOG_DEGREE)
    shifted = [0.0] * len(tail)  # from s = (f - middle) / half to f
    for k, c in enumerate(tail):
        for i in range(k + 1):
            shifted[i] += c * math.comb(k, i) * (-middle) ** (k - i) / half ** k
    return {"fourth root of saturated vapour density": rho, "exp2": exp2, "log": shifted}


def errors(found):
    grid = [i / 1000 for i in range(1001)]
    rho, exp2, tail = found.values()
    yield "density, 0..110 C, relative", max(abs(value(rho, (110 * g - CENTRE) / HALF_WIDTH) ** 4 / density(110 * g) - 1) for g in grid)
    yield "density, -30..0 C, relative", max(abs(value(rho, (-30 * g - CENTRE) / HALF_WIDTH) ** 4 / density(-30 * g) - 1) for g in grid)
    yield "exp2, relative", max(abs(value(exp2, g - 0.5) / 2 ** (g - 0.5) - 1) for g in grid)
    fs = [math.sqrt(0.5) + g * (math.sqrt(2) - math.sqrt(0.5)) - 1 for g in grid]
    yield "log, absolute", max(abs(f - f * f / 2 + f ** 3 * value(tail, f) - math.log1p(f)) for f in fs)


def main(arguments):
    found = fits()
    written = {name: [f"{c:.9g}" for c in powers] for name, powers in found.items()}
    if arguments[:1] == ["--check"]:
        texts = "".join(pathlib.Path(name).read_text() for name in arguments[1:])
        missing = [f"{name}: {c}" for name, powers in written.items() for c in powers if c.lstrip("-") not in texts]
        print("\n".join(missing) or "every coefficient stands in the files")
        return 1 if missing else 0
    for name, powers in written.items():
        print(name, ", ".join(powers))
    for name, error in errors(found):
        print(f"largest error of {name}: {error:.2g}")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))

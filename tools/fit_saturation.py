#!/usr/bin/env python3
"""Fits the saturation pressure used by the steam kernel and prints the coefficients of physics/water/vapour.h.

The pressure is written as 101325 Pa * 2^P(s) with s = (T - 42.5) / 72.5, T in degrees Celsius, so that one polynomial
and one exp2 give the value and its slope. P interpolates log2(p / 101325) of the IAPWS-IF97 saturation equation
(R7-97(2012), equation 30, table 34) at Chebyshev nodes of -30..115 C. Below 0 C the equation is extended beyond its
stated range: the kernel needs a smooth continuation there, not a certified one.

    tools/fit_saturation.py                          prints coefficients and the largest relative errors
    tools/fit_saturation.py --check vapour.h         exit 1 unless every coefficient stands in that file
Needs only the standard library.
"""
import math
import pathlib
import sys

sys.path.insert(0, str(pathlib.Path(__file__).parent))
from chebyshev import interpolate, value  # noqa: E402

# IAPWS R7-97(2012), table 34
N = [1167.0521452767, -724213.16703206, -17.073846940092, 12020.82470247, -3232555.0322333,
     14.91510861353, -4823.2657361591, 405113.40542057, -0.23855557567849, 650.17534844798]

CENTRE, HALF_WIDTH, DEGREE = 42.5, 72.5, 10


def saturation_pressure(celsius):
    """Equation 30 of IAPWS-IF97 in Pa."""
    kelvin = celsius + 273.15
    theta = kelvin + N[8] / (kelvin - N[9])
    a = theta * theta + N[0] * theta + N[1]
    b = N[2] * theta * theta + N[3] * theta + N[4]
    c = N[5] * theta * theta + N[6] * theta + N[7]
    return 1e6 * (2 * c / (-b + math.sqrt(b * b - 4 * a * c))) ** 4


def fit(degree):
    """Power-series coefficients in s of the Chebyshev interpolant of log2(p / 101325)."""
    powers = interpolate(lambda celsius: math.log2(saturation_pressure(celsius) / 101325), CENTRE - HALF_WIDTH,
                         CENTRE + HALF_WIDTH, degree)
    return [float(f"{c:.12g}") for c in powers]


def fitted_pressure(coefficients, celsius):
    return 101325 * 2 ** value(coefficients, (celsius - CENTRE) / HALF_WIDTH)


def largest_relative_error(coefficients, low, high):
    steps = 2000
    temperatures = [low + (high - low) * k / steps for k in range(steps + 1)]
    return max(abs(fitted_pressure(coefficients, t) / saturation_pressure(t) - 1) for t in temperatures)


def main():
    coefficients = fit(DEGREE)
    texts = [f"{c:.12g}" for c in coefficients]
    if len(sys.argv) == 3 and sys.argv[1] == "--check":
        source = open(sys.argv[2], encoding="utf-8").read()
        missing = [t for t in texts if t not in source]
        if missing:
            sys.exit(f"{sys.argv[2]} lacks the fitted coefficients {', '.join(missing)}")
        return
    if len(sys.argv) != 1:
        sys.exit(__doc__)
    print(",\n".join(texts))
    for low, high in ((-30, 115), (0, 110)):
        print(f"largest relative error {low}..{high} C: {largest_relative_error(coefficients, low, high):.3g}")
    for degree in range(5, 13):
        print(f"degree {degree}: {largest_relative_error(fit(degree), 0, 110):.3g}")


if __name__ == "__main__":
    main()

#!/usr/bin/python3
"""Writes water and steam properties of the independent package iapws (Debian: python3-iapws) as a table for
physics/water/water_agreement_test.cpp.

    /usr/bin/python3 tools/water_reference.py OUT.csv

Columns: phase (liquid | steam | saturation), kelvin, pascal, then in SI v, h, s, cp, w; a saturation row holds the
saturation pressure at that temperature and, in place of v, the saturation temperature computed back from it. Values are
those of the package's IF97 functions, independent of this repository's code. Fails when the package is missing.
"""
import os
import sys

CELSIUS = 273.15


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    path = sys.argv[1]
    if os.path.exists(path):
        os.remove(path)  # a table of an earlier run must never stand in for this one
    try:
        from iapws import iapws97
    except ImportError:
        sys.exit("The package python3-iapws is missing (apt-get install python3-iapws): the comparison cannot be made.")

    rows = []

    def add(phase, kelvin, pascal, state):
        rows.append((phase, kelvin, pascal, state["v"], 1e3 * state["h"], 1e3 * state["s"], 1e3 * state["cp"], state["w"]))

    for celsius in [0.01] + list(range(2, 349, 2)):
        kelvin = CELSIUS + celsius
        boiling = 1e6 * iapws97._PSat_T(kelvin)
        rows.append(("saturation", kelvin, boiling, iapws97._TSat_P(boiling / 1e6), 0, 0, 0, 0))
        for factor in (1.0, 1.5, 4.0, 30.0):
            pascal = min(boiling * factor, 90e6)
            add("liquid", kelvin, pascal, iapws97._Region1(kelvin, pascal / 1e6))
        for factor in (1.0, 0.7, 0.1, 1e-3):
            pascal = boiling * factor
            add("steam", kelvin, pascal, iapws97._Region2(kelvin, pascal / 1e6))
    for celsius in range(360, 800, 20):
        for pascal in (1e3, 101325.0, 1e6, 1e7):
            add("steam", CELSIUS + celsius, pascal, iapws97._Region2(CELSIUS + celsius, pascal / 1e6))

    with open(path, "w", encoding="utf-8") as out:
        out.write("phase,kelvin,pascal,v,h,s,cp,w\n")
        for row in rows:
            out.write(row[0] + "," + ",".join(repr(float(x)) for x in row[1:]) + "\n")


if __name__ == "__main__":
    main()

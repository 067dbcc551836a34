#!/usr/bin/env python3
"""Draws the work-precision picture, time per pass against error, from the figures that bench/run leaves.

Usage: bench/draw_work_precision.py [build/bench/figures.json]

The figures are kept beside the picture. Without an argument the picture is drawn again from those.
"""
import json
import math
import pathlib
import shutil
import sys

ROOT = pathlib.Path(__file__).resolve().parent.parent
KEPT = ROOT / "docs/pictures/work_precision.json"
PICTURE = ROOT / "docs/pictures/work_precision.svg"
WIDTH, HEIGHT, LEFT, TOP, PLOT_WIDTH, PLOT_HEIGHT, GAP = 980, 470, 70, 60, 370, 320, 110
# The engine's lanes, the plain engine and CVODE, each with a shape of its own; colours of the Okabe-Ito family.
STYLES = {
    "CVODE, 32 cells": ("#8a8a8a", "circle"),
    "CVODE, 64 cells": ("#4a4a4a", "circle"),
    "plain scalar engine": ("#e69f00", "square"),
    "4 lanes": ("#56b4e9", "triangle"),
    "8 lanes": ("#0072b2", "triangle"),
    "16 lanes": ("#d55e00", "diamond"),
}
PANELS = [
    ("kelvin_p95", "error of the peak, K, 95 of 100", (0.08, 0.6), (0.1, 0.2, 0.5), 0.15, 0.3),
    ("log10_dose_p95", "error of log10 dose, 95 of 100", (0.006, 0.06), (0.01, 0.02, 0.05), 0.03, 0.05),
]
TIMES = (5, 5000)


def place(value, low, high, length):
    return length * math.log(value / low) / math.log(high / low)


def mark(shape, x, y, colour):
    if shape == "circle":
        return f'<circle cx="{x:.1f}" cy="{y:.1f}" r="5" fill="{colour}"/>'
    if shape == "square":
        return f'<rect x="{x - 5:.1f}" y="{y - 5:.1f}" width="10" height="10" fill="{colour}"/>'
    if shape == "triangle":
        return f'<path d="M{x:.1f} {y - 6:.1f} l6 11 h-12 z" fill="{colour}"/>'
    return f'<path d="M{x:.1f} {y - 7:.1f} l7 7 l-7 7 l-7 -7 z" fill="{colour}"/>'


def text(x, y, words, anchor="middle", size=13, extra=""):
    return f'<text x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}" font-size="{size}" {extra}>{words}</text>'


def panel(number, figures):
    key, title, (low, high), ticks, shown_limit, preview_limit = PANELS[number]
    left = LEFT + number * (PLOT_WIDTH + GAP)
    bottom = TOP + PLOT_HEIGHT
    across = lambda error: left + place(error, low, high, PLOT_WIDTH)
    up = lambda time: bottom - place(time, *TIMES, PLOT_HEIGHT)
    out = [f'<rect x="{left}" y="{TOP}" width="{PLOT_WIDTH}" height="{PLOT_HEIGHT}" fill="none" stroke="#1b1b1b"/>']
    for limit, name in ((shown_limit, "shown"), (preview_limit, "preview")):
        x = across(limit)
        out.append(f'<path d="M{x:.1f} {TOP} V{bottom}" stroke="#1b1b1b" stroke-dasharray="3 5"/>')
        out.append(text(x, TOP - 6, name, size=11))
    for tick in ticks:
        out.append(f'<path d="M{across(tick):.1f} {bottom} v6" stroke="#1b1b1b"/>')
        out.append(text(across(tick), bottom + 20, f"{tick:g}"))
    for tick in (10, 100, 1000):
        out.append(f'<path d="M{left} {up(tick):.1f} h{PLOT_WIDTH}" stroke="#d8d2c4"/>')
        out.append(text(left - 8, up(tick) + 4, f"{tick:g}", "end"))
    out.append(text(left + PLOT_WIDTH / 2, bottom + 40, title))
    for kind, (colour, shape) in STYLES.items():
        points = sorted((f[key], f["microseconds"]) for f in figures if f["kind"] == kind and f[key] > 0)
        points = [(across(min(max(e, low), high)), up(min(max(t, TIMES[0]), TIMES[1]))) for e, t in points]
        if len(points) > 1:
            line = " ".join(f"{x:.1f},{y:.1f}" for x, y in points)
            out.append(f'<polyline points="{line}" fill="none" stroke="{colour}" stroke-width="1.5"/>')
        out += [mark(shape, x, y, colour) for x, y in points]
    return out


def main():
    if len(sys.argv) > 1:
        shutil.copyfile(sys.argv[1], KEPT)
    figures = json.loads(KEPT.read_text(encoding="utf-8"))
    out = [
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {HEIGHT}" font-family="sans-serif" fill="#1b1b1b">',
        f'<rect width="{WIDTH}" height="{HEIGHT}" fill="#f6f2e8"/>',
        text(LEFT, 26, "One pass: microseconds on one core over error; lower and further left is better", "start", 16),
    ]
    for number in range(len(PANELS)):
        out += panel(number, figures)
    x = LEFT
    for kind, (colour, shape) in STYLES.items():
        if any(f["kind"] == kind for f in figures):
            out.append(mark(shape, x + 6, HEIGHT - 22, colour))
            out.append(text(x + 18, HEIGHT - 18, kind, "start"))
            x += 30 + 7.6 * len(kind)
    PICTURE.write_text("\n".join(out) + "\n</svg>\n", encoding="utf-8")


if __name__ == "__main__":
    main()

#!/usr/bin/python3
"""Writes the demo job: one apartment, a sofa, a mattress, one kit, one fold test, eight readings.

Everything in it is made up for this project: people, places, equipment and every measured value. The readings are set
to look like those of a small steamer with a bare 80 mm hand head; they measure nothing. Ids are fixed, so the job is
the same every time: examples/demo.ndjson, and the copy that the page opens.

tools/make_demo.py          writes both files
tools/make_demo.py --check  fails if they are not what this program writes
"""
import json
import pathlib
import sys

ROOT = pathlib.Path(__file__).resolve().parent.parent
FILES = [ROOT / "examples" / "demo.ndjson", ROOT / "apps" / "web" / "public" / "demo" / "apartment.ndjson"]

# Subjects: what the events speak about.
JOB, DWELLING, LIVING_ROOM, BEDROOM, SOFA, MATTRESS = 0x01, 0x02, 0x03, 0x04, 0x0A, 0x0B
MACHINE, HEAD, TOWEL, PROBE, FOLD_TEST, FIRST_READING, SETTINGS = 0x14, 0x15, 0x16, 0x17, 0x1E, 0x28, 0x3C

ELEVATION_METRES = 200
START_CELSIUS = 21

# A hidden-spot test, invented: water that left no mark on the covering.
WETTING_LIMIT_GRAMS_PER_M2 = 110
HIDDEN_SPOT_SECONDS = 40  # invented: the head held on the back of the skirt, no mark after drying

# (layers over the tip, pace as typed, pace in m/s, highest temperature in C): invented.
READINGS = [
    (1, "10 mm/s", 0.01, 90),
    (1, "18 mm/s", 0.018, 82),
    (1, "1 in/s", 0.0254, 75),
    (1, "40 mm/s", 0.04, 61),
    (2, "8 mm/s", 0.008, 85),
    (2, "14 mm/s", 0.014, 70),
    (2, "20 mm/s", 0.02, 59),
    (2, "1 in/s", 0.0254, 51),
]


def subject(number):
    return f"0194a3c0-0000-7000-8000-{number:012x}"


def statements():
    """Kind, subject and data of every event, in the order in which they were stated."""
    yield "job/1", JOB, {"title": "Demo apartment 2B", "opened_on": "2025-01-26", "elevation_metres": ELEVATION_METRES}
    yield "dwelling/1", DWELLING, {"title": "Demo apartment 2B", "kind": "apartment", "job": subject(JOB), "elevation_metres": ELEVATION_METRES}
    yield "room/1", LIVING_ROOM, {"title": "Living room", "dwelling": subject(DWELLING),
                                  "outline": {"x_metres": 0, "y_metres": 0, "width_metres": 4.6, "depth_metres": 3.9}}
    yield "room/1", BEDROOM, {"title": "Bedroom", "dwelling": subject(DWELLING),
                              "outline": {"x_metres": 4.6, "y_metres": 0, "width_metres": 3.4, "depth_metres": 3.9}}
    yield "item/1", SOFA, {"title": "Sofa under the window", "kind": "sofa", "seats": 3, "covering": "polyester", "room": subject(LIVING_ROOM),
                           "place": {"x_metres": 2.3, "y_metres": 0.7, "turn_degrees": 0},
                           "wetting_limit_grams_per_m2": WETTING_LIMIT_GRAMS_PER_M2, "hidden_spot_seconds": HIDDEN_SPOT_SECONDS}
    yield "item/1", MATTRESS, {"title": "Queen mattress", "kind": "mattress", "size": "queen", "covering": "polyester",
                               "room": subject(BEDROOM), "place": {"x_metres": 1.7, "y_metres": 1.2, "turn_degrees": 0},
                               "wetting_limit_grams_per_m2": WETTING_LIMIT_GRAMS_PER_M2, "hidden_spot_seconds": HIDDEN_SPOT_SECONDS}
    yield "machine/1", MACHINE, {"title": "Dry steamer, 1.5 kW (invented)", "power_watts": 1500}
    yield "head/1", HEAD, {"title": "Hand head (invented)", "machine": subject(MACHINE), "length_metres": 0.08, "width_metres": 0.2}
    yield "towel/1", TOWEL, {"title": "No towel", "use": "none"}
    yield "probe/1", PROBE, {"title": "Thin wire probe (invented)", "time_constant_seconds": 0.3}
    yield "fold_test/1", FOLD_TEST, {"title": "Fold of the sofa's loose cover (invented)", "machine": subject(MACHINE), "head": subject(HEAD),
                                     "towel": subject(TOWEL), "probe": subject(PROBE), "start_celsius": START_CELSIUS,
                                     "elevation_metres": ELEVATION_METRES, "covering": "polyester", "cloth": "polyester_fabric"}
    for i, (layers, typed, pace, peak) in enumerate(READINGS):
        yield "reading/1", FIRST_READING + i, {"fold_test": subject(FOLD_TEST), "pace_metres_per_second": pace, "layers": layers,
                                               "peak_celsius": peak, "typed": {"pace": typed, "peak": f"{peak} C"}}
    yield "settings/1", SETTINGS, {"temperature": "F", "length": "in", "fold_test": subject(FOLD_TEST)}


def text():
    lines = []
    for number, (kind, about, data) in enumerate(statements(), start=1):
        lines.append(json.dumps({
            "id": f"0194a3c1-0000-7000-8000-{number:012x}",
            "kind": kind,
            "subject": subject(about),
            "device": subject(0xD0),
            "actor": "demo",
            "at": f"2025-01-26T09:{number:02d}:00-07:00",
            "data": {**data, "invented": True},
        }, separators=(",", ":"), ensure_ascii=False))
    return "".join(line + "\n" for line in lines)


def main():
    wanted = text()
    for file in FILES:
        name = file.relative_to(ROOT)
        if "--check" not in sys.argv:
            file.write_text(wanted, encoding="utf-8")
            print(f"{name}: {wanted.count(chr(10))} events")
        elif not file.exists() or file.read_text(encoding="utf-8") != wanted:
            sys.exit(f"{name} is not what tools/make_demo.py writes")


if __name__ == "__main__":
    main()

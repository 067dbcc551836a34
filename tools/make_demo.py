#!/usr/bin/python3
"""Writes examples/demo.events.ndjson, the demo job: one apartment, a sofa, a mattress, one kit, one fold test.

Everything in it is made up for this project: people, places, equipment and every measured value. The readings are set
so that they look like those of a small steamer with an 80 mm hand head wrapped in a thin towel; they measure nothing.
Ids are fixed, so the file is the same every time.

tools/make_demo.py          writes the file
tools/make_demo.py --check  fails if the file is not what this program writes
"""
import json
import pathlib
import sys

FILE = pathlib.Path(__file__).resolve().parent.parent / "examples" / "demo.events.ndjson"

# Subjects: what the events speak about.
JOB, DWELLING, LIVING_ROOM, BEDROOM, SOFA, MATTRESS = 0x01, 0x02, 0x03, 0x04, 0x0A, 0x0B
MACHINE, HEAD, TOWEL, PROBE, FOLD_TEST, FIRST_READING, SETTINGS = 0x14, 0x15, 0x16, 0x17, 0x1E, 0x28, 0x3C

ELEVATION_METRES = 200
START_CELSIUS = 21

# (layers over the tip, pace in mm/s, highest temperature in C): invented.
READINGS = [
    (1, 10, 83.5),
    (1, 15, 77.0),
    (1, 25, 66.5),
    (1, 40, 55.5),
    (2, 8, 76.5),
    (2, 12, 66.0),
    (2, 18, 55.0),
    (2, 25, 46.5),
]


def subject(number):
    return f"0194a3c0-0000-7000-8000-{number:012x}"


def statements():
    """Kind, subject and data of every event, in the order in which they were stated."""
    yield "job/1", JOB, {"title": "Demo apartment 2B (invented)", "opened_on": "2025-01-26", "elevation_metres": ELEVATION_METRES}
    yield "dwelling/1", DWELLING, {"title": "Apartment 2B", "kind": "apartment", "job": subject(JOB), "elevation_metres": ELEVATION_METRES}
    yield "room/1", LIVING_ROOM, {"title": "Living room", "dwelling": subject(DWELLING),
                                  "outline": {"x_metres": 0, "y_metres": 0, "width_metres": 4.6, "depth_metres": 3.9}}
    yield "room/1", BEDROOM, {"title": "Bedroom", "dwelling": subject(DWELLING),
                              "outline": {"x_metres": 4.6, "y_metres": 0, "width_metres": 3.4, "depth_metres": 3.9}}
    yield "item/1", SOFA, {"title": "Sofa under the window", "kind": "sofa", "seats": 3, "covering": "cotton", "room": subject(LIVING_ROOM),
                           "place": {"x_metres": 2.3, "y_metres": 0.7, "turn_degrees": 0}}
    yield "item/1", MATTRESS, {"title": "Queen mattress", "kind": "mattress", "size": "queen", "covering": "mattress_tick",
                               "room": subject(BEDROOM), "place": {"x_metres": 1.7, "y_metres": 1.2, "turn_degrees": 0}}
    yield "machine/1", MACHINE, {"title": "Steamer, 1.5 kW (invented)", "power_watts": 1500}
    yield "head/1", HEAD, {"title": "Hand head, 80 mm (invented)", "machine": subject(MACHINE), "length_metres": 0.08, "width_metres": 0.12}
    yield "towel/1", TOWEL, {"title": "Thin terry cloth, wrapped", "use": "wrapped", "thickness_metres": 0.003}
    yield "probe/1", PROBE, {"title": "Thin wire probe (invented)", "time_constant_seconds": 0.3}
    yield "fold_test/1", FOLD_TEST, {"title": "Fold test of the hand head (invented)", "machine": subject(MACHINE), "head": subject(HEAD),
                                     "towel": subject(TOWEL), "probe": subject(PROBE), "start_celsius": START_CELSIUS,
                                     "elevation_metres": ELEVATION_METRES, "covering": "cotton"}
    for i, (layers, pace, peak) in enumerate(READINGS):
        yield "reading/1", FIRST_READING + i, {"fold_test": subject(FOLD_TEST), "pace_metres_per_second": pace / 1000, "layers": layers,
                                               "peak_celsius": peak, "typed": {"pace": f"{pace} mm/s", "peak": f"{peak} C"}}
    yield "settings/1", SETTINGS, {"temperature": "F", "length": "in", "language": "en", "fold_test": subject(FOLD_TEST)}


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
    if "--check" not in sys.argv:
        FILE.write_text(text(), encoding="utf-8")
        print(f"{FILE.name}: {text().count(chr(10))} events")
    elif not FILE.exists() or FILE.read_text(encoding="utf-8") != text():
        sys.exit(f"examples/{FILE.name} is not what tools/make_demo.py writes")
    else:
        print(f"{FILE.name} is what tools/make_demo.py writes")


if __name__ == "__main__":
    main()

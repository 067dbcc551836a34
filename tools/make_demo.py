#!/usr/bin/python3
"""Writes the demo job: a flat of two rooms with their furniture, one kit, one fold test, what an inspection found.

Everything in it is made up for this project: people, places, equipment and every measured value. The readings are set
to look like those of a small steamer with a bare 80 mm hand head; they measure nothing. Ids are fixed, so the job is
the same every time: examples/demo.ndjson, and the copy that the page opens.

tools/make_demo.py          writes both files
tools/make_demo.py --check  fails if they are not what this program writes
"""
from invented_job import ROOT, lines, subject, write_or_check

FILES = [ROOT / "examples" / "demo.ndjson", ROOT / "apps" / "web" / "public" / "demo" / "apartment.ndjson"]

# Subjects: what the events speak about.
JOB, DWELLING, LIVING_ROOM, BEDROOM, SOFA, MATTRESS = 0x01, 0x02, 0x03, 0x04, 0x0A, 0x0B
BOX_SPRING, NIGHT_TABLE, DRESSER, BASEBOARD, ARMCHAIR, RECLINER, CARPET = 0x0C, 0x0D, 0x0E, 0x0F, 0x10, 0x11, 0x12
VACUUM, DRYER, FIRST_CIRCUIT, WEIGHING, FIRST_PROBE_CHECK, START_CHECK = 0x50, 0x51, 0x52, 0x54, 0x55, 0x57
VISIT, RATES, ARRIVAL, FIRST_EVIDENCE, FIRST_TRAP, FIRST_CHECK = 0x60, 0x61, 0x62, 0x70, 0x80, 0x90
FIRST_RISK, PRIOR_TREATMENT, FIRST_CONSENT = 0xA0, 0xA8, 0xB0
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


# What one look after the other found: item, edge, what. Invented.
EVIDENCE = [
    (MATTRESS, "mattress.top_head_tape", {"look": "found", "adults": 2, "nymphs": 5, "eggs": 8, "spots": True, "how": "light_and_card", "certain": True}),
    (BOX_SPRING, "dust_cover.right_edge", {"look": "found", "adults": 3, "nymphs": 4, "cast_skins": 12, "spots": True, "how": "opened", "certain": True}),
    (SOFA, "seat_cushion_1.bottom_back_welt", {"look": "found", "cast_skins": 3, "spots": True, "how": "light_and_card", "certain": True}),
    (ARMCHAIR, None, {"look": "none_seen", "how": "light_and_card"}),
    (RECLINER, None, {"look": "none_seen", "how": "eye"}),
    (NIGHT_TABLE, None, {"look": "found", "spots": True, "how": "eye"}),
    (DRESSER, None, {"look": "none_seen", "how": "opened"}),
    (BASEBOARD, None, {"look": "not_accessible", "how": "eye", "note": "behind the bed"}),
]

# Leg traps under the bed and the sofa: room, item, name, what it held after a fortnight. Invented.
TRAPS = [
    (BEDROOM, MATTRESS, "Bed, head left", {"adults": 1, "nymphs": 3}),
    (BEDROOM, MATTRESS, "Bed, head right", {"adults": 0, "nymphs": 2}),
    (LIVING_ROOM, SOFA, "Sofa, front left", {"adults": 0, "nymphs": 0}),
]


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
    in_bedroom, in_living_room = {"room": subject(BEDROOM)}, {"room": subject(LIVING_ROOM)}
    yield "item/1", BOX_SPRING, {"title": "Box spring", "kind": "box_spring", "size": "queen", "covering": "mattress_tick", **in_bedroom,
                                 "place": {"x_metres": 1.7, "y_metres": 1.2, "turn_degrees": 0},
                                 "wetting_limit_grams_per_m2": WETTING_LIMIT_GRAMS_PER_M2, "hidden_spot_seconds": HIDDEN_SPOT_SECONDS}
    yield "item/1", NIGHT_TABLE, {"title": "Night table", "kind": "night_table", "covering": "unknown", "finish": "varnish", **in_bedroom,
                                  "place": {"x_metres": 2.85, "y_metres": 0.35, "turn_degrees": 0}}
    yield "item/1", DRESSER, {"title": "Dresser", "kind": "dresser", "covering": "unknown", "finish": "paint", **in_bedroom,
                              "place": {"x_metres": 1.5, "y_metres": 3.6, "turn_degrees": 180}}
    yield "item/1", BASEBOARD, {"title": "Baseboard behind the bed", "kind": "baseboard", "covering": "unknown", "finish": "paint",
                                "length_metres": 3.4, **in_bedroom, "place": {"x_metres": 1.7, "y_metres": 0.05, "turn_degrees": 0}}
    # No hidden-spot test was made on the armchair: the plan shows what that costs.
    yield "item/1", ARMCHAIR, {"title": "Armchair", "kind": "armchair", "covering": "cotton", **in_living_room,
                               "place": {"x_metres": 0.75, "y_metres": 2.4, "turn_degrees": -90}}
    yield "item/1", RECLINER, {"title": "Leather recliner", "kind": "recliner", "covering": "leather", **in_living_room,
                               "place": {"x_metres": 3.9, "y_metres": 2.4, "turn_degrees": 90}}
    yield "item/1", CARPET, {"title": "Carpet edge along the window wall", "kind": "carpet_edge", "covering": "unknown",
                             "length_metres": 4.6, **in_living_room, "place": {"x_metres": 2.3, "y_metres": 0.05, "turn_degrees": 0}}
    yield "machine/1", MACHINE, {"title": "Dry steamer, 1.5 kW (invented)", "power_watts": 1500, "tank": "pressurised",
                                 "water_kilograms": 2.0, "gauge_pascal": 350000}
    yield "head/1", HEAD, {"title": "Hand head (invented)", "machine": subject(MACHINE), "length_metres": 0.08, "width_metres": 0.2}
    yield "towel/1", TOWEL, {"title": "No towel", "use": "none"}
    yield "probe/1", PROBE, {"title": "Thin wire probe (invented)", "time_constant_seconds": 0.3}
    yield "fold_test/1", FOLD_TEST, {"title": "Fold of the sofa's loose cover (invented)", "machine": subject(MACHINE), "head": subject(HEAD),
                                     "towel": subject(TOWEL), "probe": subject(PROBE), "start_celsius": START_CELSIUS,
                                     "elevation_metres": ELEVATION_METRES, "covering": "polyester", "cloth": "polyester_fabric"}
    for i, (layers, typed, pace, peak) in enumerate(READINGS):
        yield "reading/1", FIRST_READING + i, {"fold_test": subject(FOLD_TEST), "pace_metres_per_second": pace, "layers": layers,
                                               "peak_celsius": peak, "typed": {"pace": typed, "peak": f"{peak} C"}}
    yield "vacuum/1", VACUUM, {"title": "Vacuum with fine filter (invented)", "fine_filter": True}
    yield "dryer/1", DRYER, {"title": "Dryer in the basement (invented)", "load_kilograms": 6}
    yield "circuit/1", FIRST_CIRCUIT, {"title": "Living room", "volts": 120, "breaker_amperes": 15, "outlets": 3, "other_load_watts": 150, **in_living_room}
    yield "circuit/1", FIRST_CIRCUIT + 1, {"title": "Bedroom", "volts": 120, "breaker_amperes": 20, "outlets": 3, **in_bedroom}
    yield "weighing/1", WEIGHING, {"machine": subject(MACHINE), "before_kilograms": 6.42, "after_kilograms": 6.24, "minutes": 5}
    yield "probe_check/1", FIRST_PROBE_CHECK, {"probe": subject(PROBE), "in": "melting_ice", "shown_celsius": 0.2, "on": "2025-01-26"}
    yield "probe_check/1", FIRST_PROBE_CHECK + 1, {"probe": subject(PROBE), "in": "boiling_water", "shown_celsius": 99.1,
                                                   "elevation_metres": ELEVATION_METRES, "on": "2025-01-26"}
    yield "start_check/1", START_CHECK, {"machine": subject(MACHINE), "hose_sound": True, "gasket_sound": True, "warmed_up": True,
                                         "first_spit_away": True, "towel_dry": True, "hands_and_eyes": True, "on": "2025-01-26"}
    yield "visit/1", VISIT, {"title": "First visit", "on": "2025-01-26", "crew": 1, "minutes": 300, "purpose": "treat"}
    yield "rates/1", RATES, {"currency": "USD", "per_visit": 80, "per_hour": 90}
    yield "arrival/1", ARRIVAL, {"state": "partly", "decision": "treat", "on": "2025-01-26"}
    for i, (item, edge, found) in enumerate(EVIDENCE):
        yield "evidence/1", FIRST_EVIDENCE + i, {"item": subject(item), **({"edge": edge} if edge else {}), **found}
    for i, (room, item, title, held) in enumerate(TRAPS):
        yield "trap/1", FIRST_TRAP + i, {"title": title, "type": "leg_trap", "room": subject(room), "item": subject(item), "set_on": "2025-01-12"}
        yield "trap_check/1", FIRST_CHECK + i, {"trap": subject(FIRST_TRAP + i), "on": "2025-01-26", **held}
    yield "risk/1", FIRST_RISK, {"what": "pets", "note": "one cat, with a neighbor during the visit", "settled": True}
    yield "risk/1", FIRST_RISK + 1, {"what": "smoke_detector", **in_bedroom}
    yield "prior_treatment/1", PRIOR_TREATMENT, {"what": "spray", "on": "2024-12-08", "by": "resident"}
    yield "consent/1", FIRST_CONSENT, {"to": "steam", "answer": "given", "by": "resident"}
    yield "consent/1", FIRST_CONSENT + 1, {"to": "open_dust_cover", "answer": "given", "item": subject(BOX_SPRING), "by": "resident"}
    yield "settings/1", SETTINGS, {"temperature": "F", "length": "in", "fold_test": subject(FOLD_TEST)}


if __name__ == "__main__":
    write_or_check(FILES, lines(statements(), "2025-01-26"))

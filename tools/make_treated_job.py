#!/usr/bin/python3
"""Writes examples/treated_job.ndjson: one room after a treatment, small enough to be judged in seconds.

Everything in it is made up for this project: people, places, equipment, every measured value and every timing. A mattress
was done well but for one hurried edge and one live bug, an ottoman in part, a leather recliner not at all.

tools/make_treated_job.py          writes the file
tools/make_treated_job.py --check  fails if it is not what this program writes
"""
from invented_job import ROOT, lines, subject, write_or_check

FILE = ROOT / "examples" / "treated_job.ndjson"

JOB, DWELLING, ROOM, MATTRESS, OTTOMAN, RECLINER = 0x1001, 0x1002, 0x1003, 0x100A, 0x100B, 0x100C
MACHINE, HEAD, TOWEL, PROBE, FOLD_TEST, VISIT, SETTINGS = 0x1014, 0x1015, 0x1016, 0x1017, 0x101E, 0x1020, 0x1030
READINGS, STROKES, MARKS, SPOTS, NOTES, OTHERS = 0x1040, 0x1060, 0x1090, 0x10A0, 0x10B0, 0x10C0

# (layers, m/s, C): invented, those of a small steamer with a bare hand head.
FOLD = [(1, 0.01, 90), (1, 0.018, 82), (1, 0.0254, 75), (1, 0.04, 61), (2, 0.008, 85), (2, 0.014, 70), (2, 0.02, 59), (2, 0.0254, 51)]

# (item, edge, length in m, pace in m/s): invented timings.
STROKES_MADE = [
    (MATTRESS, "mattress.top_foot_tape", 0.957, 0.0095),
    (MATTRESS, "mattress.top_right_tape", 1.872, 0.0095),
    (MATTRESS, "mattress.top_head_tape", 0.957, 0.0095),
    (MATTRESS, "mattress.top_left_tape", 1.872, 0.0254),  # at one inch per second: too fast
    (MATTRESS, "mattress.bottom_foot_tape", 0.957, 0.0095),
    (MATTRESS, "mattress.bottom_head_tape", 0.957, 0.0095),
    (MATTRESS, "mattress.border_head_quilting", 0.828, 0.016),
    (MATTRESS, "mattress.border_foot_quilting", 0.828, 0.016),
    (OTTOMAN, "dust_cover.left_edge", 0.424, 0.028),
    (OTTOMAN, "dust_cover.front_edge", 0.574, 0.028),
]


def statements():
    """Kind, subject and data of every event, in the order in which they were stated."""
    yield "job/1", JOB, {"title": "Demo room 3A", "opened_on": "2026-03-02", "elevation_metres": 200}
    yield "dwelling/1", DWELLING, {"title": "Demo room 3A", "kind": "apartment", "job": subject(JOB)}
    yield "room/1", ROOM, {"title": "Bedroom", "dwelling": subject(DWELLING),
                           "outline": {"x_metres": 0, "y_metres": 0, "width_metres": 4.2, "depth_metres": 3.6}}
    yield "item/1", MATTRESS, {"title": "Twin mattress", "kind": "mattress", "size": "twin", "covering": "polyester", "room": subject(ROOM),
                               "place": {"x_metres": 1.2, "y_metres": 1.2}, "wetting_limit_grams_per_m2": 110, "hidden_spot_seconds": 40}
    yield "item/1", OTTOMAN, {"title": "Ottoman", "kind": "ottoman", "covering": "polyester", "room": subject(ROOM),
                              "place": {"x_metres": 3.2, "y_metres": 0.8}}
    yield "item/1", RECLINER, {"title": "Leather recliner", "kind": "recliner", "covering": "leather", "room": subject(ROOM),
                               "place": {"x_metres": 3.3, "y_metres": 2.7}}
    yield "machine/1", MACHINE, {"title": "Dry steamer, 1.5 kW (invented)", "power_watts": 1500}
    yield "head/1", HEAD, {"title": "Hand head (invented)", "machine": subject(MACHINE), "length_metres": 0.08, "width_metres": 0.2}
    yield "towel/1", TOWEL, {"title": "No towel", "use": "none"}
    yield "probe/1", PROBE, {"title": "Thin wire probe (invented)", "time_constant_seconds": 0.3}
    yield "fold_test/1", FOLD_TEST, {"title": "Fold of a spare cover (invented)", "machine": subject(MACHINE), "head": subject(HEAD),
                                     "towel": subject(TOWEL), "probe": subject(PROBE), "start_celsius": 21, "elevation_metres": 200,
                                     "covering": "polyester", "cloth": "polyester_fabric"}
    for i, (layers, pace, peak) in enumerate(FOLD):
        yield "reading/1", READINGS + i, {"fold_test": subject(FOLD_TEST), "pace_metres_per_second": pace, "layers": layers, "peak_celsius": peak}
    yield "visit/1", VISIT, {"title": "Treatment", "on": "2026-03-02", "crew": 1, "minutes": 180, "purpose": "treat"}
    yield "evidence/1", OTHERS, {"item": subject(MATTRESS), "edge": "mattress.top_head_tape", "look": "found", "adults": 2, "nymphs": 5,
                                 "eggs": 12, "spots": True, "how": "light_and_card", "certain": True}
    yield "evidence/1", OTHERS + 1, {"item": subject(OTTOMAN), "look": "none_seen", "how": "light_and_card"}
    yield "evidence/1", OTHERS + 2, {"item": subject(RECLINER), "look": "found", "spots": True, "how": "eye"}
    yield "damage/1", OTHERS + 3, {"item": subject(OTTOMAN), "what": "worn corner of the lid, front left"}
    yield "risk/1", OTHERS + 4, {"what": "asthma", "note": "slept elsewhere that night", "settled": True, "settled_by": "resident"}
    yield "method/1", OTHERS + 5, {"item": subject(RECLINER), "method": "isolate", "reason": "leather is not steamed"}
    yield "consent/1", OTHERS + 6, {"to": "steam", "answer": "given", "by": "resident"}
    for i, (item, edge, length, pace) in enumerate(STROKES_MADE):
        yield "stroke/1", STROKES + i, {"item": subject(item), "edge": edge, "length_metres": length, "seconds": round(length / pace, 1),
                                        "towel": "none", "head": subject(HEAD), "fold_test": subject(FOLD_TEST), "visit": subject(VISIT)}
    yield "edge_mark/1", MARKS, {"item": subject(MATTRESS), "edge": "mattress.bottom_head_tape", "what": "live_bug", "visit": subject(VISIT)}
    yield "edge_mark/1", MARKS + 1, {"item": subject(MATTRESS), "edge": "mattress.bottom_left_tape", "what": "could_not_reach",
                                     "reason": "against the wall, bed could not be moved alone", "visit": subject(VISIT)}
    yield "edge_mark/1", MARKS + 2, {"item": subject(OTTOMAN), "edge": "leg_front_left.joint", "what": "treated_by_practice", "visit": subject(VISIT)}
    yield "stroke/1", STROKES + 20, {"item": subject(MATTRESS), "edge": "mattress.bottom_head_tape", "length_metres": 0.957, "seconds": 102,
                                     "towel": "none", "head": subject(HEAD), "fold_test": subject(FOLD_TEST), "visit": subject(VISIT),
                                     "follows": subject(MARKS)}
    yield "spot_reading/1", SPOTS, {"item": subject(MATTRESS), "edge": "mattress.top_head_tape", "gun_celsius": 74, "seconds_after": 2, "at_metres": 0.4}
    yield "redo_note/1", NOTES, {"item": subject(OTTOMAN), "edge": "dust_cover.back_edge", "reason": "cover torn there; the lid goes to the hot box"}
    yield "settings/1", SETTINGS, {"temperature": "F", "length": "in", "fold_test": subject(FOLD_TEST)}


if __name__ == "__main__":
    write_or_check([FILE], lines(statements(), "2026-03-02", first=0x2001))

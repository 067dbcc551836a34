#!/usr/bin/python3
"""Holds the timetables of `visit` against an exact solver on random visits, and prints the gap.

Usage: checks/visits.py PROGRAM [--count N] [--seconds S] [--minutes M] [--limit PERCENT]

The visits are made up (seeded). Each is asked with PROGRAM; the answer's own tasks and resources are then solved anew as
an integer program over whole minutes by CBC (Debian's coinor-cbc): one variable per task and possible begin, disaggregated
forerunners, one row per resource and minute. Begins are bounded by the longest chains before and behind a task and by the
makespan of the answer less one, so an infeasible program proves the answer the shortest. Where CBC does not finish in S
seconds the gap is counted against the bound that it has proven, which overstates it. Rules that the answer has to keep
(forerunners, capacities) are checked here again, apart from the engine. Fails above LIMIT percent of mean gap.
"""
import argparse
import json
import pathlib
import random
import re
import subprocess
import sys
import tempfile
import time

CAPACITY_TOLERANCE = 1e-6


def invented_visit(rng):
    rooms = ["Bedroom", "Living room", "Den"][: rng.randint(1, 3)]
    items = []
    for room in rooms:
        if room != "Living room":
            items.append({"title": f"mattress, {room}", "room": room, "method": "steam", "bed": True, "turns": rng.random() < 0.8, "encased": rng.random() < 0.7,
                          "steam": {"minutes": rng.randint(5, 45), "edges": rng.randint(4, 20), "hidden_minutes": rng.randint(0, 25), "hidden_edges": rng.randint(0, 12)},
                          "dry_minutes": [15, rng.randint(20, 120)]})
            items.append({"title": f"base, {room}", "room": room, "method": "steam", "bed": True, "turns": True, "legs": True, "encased": rng.random() < 0.5,
                          "dust_cover": True, "dust_cover_consent": rng.random() < 0.6,
                          "steam": {"hidden_minutes": rng.randint(3, 30), "hidden_edges": rng.randint(2, 20)}, "dry_minutes": [15, rng.randint(20, 90)]})
        for i in range(rng.randint(0, 3)):
            method = rng.choice(["steam", "steam", "steam", "isolate", "dryer", "vacuum", "discard"])
            item = {"title": f"seat {i}, {room}", "room": room, "method": method, "turns": rng.random() < 0.5, "dismantles": rng.random() < 0.4, "legs": rng.random() < 0.5}
            if method == "steam":
                item["steam"] = {"minutes": rng.randint(2, 35), "edges": rng.randint(2, 30), "hidden_minutes": rng.randint(0, 15), "hidden_edges": rng.randint(0, 10)}
            if method == "dryer":
                item["clock_minutes"] = 40
            items.append(item)
    if not items:
        items.append({"title": "chair", "room": rooms[0], "method": "vacuum"})
    visit = {"crew": rng.randint(1, 4), "items": items, "machines": rng.choice([1, 1, 2]), "dryers": rng.randint(1, 2), "vacuums": rng.choice([1, 1, 2]),
             "loads": [{"title": f"bedding, {room}", "room": room, "minutes": rng.choice([40, 60]), "bedding": True} for room in rooms if room != "Living room"]}
    visit["loads"] += [{"title": f"clothes {i}", "room": rooms[0], "minutes": rng.choice([40, 50, 60])} for i in range(rng.randint(0, 3))]
    if rng.random() < 0.7:
        visit["circuits"] = [{"title": room, "room": room, "breaker_amperes": rng.choice([15, 20, 20]), "other_load_watts": rng.choice([0, 100, 300])} for room in rooms]
    if rng.random() < 0.5:
        visit["steamer"] = {"power_watts": rng.choice([1200, 1500, 1800]), "tank": rng.choice(["pressurised", "continuous", "kettle"]), "water_kilograms": rng.choice([1.2, 1.8, 3])}
    return visit


def needs_of(task, answer):
    """Amounts by resource; the order of resources is people, steamers, vacuums, dryers, circuits."""
    out = {}
    if task["people"]:
        out[0] = task["people"]
    device = {"steamer": 1, "vacuum": 2, "dryer": 3}.get(task["device"])
    if device:
        out[device] = answer["resources"][1]["capacity"] if task["kind"] == "heat_up" else 1
    if task["circuit_index"] is not None:
        out[4 + task["circuit_index"]] = task["amperes"]
    return out


def check_rules(answer):
    tasks = answer["tasks"]
    for task in tasks:
        for before in task["after"]:
            assert tasks[before]["to_minutes"] <= task["from_minutes"], (task, tasks[before])
        assert task["to_minutes"] == task["from_minutes"] + task["minutes"]
    for minute in range(max(task["to_minutes"] for task in tasks)):
        used, people = {}, []
        for task in tasks:
            if task["from_minutes"] <= minute < task["to_minutes"]:
                people += task["who"]
                for resource, amount in needs_of(task, answer).items():
                    used[resource] = used.get(resource, 0) + amount
        assert len(people) == len(set(people)), f"minute {minute}: a person in two places"
        for resource, amount in used.items():
            assert amount <= answer["resources"][resource]["capacity"] + CAPACITY_TOLERANCE, (minute, resource, amount)
    assert answer["minutes"] == max(task["to_minutes"] for task in tasks if not task["tail"])


def windows(tasks, end):
    """Earliest and latest begin of each task when the last ends by `end`; None where there is none."""
    head, tail = [0] * len(tasks), [0] * len(tasks)
    order, done = [], set()
    while len(order) < len(tasks):
        for i, task in enumerate(tasks):
            if i not in done and all(before in done for before in task["after"]):
                order.append(i)
                done.add(i)
    for i in order:
        for before in tasks[i]["after"]:
            head[i] = max(head[i], head[before] + tasks[before]["minutes"])
    for i in reversed(order):
        tail[i] = max(tail[i], tasks[i]["minutes"])
        for before in tasks[i]["after"]:
            tail[before] = max(tail[before], tasks[before]["minutes"] + tail[i])
    out = [(head[i], end - tail[i]) for i in range(len(tasks))]
    return out if all(low <= high for low, high in out) else None


def write_program(path, tasks, needs, capacities, window, end):
    name = lambda i, t: f"x{i}_{t}"
    lines = ["Minimize", " m: E", "Subject To"]
    for i, (low, high) in enumerate(window):
        lines.append(f" o{i}: " + " + ".join(name(i, t) for t in range(low, high + 1)) + " = 1")
        lines.append(f" e{i}: E - " + " - ".join(f"{t + tasks[i]['minutes']} {name(i, t)}" for t in range(low, high + 1)) + " >= 0")
        for before in tasks[i]["after"]:
            b_low, b_high = window[before]
            for t in range(low, high + 1):
                # Begun by t: only if the forerunner has begun by t less its length.
                last = t - tasks[before]["minutes"]
                if last >= b_high:
                    break
                left = " + ".join(name(i, s) for s in range(low, t + 1))
                right = " - ".join(name(before, s) for s in range(b_low, last + 1))
                lines.append(f" p{i}_{before}_{t}: {left}" + (f" - {right}" if right else "") + " <= 0")
    for resource, capacity in enumerate(capacities):
        users = [i for i in range(len(tasks)) if needs[i].get(resource) and tasks[i]["minutes"]]
        if sum(needs[i][resource] for i in users) <= capacity + CAPACITY_TOLERANCE:
            continue
        for minute in range(end):
            terms = [f"{needs[i][resource]:.10g} {name(i, t)}" for i in users for t in range(max(window[i][0], minute - tasks[i]["minutes"] + 1), min(window[i][1], minute) + 1)]
            if terms:
                lines.append(f" r{resource}_{minute}: " + " + ".join(terms) + f" <= {capacity + CAPACITY_TOLERANCE:.10g}")
    lines += ["Bounds", f" E <= {end}", "Binaries"]
    lines += [" " + name(i, t) for i, (low, high) in enumerate(window) for t in range(low, high + 1)]
    lines.append("End")
    path.write_text("\n".join(lines) + "\n")


def exact(answer, seconds, folder):
    """Proven bound on the shortest makespan, the makespan found (None: the answer's own is the shortest), seconds."""
    tasks = [task for task in answer["tasks"] if not task["tail"]]
    place = {id(task): i for i, task in enumerate(tasks)}
    renumbered = [{**task, "after": [place[id(answer["tasks"][b])] for b in task["after"]]} for task in tasks]
    needs = [needs_of(task, answer) for task in tasks]
    capacities = [resource["capacity"] for resource in answer["resources"]]
    best, lower = answer["minutes"], answer["shortest_possible_minutes"]
    if best <= lower:
        return best, best, 0.0
    window = windows(renumbered, best - 1)
    if window is None:
        return best, best, 0.0
    program, solution = folder / "visit.lp", folder / "visit.sol"
    write_program(program, renumbered, needs, capacities, window, best - 1)
    began = time.monotonic()
    solution.unlink(missing_ok=True)
    output = folder / "visit.log"
    with output.open("w") as log:  # its own limit does not hold while it prepares
        try:
            subprocess.run(["cbc", str(program), "sec", str(seconds), "ratio", "0", "solve", "solu", str(solution)], stdout=log, stderr=log, timeout=2 * seconds + 20)
        except subprocess.TimeoutExpired:
            solution.unlink(missing_ok=True)
    said = output.read_text()
    took = time.monotonic() - began
    status = solution.read_text().splitlines()[0] if solution.exists() else ""
    found = re.search(r"objective value ([-\d.e+]+)", status)
    if status.startswith("Optimal"):
        value = round(float(found.group(1)))
        return value, value, took
    if "nfeasible" in status:
        return best, best, took
    bounds = [float(one) for one in re.findall(r"best possible ([-\d.e+]+)|Lower bound:\s+([-\d.e+]+)", said) for one in one if one]
    proven = max([lower] + [int(-(-bound // 1)) for bound in bounds if bound < 1e9])
    return min(proven, best), best, took


def main():
    arguments = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    arguments.add_argument("program")
    arguments.add_argument("--count", type=int, default=100)
    arguments.add_argument("--seconds", type=int, default=60, help="for each exact solution")
    arguments.add_argument("--minutes", type=float, default=1e9, help="stop asking further visits after so long")
    arguments.add_argument("--limit", type=float, default=5.0)
    arguments.add_argument("--seed", type=int, default=20260301)
    options = arguments.parse_args()
    began, gaps, proven, count_tasks, shorter = time.monotonic(), [], 0, [], 0
    with tempfile.TemporaryDirectory() as folder:
        for i in range(options.count):
            if time.monotonic() - began > 60 * options.minutes:
                break
            visit = invented_visit(random.Random(options.seed + i))
            asked = subprocess.run([options.program, "ask", "visit", "-"], input=json.dumps(visit), capture_output=True, text=True)
            assert asked.returncode == 0, asked.stderr
            answer = json.loads(asked.stdout)
            check_rules(answer)
            bound, best, took = exact(answer, options.seconds, pathlib.Path(folder))
            gap = 100 * (answer["minutes"] - bound) / bound
            gaps.append(gap)
            proven += bound == best
            shorter += best < answer["minutes"] or bound < best
            count_tasks.append(len(answer["tasks"]))
            if gap > 0:
                print(f"visit {i}: {len(answer['tasks'])} tasks, {answer['minutes']} min, bound {bound}{'' if bound == best else ' (not finished)'}, gap {gap:.1f} %, {took:.0f} s", flush=True)
    mean = sum(gaps) / len(gaps)
    print(f"{len(gaps)} visits of {min(count_tasks)} to {max(count_tasks)} tasks: mean gap {mean:.2f} %, largest {max(gaps):.1f} %, "
          f"{sum(1 for gap in gaps if gap == 0)} are the shortest possible, {len(gaps) - proven} not settled by the solver in {options.seconds} s")
    sys.exit(1 if mean > options.limit else 0)


if __name__ == "__main__":
    main()

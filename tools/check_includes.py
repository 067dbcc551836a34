#!/usr/bin/python3
"""Fails on an include that goes against the architecture.

Wings may include only themselves and wings to their right: apps -> engine -> job -> treatments -> bugs -> physics -> words.
Rooms (folders) inside a wing may include each other as long as no cycle arises. The six core wings use neither
clock, disk, network, randomness nor threads, and of other libraries only those that also build for WebAssembly.
`--test` checks the check on small invented trees.
"""
import re
import sys

import tree

WINGS = ["apps", "engine", "job", "treatments", "bugs", "physics", "words"]
CORE = WINGS[1:]
ROOMED = ["job", "treatments", "bugs", "physics"]  # the engine is one room; its subfolders are its parts
INCLUDE = re.compile(r'^[ \t]*#[ \t]*include[ \t]*([<"])([^>"]+)[>"]', re.M)

# Not in the core: the disk, the console, clocks, threads, randomness; and std::format, which GCC 12 lacks.
FORBIDDEN = {"iostream", "fstream", "filesystem", "ctime", "time.h", "thread", "mutex", "shared_mutex",
             "condition_variable", "future", "semaphore", "latch", "barrier", "stop_token", "random", "format", "syncstream",
             "unistd.h", "fcntl.h", "sys/stat.h", "sys/types.h", "sys/socket.h", "dirent.h", "pthread.h"}
LIBRARIES = ("nlohmann/", "fmt/", "tl/", "Eigen/", "boost/")
TEST_LIBRARIES = LIBRARIES + ("eigen3/", "gtest/", "gmock/", "rapidcheck", "rapidcheck/", "sundials/", "cvode/", "nvector/", "sunmatrix/",
                              "sunlinsol/")
CLOCK = re.compile(r"\b(?:system|steady|high_resolution|utc|tai|gps|file)_clock\b")  # <chrono> serves its calendar only
RECORD_WORDS = ("zip", "zlib", "archive", "sqlite", "soci", "httplib")


def wing_of(name):
    first = name.split("/")[0]
    return first if first in WINGS else None


def room_of(name):
    return name.rpartition("/")[0]


def complaints(sources):
    """Complaints about {file name: text}."""
    edges = {}
    for name, text in sorted(sources.items()):
        wing = wing_of(name)
        if wing is None:
            continue
        is_test = name.endswith("_test.cpp") or "_for_tests." in name or "/must_not_compile/" in name
        for match in CLOCK.finditer(text) if wing in CORE and not is_test else ():
            yield f"{name}:{text.count(chr(10), 0, match.start()) + 1}: the core has no clock: {match.group()}"
        for match in INCLUDE.finditer(text):
            at = f"{name}:{text.count(chr(10), 0, match.start()) + 1}"
            bracket, target = match.groups()
            if bracket == '"':
                if target not in sources:
                    yield f"{at}: \"{target}\" is no file of the repository (write includes from its root)"
                    continue
                other = wing_of(target)
                if other is None:
                    yield f"{at}: \"{target}\" lies in no wing"
                elif WINGS.index(other) < WINGS.index(wing):
                    yield f"{at}: {wing} may not include {target}: {other} lies to its left ({' -> '.join(WINGS)})"
                elif other == wing and wing in ROOMED and not is_test and room_of(name) != room_of(target):
                    edges.setdefault(room_of(name), {})[room_of(target)] = f"{at} includes {target}"
                if room_of(name) == "job/record" and other == "apps":
                    yield f"{at}: job/record knows events and a manifest, not files: {target}"
            elif wing in CORE:
                if target in FORBIDDEN and not is_test:
                    yield f"{at}: the core has no clock, disk, console, thread or randomness: <{target}>"
                if ("/" in target or "." in target) and target not in FORBIDDEN and \
                        not target.startswith(TEST_LIBRARIES if is_test else LIBRARIES) and not is_standard_c(target):
                    yield f"{at}: <{target}> is not among the libraries that the core uses ({', '.join(LIBRARIES)})"
            if room_of(name) == "job/record" and any(word in target.lower() for word in RECORD_WORDS):
                yield f"{at}: job/record knows events and a manifest, not files: {target}"
    yield from cycles(edges)


def is_standard_c(target):
    return target in {"assert.h", "math.h", "stddef.h", "stdint.h", "stdlib.h", "string.h"}


def cycles(edges):
    """Complaints about circles among rooms."""
    done, seen = set(), set()

    def visit(room, path):
        if room in path:
            circle = path[path.index(room):] + [room]
            key = frozenset(circle)
            if key not in seen:
                seen.add(key)
                whys = [edges[a][b] for a, b in zip(circle, circle[1:])]
                yield f"rooms include each other in a circle: {' -> '.join(circle)} ({'; '.join(whys)})"
            return
        if room in done:
            return
        for other in sorted(edges.get(room, {})):
            yield from visit(other, path + [room])
        done.add(room)

    for room in sorted(edges):
        yield from visit(room, [])


def test():
    good = {"physics/water/a.h": "#include <vector>\n", "physics/conduction/b.cpp": '#include "physics/water/a.h"\n',
            "apps/cli/main.cpp": '#include <iostream>\n#include "physics/water/a.h"\n',
            "physics/water/a_unit_test.cpp": "#include <fstream>\n#include <gtest/gtest.h>\n#include \"physics/conduction/b.h\"\n",
            "physics/conduction/b.h": ""}
    assert list(complaints(good)) == [], list(complaints(good))
    bad = {
        "to the left": {"physics/a/a.cpp": '#include "job/b/b.h"\n', "job/b/b.h": ""},
        "no file of": {"physics/a/a.cpp": '#include "a.h"\n'},
        "in a circle": {"physics/a/a.h": '#include "physics/b/b.h"\n', "physics/b/b.h": '#include "physics/a/a.h"\n'},
        "no clock": {"bugs/a/a.cpp": "# include <thread>\n"},
        "has no clock": {"bugs/a/a.cpp": "#include <chrono>\nauto t = std::chrono::steady_clock::now();\n"},
        "not among": {"job/a/a.cpp": "#include <httplib.h>\n"},
        "not files": {"job/record/a.cpp": "#include <zip.h>\n"},
    }
    for words, sources in bad.items():
        found = list(complaints(sources))
        assert found and any(words in line or words.replace("to the left", "to its left") in line for line in found), (words, found)
    print(f"{len(bad)} wrong trees are refused, the right one passes")


def main():
    if "--test" in sys.argv:
        return test()
    sources = {name: tree.text_of(name) or "" for name in tree.files() if name.endswith((".h", ".cpp"))}
    found = list(complaints(sources))
    print("\n".join(found))
    print(f"{len(sources)} files, {len(found)} includes against the architecture")
    sys.exit(1 if found or not sources else 0)


if __name__ == "__main__":
    main()

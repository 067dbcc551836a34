#!/usr/bin/python3
"""Asks every example in Spanish and British English, and compares the answers with the American ones.

Usage: tools/check_answers_in_languages.py PROGRAM [--list]. Nothing may differ but texts; a text that stays the same in
Spanish is named, unless ALIKE says that it is one that no language changes (names that people gave, keys, sources, numbers). Refusals are compared as
well, and what the commands print. `--list` prints every text that differs, for a reader; `--test` checks the check.
"""
import concurrent.futures
import json
import os
import re
import subprocess
import sys

import tree

# Members that hold words for people; all others must be equal in every language.
TEXTS = {"text", "title", "heading", "advice", "remark", "explanation", "remedy", "message", "summary", "harm", "template",
         "who_decides", "effect", "when", "words", "shown", "reason", "cause_text", "recorded_only", "not_covered", "calendar",
         "place", "source"}
LANGUAGE = {"language", "asked"}  # of a report; the hash of what was computed and worded
# Texts that are the same in every language: member -> pattern of the value.
ALIKE = [
    ("source", r".*"), ("locator", r".*"), ("quality", r".*"), ("data", r".*"), ("name", r".*"), ("id", r".*"), ("where", r".*"),
    ("machine", r".*"), ("head", r".*"), ("covering", r".*"), ("head_key", r".*"), ("cloth_key", r".*"), ("note", r".*"),
    ("unit", r".*"),
    ("title", r"(Twin XL|California king), .*"),  # names of sizes
    ("place", r"Curtain, Heading of panel 1"),  # two titles that the example of the report gives
]


def walk(american, other, path, member):
    """(path, member, American value, other value) of every leaf, and complaints about structure."""
    if isinstance(american, dict) and isinstance(other, dict):
        if list(american) != list(other):
            yield path, None, sorted(set(american) ^ set(other)), "other members"
        for key in american:
            if key in other:
                yield from walk(american[key], other[key], f"{path}/{key}", key)
    elif isinstance(american, list) and isinstance(other, list):
        if len(american) != len(other):
            yield path, None, len(american), len(other)
        for i, (a, b) in enumerate(zip(american, other)):
            yield from walk(a, b, f"{path}/{i}", member)
    else:
        yield path, member, american, other


def is_words(text):
    """Whether somebody reads this: words with a space between them, no key, no number with its unit."""
    return re.search(r"[A-Za-z]{2,} [A-Za-z(]{2,}", text) is not None


def given_texts(request):
    """Every text of a request: what a person gave is not translated."""
    if isinstance(request, dict):
        return {text for value in request.values() for text in given_texts(value)}
    if isinstance(request, list):
        return {text for value in request for text in given_texts(value)}
    return {request} if isinstance(request, str) else set()


def compare(american, other, given, spanish):
    for path, member, a, b in walk(american, other, "", None):
        if member is None:
            yield f"{path}: {a} {b}"
        elif member in LANGUAGE:
            continue
        elif a != b:
            if not (isinstance(a, str) and isinstance(b, str) and member in TEXTS):
                yield f"{path}: {a!r} became {b!r}"
        elif spanish and isinstance(a, str) and is_words(a):
            if not any(a in text for text in given) and not any(member == known and re.fullmatch(pattern, a, re.S) for known, pattern in ALIKE):
                yield f"{path}: not translated: {a!r}"


def ask(program, question, request, language=None):
    asked = dict(request, **({"language": language} if language else {}))
    run = subprocess.run([program, "ask", question], input=json.dumps(asked), capture_output=True, text=True,
                         env=dict(os.environ, LASTEGG_LANGUAGE="en-US"))
    return json.loads(run.stdout or run.stderr)


# One wrong request for each of many refusals: question, members to change in its example (None: taken out).
REFUSALS = [
    ("saturation", {"temperature_celsius": "20 apples"}), ("saturation", {"temperature_celsius": 900}), ("saturation", {"temprature": 1}),
    ("saturation", {"temperature_celsius": "1,5 C"}), ("pace", {"samples": 1.5}),
    ("pace", {"edge": None}), ("pace", {"confidence": 2}), ("dose", {"stage": "larva"}), ("dose", {"series": {"seconds": [0, 0], "celsius": [1, 2]}}),
    ("furniture", {"item": "sofa", "seats": 9}), ("furniture", {"item": "sofa", "width_metres": 0.1}), ("plan", {"items": []}),
    ("visit", {"crew": 9}), ("conduction", {"layers": []}), ("follow_up", {"treated_on": "yesterday"}), ("boiler", {"power_watts": 1e9}),
    ("survey", {"items": [{"id": "a", "kind": "sofa"}, {"id": "a", "kind": "sofa"}]}),
]

# What commands print, and words that must stand there in Spanish.
COMMANDS = [
    (["foldtest", "examples/fold_readings.csv", "--samples", "128"], ["Veredicto:", "Práctica:", "ritmo"]),
    (["dose", "examples/heated_box_log.csv", "--stage", "egg"], ["huevo:", "lecturas", "probabilidad de muerte"]),
    (["plan", "examples/plan.json"], ["altura", "Qué limita a cada uno", "El vapor quema"]),
    (["visit", "examples/visit.json"], ["Horario", "¿Pueden dormir", "Circuitos"]),
    (["method", "examples/method.json"], ["puede usarse", "vetado"]),
    (["follow-up", "examples/follow_up.json"], ["Vuelva del", "día"]),
    (["job", "show", "examples/demo.ndjson"], ["Cuartos", "Equipo", "Pruebas de pliegue"]),
    (["foldtest", "no/such/file.csv"], ["no se puede abrir"]),
]


def command_complaints(program):
    for words, wanted in COMMANDS:
        run = subprocess.run([program, *words, "--language", "es"], capture_output=True, text=True, cwd=tree.ROOT)
        by_locale = subprocess.run([program, *words], capture_output=True, text=True, cwd=tree.ROOT,
                                   env={**{k: v for k, v in os.environ.items() if not k.startswith(("LC_", "LANG", "LASTEGG_L"))},
                                        "LANG": "es_MX.UTF-8"})
        said = run.stdout + run.stderr
        for word in wanted:
            if word not in said:
                yield f"{' '.join(words)} --language es does not say {word!r}"
        if by_locale.stdout + by_locale.stderr != said:
            yield f"{' '.join(words)}: LANG=es_MX.UTF-8 says something else than --language es"


def help_complaints(program):
    """What --help of the program and of every command still says in English where Spanish is asked for."""
    def lines(words, language):
        run = subprocess.run([program, "--language", language, *words, "--help"], capture_output=True, text=True)
        return run.stdout.splitlines()

    commands = re.findall(r"^  ([a-z-]+) {2,}\S", "\n".join(lines([], "en-US")).split("Subcommands:")[1], re.M)
    for words in [[], *([name] for name in commands), *(["job", name] for name in ("show", "check", "merge", "pack", "unpack"))]:
        american, spanish = lines(words, "en-US"), lines(words, "es")
        if len(american) < 3 or len(spanish) < 3:
            yield f"{' '.join(words)} --help says next to nothing"
        for line in set(american) & set(spanish):
            if is_words(line) and not re.fullmatch(r" *--[a-z-]+ \S+ in \[.*\]", line):  # the parser's own form of a range
                yield f"{' '.join(words)} --help --language es still says {line.strip()!r}"


def example_complaints(program, example, listing):
    question, request = example.name.split(".")[0], json.loads(example.read_text())
    american = ask(program, question, request)
    given = given_texts(request)
    found = []
    if "error" in american:
        found.append(f"{example.name}: refused: {american['error']['message']}")
    for language in ("en-US", "en-GB", "es"):
        other = ask(program, question, request, language)
        if language == "en-US" and other != american:
            found.append(f"{example.name}: en-US is not what is answered without a language")
        found += [f"{example.name} in {language}: {line}" for line in compare(american, other, given, language == "es")]
        if listing and language == "es":
            for path, _, a, b in walk(american, other, "", None):
                if a != b:
                    print(f"{example.name}{path}\n  {a}\n  {b}")
    return found


def test():
    def found(american, other, spanish=True, given=()):
        return list(compare(american, other, set(given), spanish))
    right = {"n": 1, "code": "soak", "text": "a long seam", "list": [{"title": "the left arm"}], "source": "a book of tests"}
    assert found(right, {**right, "text": "una costura", "list": [{"title": "el brazo"}]}) == []
    assert found(right, right, spanish=False) == []
    assert found(right, {**right, "text": "una costura"}, given=["the left arm"]) == []
    for words, other in {"'soak' became": {**right, "code": "empapar"}, "1 became 2": {**right, "n": 2}, "other members": {"n": 1},
                         "not translated: 'a long seam'": right, "/list: 1 2": {**right, "list": [{"title": "a"}, {"title": "b"}]},
                         "became None": {**right, "text": None}}.items():
        assert any(words in line for line in found(right, other)), (words, found(right, other))
    print("6 wrong answers are refused, the right ones pass")


def main():
    if "--test" in sys.argv:
        return test()
    program, listing = sys.argv[1], "--list" in sys.argv
    examples = [one for one in sorted((tree.ROOT / "examples").glob("*.json")) if "language" not in json.loads(one.read_text())]
    found = []
    with concurrent.futures.ThreadPoolExecutor(2) as pool:
        for complaints in pool.map(lambda one: example_complaints(program, one, listing), examples):
            found += complaints
    for question, change in REFUSALS:
        request = json.loads((tree.ROOT / "examples" / f"{question}.json").read_text())
        for key, value in change.items():
            request.pop(key, None)
            if value is not None:
                request[key] = value
        american, spanish = ask(program, question, request), ask(program, question, request, "es")
        place = f"{question} with {change}"
        if "error" not in american or "error" not in spanish:
            found.append(f"{place}: was answered")
            continue
        if listing:
            print(f"{place}\n  {american['error']['message']}\n  {spanish['error']['message']}")
        if american["error"]["message"] == spanish["error"]["message"]:
            found.append(f"{place}: not translated: {american['error']['message']!r}")
        for member in ("kind", "where", "unit"):
            if american["error"].get(member) != spanish["error"].get(member):
                found.append(f"{place}: {member} differs: {american['error']} {spanish['error']}")
    wrong = ask(program, "saturation", {"temperature_celsius": 20}, "fr")
    if wrong.get("error", {}).get("where") != "/language":
        found.append(f"an unknown language is answered: {wrong}")
    found += command_complaints(program)
    found += help_complaints(program)
    print("\n".join(found))
    print(f"{len(examples)} examples and {len(REFUSALS)} refusals in three languages, {len(COMMANDS)} commands, {len(found)} complaints")
    sys.exit(1 if found or not examples else 0)


if __name__ == "__main__":
    main()

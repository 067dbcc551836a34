#!/usr/bin/python3
"""Fails on a sentence that has no Spanish, and on an entry of a catalogue that no sentence asks for.

English sentences stand in the C++ as the first argument of say(), in_language() and to_say(), and in data files, where
FIELDS names them. words/data/es.json has to hold each of them, in the section "code" or "data", and nothing else;
words/data/en-GB.json may hold some of them. The section "furniture" (titles that builders put together) is held against
the furniture itself by words_of_furniture_test.cpp under job/furniture. `--list` prints what is asked for, as JSON;
`--test` checks the check.
"""
import json
import re
import sys

import tree

SPANISH = "words/data/es.json"
BRITISH = "words/data/en-GB.json"
CALL = re.compile(r"\b(say|in_language|to_say)\(")
PIECE = re.compile(r'\s*"((?:\\.|[^"\\\n])*)"')
ESCAPES = {"n": "\n", "t": "\t", '"': '"', "\\": "\\", "'": "'", "r": "\r"}

# Texts of data files that people read: file -> paths, "*" for every entry. With "spaced" the value is a key, which is said
# with spaces for underscores; a missing member says nothing.
FIELDS = {
    "job/edges/data/edge_kinds.json": ["kinds/*/title", "kinds/*/text", "kinds/*/not_covered"],
    "job/survey/data/hazards.json": ["hazards/*/text", "hazards/*/who_decides", "hazards/*/key", "hazards/*/settled_by/*"],
    "job/safety/data/sentences.json": ["sentences/*/text"],
    "treatments/choice/data/methods.json": ["methods/*/title", "methods/*/text", "methods/*/harm", "methods/*/evidence/*/text",
                                            "methods/*/key spaced"],
    "treatments/choice/data/rules.json": ["rules/*/text"],
    "physics/materials/data/damage_limits.json": ["limits/*/title", "limits/*/when", "limits/*/effect"],
    "physics/materials/data/coverings.json": ["coverings/*/title", "coverings/*/reason", "coverings/*/covering"],
    "physics/materials/data/materials.json": ["materials/*/title"],
}


def literal_at(text, position):
    """The string literal (of one or more pieces) that begins at `position`, or None."""
    value, at = None, position
    while piece := PIECE.match(text, at):
        value = (value or "") + re.sub(r"\\(.)", lambda m: ESCAPES[m.group(1)], piece.group(1))
        at = piece.end()
    return value


def asked_in_code(name, text):
    """(sentence, place) of every call with a literal."""
    for match in CALL.finditer(text):
        value = literal_at(text, match.end())
        if value is not None:
            yield value, f"{name}:{text.count(chr(10), 0, match.start()) + 1}"


def values(document, path):
    if not path:
        return [document] if isinstance(document, str) and document else []
    first, rest = path[0], path[1:]
    if first == "*":
        children = document if isinstance(document, list) else document.values() if isinstance(document, dict) else []
        return [value for child in children for value in values(child, rest)]
    return values(document[first], rest) if isinstance(document, dict) and first in document else []


def asked_in_data(name, document):
    for field in FIELDS.get(name, []):
        path, _, how = field.partition(" ")
        found = values(document, path.split("/"))
        if not found:
            yield None, f"{name}: nothing stands at {path}"
        for value in found:
            yield value.replace("_", " ") if how == "spaced" else value, f"{name}: {path}"


def has_words(sentence):
    """Whether there is anything to translate: letters outside of placeholders."""
    return re.search(r"[A-Za-z]", re.sub(r"\{[^}]*\}", "", sentence)) is not None


def asked(files):
    """{section: {sentence: place}}, and complaints."""
    wanted, problems = {"code": {}, "data": {}}, []
    for name, text in sorted(files.items()):
        if name.endswith((".cpp", ".h")) and not name.endswith("_test.cpp") and name != "words/say.h":
            for sentence, place in asked_in_code(name, text):
                if has_words(sentence) or sentence == "{} {}: {}.":
                    wanted["code"].setdefault(sentence, place)
        elif name in FIELDS:
            for sentence, place in asked_in_data(name, json.loads(text)):
                if sentence is None:
                    problems.append(place)
                elif has_words(sentence):
                    wanted["data"].setdefault(sentence, place)
    for sentence in set(wanted["code"]) & set(wanted["data"]):
        del wanted["data"][sentence]
    return wanted, problems


def complaints(files):
    wanted, problems = asked(files)
    yield from problems
    spanish = json.loads(files.get(SPANISH, "{}")).get("sections", {})
    british = json.loads(files.get(BRITISH, "{}")).get("sections", {})
    for section in wanted:
        held = spanish.get(section, {})
        for sentence, place in wanted[section].items():
            if sentence not in held:
                yield f"{place}: no Spanish for {sentence!r}"
            elif not held[sentence].strip():
                yield f"{SPANISH}: nothing stands for {sentence!r}"
        for sentence in held:
            if sentence not in wanted[section]:
                yield f"{SPANISH}: nobody says {sentence!r} (section {section})"
        for sentence, told in british.get(section, {}).items():
            if sentence not in wanted[section]:
                yield f"{BRITISH}: nobody says {sentence!r} (section {section})"
            elif told == sentence:
                yield f"{BRITISH}: {sentence!r} is what it stands for"
    for name, sections in ((SPANISH, spanish), (BRITISH, british)):
        for section in sections:
            if section not in (*wanted, "furniture"):
                yield f"{name}: no such section: {section}"


def test():
    def files(code, spanish, british=None):
        return {"engine/a.cpp": code, SPANISH: json.dumps({"sections": {"code": spanish}}),
                BRITISH: json.dumps({"sections": {"code": british or {}}})}
    good = files('say("a {:g} b\\n" // c\n "x", 1); say(\n "two "\n   "pieces \\"q\\""); f("not said"); say("{}", 1); in_language(x);'
                 ' constexpr auto k = to_say("marked");'.replace(' // c\n "x"', ""),
                 {"a {:g} b\n": "a", 'two pieces "q"': "dos", "marked": "m"}, {"marked": "marqued"})
    assert list(complaints(good)) == [], list(complaints(good))
    for words, wrong in {
        "no Spanish for 'b'": files('say("b");', {}),
        "nobody says 'c'": files('say("b");', {"b": "B", "c": "C"}),
        "nothing stands for 'b'": files('say("b");', {"b": " "}),
        "en-GB.json: nobody says 'd'": files('say("b");', {"b": "B"}, {"d": "D"}),
        "is what it stands for": files('say("b");', {"b": "B"}, {"b": "b"}),
        "nothing stands at": {**files("", {}), "treatments/choice/data/rules.json": "{}"},
        "no Spanish for 'hot room'": {**files("", {}), "treatments/choice/data/methods.json":
                                      json.dumps({"methods": [{"key": "hot_room"}]})},
    }.items():
        found = list(complaints(wrong))
        assert any(words in line for line in found), (words, found)
    print("7 wrong catalogues are refused, the right one passes")


def main():
    if "--test" in sys.argv:
        return test()
    files = {name: tree.text_of(name) or "" for name in tree.files()
             if name.endswith((".h", ".cpp")) or name in FIELDS or name in (SPANISH, BRITISH)}
    if "--list" in sys.argv:
        return print(json.dumps(asked(files)[0], indent=1, ensure_ascii=False))
    found = list(complaints(files))
    print("\n".join(found))
    wanted = asked(files)[0]
    print(f"{sum(len(section) for section in wanted.values())} sentences in code and data, {len(found)} complaints")
    sys.exit(1 if found or not wanted["code"] or not wanted["data"] else 0)


if __name__ == "__main__":
    main()

#!/usr/bin/python3
"""Fails on a data file that breaks its schema, or on a number whose source cannot be found.

Every <wing>/<room>/data/<name>.json is held against schema/data/<name>.schema.json. Each `source` has to be a key of
references/sources.bib, a key of the file's own `sources`, or, for an estimate, "estimate: how". Words that pretend to be
a source are refused, an estimate says how it was made, a value lies in its range, and every entry of the bibliography
says what was read of it and is used. `--test` checks the check.
"""
import json
import re
import sys

import jsonschema

import tree

DATA = re.compile(r"(?:physics|bugs|treatments|job|engine)/\w+/data/(\w+)\.json")
SCHEMAS = "schema/data/"
BIBLIOGRAPHY = "references/sources.bib"
QUALITIES = {"measured", "handbook", "practice", "estimate", "from memory"}
NO_SOURCE = re.compile(r"(?i)\b(?:various|unknown|assumed|n/a|tbd)\b")
CITED = re.compile(r"Source:.*?\[([a-z0-9_-]+)\]")
ENTRY = re.compile(r"@(\w+)\{([^,\s]+),(.*?)\n\}", re.S)
NEEDED = ("title", "author", "year", "note")


def no_duplicates(pairs):
    keys = [key for key, _ in pairs]
    twice = {key for key in keys if keys.count(key) > 1}
    if twice:
        raise ValueError(f"keys given twice: {sorted(twice)}")
    return dict(pairs)


def bibliography(text):
    """Keys of the bibliography and complaints about it."""
    text = re.sub(r"(?m)^%.*$", "", text)
    entries, problems = {}, []
    for _, key, body in ENTRY.findall(text):
        if key in entries:
            problems.append(f"{key} is entered twice")
        entries[key] = body
        for member in NEEDED:
            if not re.search(rf"\b{member}\s*=\s*\{{\s*\S", body):
                problems.append(f"{key} has no {member}")
    if len(entries) != text.count("@"):
        problems.append(f"{text.count('@')} entries begin, {len(entries)} can be read")
    return set(entries), problems


def sourced(value, path=""):
    """Every object that names a source, with its place."""
    if isinstance(value, dict):
        if "source" in value:
            yield path, value
        for key, child in value.items():
            yield from sourced(child, f"{path}/{key}")
    elif isinstance(value, list):
        for i, child in enumerate(value):
            yield from sourced(child, f"{path}/{i}")


def complaints_of_datum(datum, keys, own_keys):
    source, quality = str(datum["source"]), datum.get("quality")
    if quality not in QUALITIES:
        yield f"the quality is {quality!r}"
    if NO_SOURCE.search(source) or NO_SOURCE.search(str(datum.get("locator", ""))):
        yield f"{source!r}, {datum.get('locator', '')!r} is no source"
    told = re.fullmatch(r"estimate: \S.{5,}", source) is not None
    if told and quality != "estimate":
        yield "an estimate has the quality estimate"
    if source not in keys and source not in own_keys and not told:
        yield f"{source!r} is neither in {BIBLIOGRAPHY} nor among the file's own sources"
    if quality == "estimate" and not told and not datum.get("note"):
        yield "an estimate has to say how it was made (note)"
    if source in keys and not datum.get("locator"):
        yield "no locator"
    if source == "memory" and quality != "from memory":
        yield "what comes from memory has the quality from memory"
    for low, high in [datum.get("range", [None, None]), [datum.get("lowest"), datum.get("highest")]]:
        value = datum.get("value")
        if low is not None and high is not None and value is not None and not low <= value <= high:
            yield f"{value} lies outside {low} to {high}"


def complaints_of_edge_kinds(document, materials):
    """Materials that no data file has, and depths that begin below their end."""
    for kind in document["kinds"]:
        named = [kind[member] for member in ("material", "solid") if member in kind]
        named += [layer["material"] for member in ("over", "under") for layer in kind.get(member, [])]
        for material in named:
            if material not in materials:
                yield f"{kind['key']}: there is no material {material}"
        for member in ("depth_metres", "depth_cloths"):
            if member in kind and not kind[member][0] < kind[member][1]:
                yield f"{kind['key']}: {member} does not rise"
        if kind.get("depth_cloths", [0, 0])[1] > kind.get("cloths", 0):
            yield f"{kind['key']}: eggs under more cloths than the fold has"


def complaints(files, bib_text):
    """Complaints about {name: text} of data files and schemas, and about the bibliography."""
    keys, problems = bibliography(bib_text)
    for problem in problems:
        yield f"{BIBLIOGRAPHY}: {problem}"
    schemas = {}
    for name, text in files.items():
        if name.startswith(SCHEMAS):
            schemas[name[len(SCHEMAS):]] = json.loads(text)
    store = {name: schema for name, schema in schemas.items()}
    served = {"datum.schema.json"}
    used = set()
    for name, text in sorted(files.items()):
        match = DATA.fullmatch(name)
        if not match:
            continue
        schema_name = match.group(1) + ".schema.json"
        served.add(schema_name)
        try:
            document = json.loads(text, object_pairs_hook=no_duplicates)
        except ValueError as problem:
            yield f"{name}: {problem}"
            continue
        if schema_name not in schemas:
            yield f"{name}: there is no {SCHEMAS}{schema_name}"
        else:
            schema = schemas[schema_name]
            resolver = jsonschema.RefResolver(base_uri="", referrer=schema, store=store)
            for problem in jsonschema.Draft202012Validator(schema, resolver=resolver).iter_errors(document):
                yield f"{name}: /{'/'.join(map(str, problem.absolute_path))}: {problem.message[:300]}"
        if schema_name == "edge_kinds.schema.json":
            materials = json.loads(files.get("physics/materials/data/materials.json", '{"materials": []}'))["materials"]
            for problem in complaints_of_edge_kinds(document, {material["key"] for material in materials}):
                yield f"{name}: {problem}"
        own = document.get("sources", {}) if isinstance(document, dict) else {}
        own_keys = {key for key, entry in own.items() if isinstance(entry, dict) and entry.get("text") and entry.get("kind")}
        for path, datum in sourced(document):
            used.add(datum["source"])
            for problem in complaints_of_datum(datum, keys, own_keys):
                yield f"{name}: {path}: {problem}"
    for name in sorted(set(schemas) - served):
        yield f"{SCHEMAS}{name}: no data file is held against it"


def complaints_of_text(texts, bib_text):
    """Citations in source and documents that lead nowhere, and entries that nothing uses."""
    keys, _ = bibliography(bib_text)
    for name, text in sorted(texts.items()):
        if name.endswith((".h", ".cpp")):
            for key in CITED.findall(text):
                if key not in keys:
                    yield f"{name}: [{key}] is not in {BIBLIOGRAPHY}"
    everything = "\n".join(text for name, text in texts.items() if name != BIBLIOGRAPHY)
    for key in sorted(keys):
        if not re.search(rf"(?<![\w-]){re.escape(key)}(?![\w-])", everything):
            yield f"{BIBLIOGRAPHY}: nothing uses {key}"


def test():
    bib = "% a\n@misc{memory,\n  author = {{a}}, title = {b}, year = {n.d.}, note = {c}\n}\n"
    schema = {"type": "object", "properties": {"n": {"$ref": "datum.schema.json#/$defs/number"}}}
    datum = {"$defs": {"number": {"type": "object", "properties": {"value": {"type": "number"}}, "required": ["value"]}}}
    good = {"value": 3, "source": "memory", "locator": "page 3", "quality": "from memory"}

    def found(document, bib_text=bib, **more):
        files = {"physics/a/data/x.json": document if isinstance(document, str) else json.dumps(document),
                 "schema/data/x.schema.json": json.dumps(schema), "schema/data/datum.schema.json": json.dumps(datum), **more}
        return list(complaints(files, bib_text))

    assert found({"n": good}) == [], found({"n": good})
    own = {"sources": {"mine": {"text": "a", "kind": "practice"}}, "n": {**good, "source": "mine", "quality": "practice"}}
    assert found(own) == [], found(own)
    how = {"n": {"value": 3, "source": "estimate: half of the other", "quality": "estimate"}}
    assert found(how) == [], found(how)
    bad = [{"n": {**good, "value": "3"}}, {"n": {**good, "source": "nobody"}}, {"n": {**good, "locator": "various"}},
           {"n": {**good, "quality": "guess"}}, {"n": {**good, "quality": "handbook"}}, {"n": {**good, "range": [4, 5]}},
           {"n": {**good, "locator": ""}}, {"n": {"value": 3, "source": "estimate:", "quality": "estimate"}}, '{"n": 1, "n": 2}', "{"]
    for document in bad:
        assert found(document), document
    assert found({"n": good}, bib.replace("year", "yeah")), "an entry without a year"
    assert found({"n": good}, bib + bib), "an entry twice"
    assert found({"n": good}, **{"bugs/b/data/y.json": "{}"}), "no schema"
    assert found({"n": good}, **{"schema/data/z.schema.json": "{}"}), "no data"
    assert len(list(complaints_of_text({"a.h": "/// Source: [nobody_1999] table 3"}, bib))) == 2
    assert list(complaints_of_text({"a.h": "/// Source: [memory] table 3"}, bib)) == []
    kind = {"key": "joint", "solid": "oak", "depth_metres": [0.001, 0.002]}
    assert list(complaints_of_edge_kinds({"kinds": [kind]}, {"oak"})) == []
    assert len(list(complaints_of_edge_kinds({"kinds": [kind]}, {"ash"}))) == 1
    assert len(list(complaints_of_edge_kinds({"kinds": [{**kind, "depth_metres": [0.002, 0.001]}]}, {"oak"}))) == 1
    assert len(list(complaints_of_edge_kinds({"kinds": [{**kind, "cloths": 2, "depth_cloths": [1, 3]}]}, {"oak"}))) == 1
    print(f"{len(bad) + 5} wrong trees are refused, the right ones pass")


def main():
    if "--test" in sys.argv:
        return test()
    names = tree.files()
    files = {name: tree.text_of(name) or "" for name in names if DATA.fullmatch(name) or name.startswith(SCHEMAS)}
    data = [name for name in files if DATA.fullmatch(name)]
    texts = {name: text for name in names if name.endswith((".h", ".cpp", ".md", ".json", ".py", ".bib"))
             and not name.startswith("schema/") for text in [tree.text_of(name)] if text is not None}
    bib_text = texts.get(BIBLIOGRAPHY, "")
    found = list(complaints(files, bib_text)) + list(complaints_of_text(texts, bib_text))
    print("\n".join(found))
    count = sum(1 for name in data for _ in sourced(json.loads(files[name])))
    print(f"{len(data)} data files, {count} numbers with a source, {len(bibliography(bib_text)[0])} sources, {len(found)} complaints")
    sys.exit(1 if found or not data else 0)


if __name__ == "__main__":
    main()

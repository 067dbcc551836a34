#!/usr/bin/python3
"""Fails on words that have no place in the repository: places on one machine, notes of the making, promises.

`--test` checks the check.
"""
import re
import sys

import tree

# (where, pattern, why). `all`: any text; `prose`: documents and comments.
RULES = [
    ("all", r"(?<![\w.])/(?:work|root|home/\w+|Users/\w+)/", "a path of one machine"),
    ("all", r"\.\./shared\b", "a path outside the repository"),
    ("all", r"\b(?:TODO|FIXME|XXX|HACK)\b", "unfinished work belongs in docs/state.md"),
    ("all", r"https?://(?:registry\.|deb\.|packages\.|mirror)[\w.-]+", "a registry's address"),
    ("all", r"(?i)\beradicat(?:e|es|ed|ion)\b", "a promise nobody can keep: say what was done, seen, and how sure"),
    ("all", r"(?i)\b100\s*(?:%|per\s?cent)\s*(?:safe|effective|kill|clear|sure|certain)", "a promise nobody can keep"),
    ("all", r"(?i)\bguaranteed?\s+(?:kill|dead|clear|free|safe)", "a promise nobody can keep"),
    ("prose", r"(?i)\bissue\s+(?:#\s*)?\d+\b", "the repository speaks of the product alone"),
    ("prose", r"(?i)\b(?:this|last|next|previous|earlier|another|current)\s+session\b", "the repository speaks of the product alone"),
    ("prose", r"(?i)\b(?:the transcript|the founder|language model|chatbot|AI assistant|coding agent)\b",
     "the repository speaks of the product alone"),
    ("prose", r"(?i)\b(?:lorem ipsum|placeholder text|coming soon|not yet implemented)\b", "a place left empty"),
]
EXEMPT = {"LICENSE", "tools/check_words.py"}


def complaints(name, text, prose):
    for where, pattern, why in RULES:
        if where == "all":
            for match in re.finditer(pattern, text):
                yield f"{name}:{text.count(chr(10), 0, match.start()) + 1}: \"{match.group()}\": {why}"
        else:
            for number, line in prose:
                for match in re.finditer(pattern, line):
                    yield f"{name}:{number}: \"{match.group()}\": {why}"


def test():
    def found(line):
        return len(list(complaints("a.md", line, [(1, line)])))
    for bad in ["see /work/a", "/home/ann/b", "TODO: more", "Eradicated!", "100 % safe", "100% effective", "as issue 12 says",
                "in the last session", "guaranteed kill"]:
        assert found(bad) == 1, bad
    for good in ["a work/rest ratio", "100 % relative humidity", "an issue of water", "the browser's session storage", "TODOS os dias"]:
        assert found(good) == 0, good
    print("14 lines judged rightly")


def main():
    if "--test" in sys.argv:
        return test()
    found, count = [], 0
    for name in tree.files():
        text = tree.text_of(name)
        if text is None or name in EXEMPT:
            continue
        count += 1
        found += complaints(name, text, list(tree.prose(name, text)))
    print("\n".join(found))
    print(f"{count} files read, {len(found)} words that have no place here")
    sys.exit(1 if found or not count else 0)


if __name__ == "__main__":
    main()

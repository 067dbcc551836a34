#!/usr/bin/python3
"""Fails on a repository path, named in a document or a comment, that does not exist.

A path is a word that begins with one of the top folders. It may be a folder, a file, a pattern with `*` or `<name>`, or
`NNN` for a number; it may name what a build makes (anything git ignores). Links of Markdown files are checked too.
`--test` checks the check.
"""
import fnmatch
import re
import subprocess
import sys

import tree

TOPS = ("apps", "engine", "job", "treatments", "bugs", "physics", "words", "tools", "docs", "cmake", "fuzz", "examples", "schema", "references",
        "bench", "checks", r"\.ci")
PATH = re.compile(r"(?<![\w./<>*@:-])(?:\./)?((?:%s)/[\w./*<>+-]*)" % "|".join(TOPS))
LINK = re.compile(r"\]\(([^)\s#]+)(?:#[^)]*)?\)")


# Names of event kinds ("job/1") look like paths and are none.
KIND = re.compile(r"^[a-z_]+/\d+$")


def paths_in(line):
    for match in PATH.finditer(line):
        yield match.group(1).rstrip(".-/<")


def known(path, names, folders):
    if path in names or path in folders or KIND.match(path):
        return True
    pattern = re.sub(r"<[^<>/]*>|NNN", "*", path)
    if re.fullmatch(r"docs/decisions/\d{3}", path):
        pattern = path + "-*"
    if "*" in pattern:
        return any(fnmatch.fnmatchcase(name, pattern) for name in names | folders)
    return False


def complaints(documents, names, ignored):
    """Complaints about {name: [(line number, text)]}, given all names of the tree."""
    folders = {name.rsplit("/", depth)[0] for name in names for depth in range(1, name.count("/") + 1)}
    for document, lines in sorted(documents.items()):
        for number, line in lines:
            for path in paths_in(line):
                # Two words joined by a slash ("tools/rules") are told from a path by what stands before: the tree decides.
                if not known(path, names, folders) and not ignored(path):
                    yield f"{document}:{number}: there is no {path}"
            if document.endswith(".md"):
                for target in LINK.findall(line):
                    if re.match(r"[a-z]+:", target):
                        continue
                    base = document.rsplit("/", 1)[0] + "/" if "/" in document else ""
                    path = normal(base + target)
                    if path.rstrip("/") not in names | folders:
                        yield f"{document}:{number}: the link leads nowhere: {target}"


def normal(path):
    parts = []
    for part in path.split("/"):
        if part == "..":
            if parts:
                parts.pop()
        elif part not in ("", "."):
            parts.append(part)
    return "/".join(parts)


def git_ignores(path):
    return any(subprocess.run(["git", "check-ignore", "-q", one], cwd=tree.ROOT).returncode == 0 for one in (path, path + "/"))


def test():
    names = {"physics/water/water.h", "docs/decisions/001-errors.md", "README.md"}
    def found(line, document="README.md"):
        return list(complaints({document: [(1, line)]}, names, lambda path: path == "apps/web/dist"))
    for good in ["see physics/water/water.h.", "physics/water/", "docs/decisions/001", "docs/decisions/NNN-*.md", "apps/web/dist",
                 "physics/<room>/water.h", "[a](physics/water/water.h)", "[a](https://example.org/tools/x)", "a/tools/b"]:
        assert found(good) == [], (good, found(good))
    for bad in ["physics/water/steam.h", "(tools/gone.py)", "docs/decisions/002", "`physics/<room>/gone.h`", "[a](gone.md)"]:
        assert len(found(bad)) == 1, (bad, found(bad))
    assert found("[a](../../README.md)", "docs/decisions/001-errors.md") == []
    print("14 lines with a path judged rightly")


def main():
    if "--test" in sys.argv:
        return test()
    names = set(tree.files())
    documents = {}
    for name in names:
        text = tree.text_of(name)
        if text is not None and not name.endswith("LICENSE") and name != "tools/check_paths.py":
            lines = list(tree.prose(name, text))
            if lines:
                documents[name] = lines
    found = list(complaints(documents, names, git_ignores))
    print("\n".join(found))
    print(f"{len(documents)} files read, {len(found)} dead paths")
    sys.exit(1 if found or not documents else 0)


if __name__ == "__main__":
    main()

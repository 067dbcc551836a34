#!/usr/bin/python3
"""Reads a .lastegg file with nothing but Python's standard library, as docs/job_file.md describes it.

read_job_file.py FILE          checks the file and prints event count, state hash, blob count, and the kinds
read_job_file.py FILE --lines  prints the events, sorted by id
"""
import collections
import hashlib
import json
import sys
import zipfile


def read(path):
    with zipfile.ZipFile(path) as file:
        assert file.testzip() is None, "a checksum is wrong"
        manifest = json.loads(file.read("manifest.json"))
        lines = [line for line in file.read("events.ndjson").split(b"\n") if line]
        blobs = {name[6:]: file.read(name) for name in file.namelist() if name.startswith("blobs/") and len(name) > 6}
    assert manifest["format"] == "lastegg" and manifest["version"] == 1, "another format or version"
    lines = sorted(set(lines), key=lambda line: (json.loads(line)["id"], line))
    state_hash = hashlib.sha256(b"".join(line + b"\n" for line in lines)).hexdigest()
    for name, content in blobs.items():
        assert hashlib.sha256(content).hexdigest() == name, f"the blob {name} is damaged"
    assert len(lines) == manifest["event_count"], "events are missing"
    assert manifest["state_hash"] in (state_hash, None), "the events are not those that the manifest promises"
    return manifest, lines, state_hash, blobs


def main():
    if len(sys.argv) < 2 or sys.argv[1].startswith("-"):
        sys.exit(__doc__)
    manifest, lines, state_hash, blobs = read(sys.argv[1])
    if "--lines" in sys.argv:
        sys.stdout.buffer.write(b"".join(line + b"\n" for line in lines))
        return
    print(f"{len(lines)} events {state_hash} {len(blobs)} blobs")
    for kind, count in sorted(collections.Counter(json.loads(line)["kind"] for line in lines).items()):
        print(f"{count:6d} {kind}")


if __name__ == "__main__":
    main()

#!/usr/bin/python3
"""Asks every example with the command, and fails on one that is refused or that lacks its answer's frame.

Usage: tools/check_examples.py PROGRAM. An example named after a question ("pace.json", "pace.leather.json") asks it;
every question has one at least. Requests and answers are checked against the JSON Schemas that the command wrote.
"""
import json
import subprocess
import sys
import time

import jsonschema

import tree


def main():
    program = sys.argv[1]
    listed = subprocess.run([program, "questions"], check=True, capture_output=True, text=True).stdout
    names = [line.split()[0] for line in listed.splitlines() if line and not line[0].isspace()]
    examples = sorted((tree.ROOT / "examples").glob("*.json"))
    failures = []
    for example in examples:
        question = example.name.split(".")[0]
        beginning = time.monotonic()
        asked = subprocess.run([program, "ask", question, str(example)], capture_output=True, text=True)
        seconds = time.monotonic() - beginning
        if asked.returncode != 0:
            failures.append(f"{example.name}: exit {asked.returncode}: {asked.stderr.strip()}")
            continue
        answer = json.loads(asked.stdout)
        schema = json.loads((tree.ROOT / "schema" / f"{question}.answer.json").read_text())
        for problem in jsonschema.Draft202012Validator(schema).iter_errors(answer):
            failures.append(f"{example.name}: the answer breaks its schema at {list(problem.absolute_path)}: {problem.message}")
        request = json.loads((tree.ROOT / "schema" / f"{question}.request.json").read_text())
        for problem in jsonschema.Draft202012Validator(request).iter_errors(json.loads(example.read_text())):
            failures.append(f"{example.name}: the request breaks its schema at {list(problem.absolute_path)}: {problem.message}")
        print(f"{example.name}: {len(asked.stdout)} bytes in {seconds:.2f} s")
    asked_names = {example.name.split(".")[0] for example in examples}
    failures += [f"no example asks {name}" for name in names if name not in asked_names]
    print("\n".join(failures))
    print(f"{len(examples)} examples of {len(names)} questions, {len(failures)} failures")
    sys.exit(1 if failures or not examples or not names else 0)


if __name__ == "__main__":
    main()

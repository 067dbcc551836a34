"""Events of an invented job as lines of text, and files that hold nothing else. Shared by the programs that make such jobs."""
import json
import pathlib
import sys

ROOT = pathlib.Path(__file__).resolve().parent.parent


def subject(number):
    return f"0194a3c0-0000-7000-8000-{number:012x}"


def lines(statements, day, first=1):
    """One line for each (kind, what it is about, data), a minute apart; ids count from `first`."""
    out = []
    for number, (kind, about, data) in enumerate(statements, start=1):
        out.append(json.dumps({
            "id": f"0194a3c1-0000-7000-8000-{first - 1 + number:012x}",
            "kind": kind,
            "subject": subject(about),
            "device": subject(0xD0),
            "actor": "demo",
            "at": f"{day}T{9 + number // 60:02d}:{number % 60:02d}:00-07:00",
            "data": {**data, "invented": True},
        }, separators=(",", ":"), ensure_ascii=False))
    return "".join(line + "\n" for line in out)


def write_or_check(files, wanted):
    """Writes the files; with --check fails if they are not what would be written."""
    for file in files:
        name = file.relative_to(ROOT)
        if "--check" not in sys.argv:
            file.write_text(wanted, encoding="utf-8")
            print(f"{name}: {wanted.count(chr(10))} events")
        elif not file.exists() or file.read_text(encoding="utf-8") != wanted:
            sys.exit(f"{name} is not what tools/{pathlib.Path(sys.argv[0]).name} writes")

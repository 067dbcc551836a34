#!/usr/bin/python3
"""Prints the report of an invented job on both papers, and fails unless each PDF is tagged, titled, has a language and its paper.

Usage: tools/check_report.py PROGRAM. Reads the PDF's own words: Chromium writes the objects concerned uncompressed. Needs the
web build (apps/web/dist/report.html) and Chromium; without either the command's own error is shown and the check fails.
"""
import pathlib
import re
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parent.parent
JOB = ROOT / "examples" / "treated_job.ndjson"
PAPERS = {"A4": (595, 842), "Letter": (612, 792)}
WANTED = {
    "a structure tree": rb"/Type\s*/StructTreeRoot",
    "the mark that it is tagged": rb"/MarkInfo\s*<<[^>]*/Marked true",
    "its language": rb"/Lang\s*\(en\)",
    "its title": rb"/Title\s*\(Treatment report: Demo room 3A\)",
    "headings": rb"/S\s*/H2",
    "a table": rb"/S\s*/Table",
    "figures": rb"/S\s*/Figure",
}


def complaints(pdf, paper):
    for what, pattern in WANTED.items():
        if not re.search(pattern, pdf):
            yield f"{paper}: the PDF lacks {what}"
    box = re.search(rb"/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)", pdf)
    size = tuple(round(float(side)) for side in box.groups()) if box else None
    if size != PAPERS[paper]:
        yield f"{paper}: the page is {size}"
    pages = len(re.findall(rb"/Type\s*/Page\b(?!s)", pdf))
    if not 2 <= pages <= 12:
        yield f"{paper}: {pages} pages"


def main():
    program, found = sys.argv[1], []
    with tempfile.TemporaryDirectory() as folder:
        for paper in PAPERS:
            out = pathlib.Path(folder) / f"{paper}.pdf"
            asked = [program, "report", str(JOB), "--pdf", str(out), "--paper", paper, "--samples", "128", "--temperature", "68 F"]
            run = subprocess.run(asked, capture_output=True, text=True)
            if run.returncode != 0:
                found.append(f"{paper}: exit {run.returncode}: {run.stderr.strip()}")
                continue
            found += complaints(out.read_bytes(), paper)
        missing = subprocess.run([program, "report", str(JOB), "--pdf", str(pathlib.Path(folder) / "x.pdf"), "--chromium", "/nowhere/chromium"],
                                 capture_output=True, text=True)
        if missing.returncode != 2 or "Chromium" not in missing.stderr:
            found.append("a missing Chromium is not told")
    print("\n".join(found))
    print(f"{len(PAPERS)} papers, {len(found)} failures")
    sys.exit(1 if found else 0)


if __name__ == "__main__":
    main()

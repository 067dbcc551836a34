#!/usr/bin/env bash
# Writes what is made from the engine's table of questions: the schemas, the page's types, docs/questions.md, docs/practice.md.
# Usage: tools/generate.sh [PROGRAM], with the program build/native/lastegg unless another is given.
set -euo pipefail
cd "$(dirname "$0")/.."
program=${1:-build/native/lastegg}

mkdir -p schema docs apps/web/src/engine
rm -f schema/*.request.json schema/*.answer.json
"$program" schema schema
"$program" types >apps/web/src/engine/questions.ts
"$program" docs examples >docs/questions.md
"$program" practice >docs/practice.md

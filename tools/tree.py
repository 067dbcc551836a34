"""What the checks of the tree share: the files that belong to the repository, and the comments in them."""
import io
import pathlib
import re
import subprocess
import tokenize

ROOT = pathlib.Path(__file__).resolve().parent.parent


def files():
    """Paths (relative to the root) of all files that git tracks or would track, and that still exist."""
    listing = subprocess.run(["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"], cwd=ROOT,
                             check=True, capture_output=True).stdout.decode()
    return sorted(name for name in set(listing.split("\0")) if name and (ROOT / name).is_file())


def text_of(name):
    """The text of a file, or None for a file that is no UTF-8 text."""
    data = (ROOT / name).read_bytes()
    if b"\0" in data:
        return None
    try:
        return data.decode("utf-8")
    except UnicodeDecodeError:
        return None


_C_LIKE = {".h", ".cpp", ".ts", ".mts", ".mjs", ".js", ".svelte", ".css"}
_HASH = {".py", ".sh", ".cmake", ".bib", ".yml"}
# A comment, or a string that may hold what looks like one.
_C_PIECES = re.compile(r'//[^\n]*|/\*.*?\*/|<!--.*?-->|"(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])*\'|`(?:\\.|[^`\\])*`', re.S)


def _python_comments(text):
    try:
        for token in tokenize.generate_tokens(io.StringIO(text).readline):
            if token.type == tokenize.COMMENT or (token.type == tokenize.STRING and token.line.lstrip().startswith('"""')):
                yield token.start[0], token.string
    except (tokenize.TokenError, IndentationError) as problem:
        raise SystemExit(f"not readable as Python: {problem}")


def prose(name, text):
    """(line number, text) of what people read in a file: all of a document, the comments of source."""
    suffix = pathlib.PurePath(name).suffix
    if suffix in {".md", ".txt"} and not name.endswith("CMakeLists.txt"):
        yield from enumerate(text.splitlines(), 1)
    elif suffix == ".py":
        for line, comment in _python_comments(text):
            yield from enumerate(comment.splitlines(), line)
    elif suffix in _C_LIKE:
        for piece in _C_PIECES.finditer(text):
            if piece.group()[0] in "/<":
                yield from enumerate(piece.group().splitlines(), text.count("\n", 0, piece.start()) + 1)
    elif suffix in _HASH or name.endswith("CMakeLists.txt") or text.startswith("#!"):
        for number, line in enumerate(text.splitlines(), 1):
            comment = re.search(r"(?:^|\s)#.*", line)
            if comment:
                yield number, comment.group()

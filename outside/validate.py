"""Validates MusicXML files against the W3C schema of MusicXML 4.0.

    python validate.py [--schema DIR] [--list FILE] FILE...

One line a file, in the order given, three columns parted by tabs:

    valid    PATH
    invalid  PATH  line 12: what the schema says is wrong there first
    broken   PATH  why the file could not be read as XML at all

The exit code is 0 when every file could be looked at, whatever was found, and
2 when the schema could not be loaded. Without `--schema` the schema comes from
the installed package `musicxml`.
"""

import argparse
import importlib.util
import sys
from pathlib import Path

from lxml import etree

from compressed import score_bytes

IMPORTS = Path(__file__).resolve().parent / "schema"
SCHEMA_NAMES = ("musicxml_4_0.xsd", "musicxml.xsd")


class LocalImports(etree.Resolver):
    """Answers the schema's imports, which it names by web address, with local files."""

    def resolve(self, url, public_id, context):
        name = url.rpartition("/")[2]
        if name in ("xml.xsd", "xlink.xsd"):
            return self.resolve_filename(str(IMPORTS / name), context)
        return None


def schema_file(folder):
    """Finds the schema in `folder`, or in the installed package when `folder` is None."""
    if folder is None:
        package = importlib.util.find_spec("musicxml")
        if package is None:
            raise FileNotFoundError("the package musicxml is not installed; run pip install -r requirements.txt")
        folder = Path(package.origin).parent / "generate_classes"
    for name in SCHEMA_NAMES:
        if (Path(folder) / name).is_file():
            return Path(folder) / name
    raise FileNotFoundError(f"no {' or '.join(SCHEMA_NAMES)} in {folder}")


def load_schema(folder):
    parser = etree.XMLParser(no_network=True)
    parser.resolvers.add(LocalImports())
    return etree.XMLSchema(etree.parse(str(schema_file(folder)), parser))


def verdict(schema, path):
    """Returns the state of one file and, unless it is valid, what is wrong with it."""
    parser = etree.XMLParser(no_network=True, load_dtd=False, resolve_entities=False, huge_tree=True)
    try:
        document = etree.fromstring(score_bytes(path), parser).getroottree()
    except (etree.XMLSyntaxError, ValueError, OSError) as problem:
        return "broken", one_line(problem)
    if schema.validate(document):
        return "valid", None
    first = schema.error_log[0]
    return "invalid", f"line {first.line}: {one_line(first.message)}"


def one_line(problem):
    return " ".join(str(problem).split())


def main():
    options = argparse.ArgumentParser(description="Validate MusicXML files against the 4.0 schema.")
    options.add_argument("--schema", metavar="DIR", help="folder with musicxml.xsd or musicxml_4_0.xsd")
    options.add_argument("--list", metavar="FILE", help="file with one path a line, besides those given")
    options.add_argument("files", nargs="*", metavar="FILE")
    chosen = options.parse_args()
    try:
        schema = load_schema(chosen.schema)
    except (OSError, etree.XMLSchemaParseError) as problem:
        print(f"validate.py: the schema could not be loaded: {one_line(problem)}", file=sys.stderr)
        return 2
    listed = Path(chosen.list).read_text(encoding="utf-8").split("\n") if chosen.list else []
    for path in [*chosen.files, *filter(None, listed)]:
        state, reason = verdict(schema, path)
        print("\t".join(filter(None, (state, path, reason))))
    return 0


if __name__ == "__main__":
    sys.exit(main())

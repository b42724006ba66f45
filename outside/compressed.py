"""Reads the score out of a MusicXML file, plain (.xml, .musicxml) or compressed (.mxl)."""

import io
import zipfile
from pathlib import Path
from xml.etree import ElementTree


def score_bytes(path):
    """Returns the bytes of the score document in `path`.

    A compressed file names its score in `META-INF/container.xml`: the first
    `rootfile` counts. Raises `ValueError` with a sentence for people when the
    archive holds no score.
    """
    data = Path(path).read_bytes()
    if not data.startswith(b"PK"):
        return data
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        name = _score_name(archive)
        if name is None:
            raise ValueError("the archive names no score in META-INF/container.xml and holds none")
        return archive.read(name)


def _score_name(archive):
    names = archive.namelist()
    if "META-INF/container.xml" in names:
        container = ElementTree.fromstring(archive.read("META-INF/container.xml"))
        for element in container.iter():
            if element.tag.rpartition("}")[2] == "rootfile" and element.get("full-path") in names:
                return element.get("full-path")
    scores = (n for n in names if n.endswith((".xml", ".musicxml")) and not n.startswith("META-INF/"))
    return next(scores, None)

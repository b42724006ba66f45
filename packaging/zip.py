"""Packs a folder as a zip archive: the same files make the same bytes.

python zip.py FOLDER ARCHIVE SECONDS, the date of all files in seconds since 1970.
"""

import sys
import time
import zipfile
from pathlib import Path

folder, archive, seconds = Path(sys.argv[1]), Path(sys.argv[2]), int(sys.argv[3])
with zipfile.ZipFile(archive, "w") as packed:
    for path in sorted(path for path in folder.rglob("*") if path.is_file()):
        name = (Path(folder.name) / path.relative_to(folder)).as_posix()
        entry = zipfile.ZipInfo(name, time.gmtime(seconds)[:6])
        entry.compress_type = zipfile.ZIP_DEFLATED
        entry.external_attr = 0o644 << 16
        packed.writestr(entry, path.read_bytes(), compresslevel=9)

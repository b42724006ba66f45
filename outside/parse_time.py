"""Prints how long music21 takes to parse one file, and how much memory.

    python parse_time.py FILE

prints one line of JSON: `seconds` (wall clock, the file read and parsed once,
nothing taken from music21's cache), `peak_bytes` (largest resident set of the
process, the library itself included), `library_bytes` (the same before parsing)
and `notes` (so that two readings of one file can be told apart).
"""

import json
import resource
import sys
import time

from music21 import VERSION_STR, converter


def peak_bytes():
    """Largest resident set so far. Linux counts it in KiB, macOS in bytes."""
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    return peak if sys.platform == "darwin" else peak * 1024


def main():
    if len(sys.argv) != 2:
        print("usage: parse_time.py FILE", file=sys.stderr)
        return 2
    library = peak_bytes()
    started = time.perf_counter()
    score = converter.parse(sys.argv[1], forceSource=True)
    seconds = time.perf_counter() - started
    print(json.dumps({
        "music21": VERSION_STR,
        "seconds": round(seconds, 3),
        "peak_bytes": peak_bytes(),
        "library_bytes": library,
        "notes": sum(len(element.pitches) for element in score.recurse().notes),
    }))
    return 0


if __name__ == "__main__":
    sys.exit(main())

"""Looks for things that stand over each other on pages of PDF.

    python page_overlap.py FILE...

Says a line of JSON for each file: letters and shapes on its pages, letters that stand over a letter or over a shape (a line, a
note, a bow), and what lies outside the paper. Places of letters are those that pdfminer.six reads, not those at which the
library wrote them that made the file. Then the first file is looked at with one letter laid over another, which must be seen.
"""

import json
import sys
from collections import defaultdict

from pdfminer.high_level import extract_pages
from pdfminer.layout import LTChar, LTContainer, LTCurve

# Of a letter's width on either side, and of its height above the line on which it stands, what counts as its body: letters
# may touch, and what hangs below a line may reach into the next.
SIDE = 0.2
BODY = 0.4
# Points by which two things must reach into each other.
DEEP = 0.4
CELL = 20.0


def walk(item, letters, shapes):
    if isinstance(item, LTChar):
        if item.get_text().strip():
            letters.append(body(item))
    elif isinstance(item, LTCurve):
        shapes.append((item.bbox, ""))
    elif isinstance(item, LTContainer):
        for each in item:
            walk(each, letters, shapes)


def body(letter):
    """The body of a letter, whichever way its text runs."""
    a, b, _, _, x, y = letter.matrix
    wide, high = letter.x1 - letter.x0, letter.y1 - letter.y0
    if abs(b) > abs(a):
        # Upwards: the line on which letters stand is upright, at their right.
        return ((x - high_of(letter, wide) * BODY, letter.y0 + high * SIDE, x, letter.y1 - high * SIDE), letter.get_text())
    return (
        (letter.x0 + wide * SIDE, y, letter.x1 - wide * SIDE, y + high_of(letter, high) * BODY),
        letter.get_text(),
    )


def high_of(letter, box):
    """The size of the type: the box is as high as the face's longest letters."""
    return min(letter.size, box) / 1.36


def deep(one, other):
    across = min(one[2], other[2]) - max(one[0], other[0])
    along = min(one[3], other[3]) - max(one[1], other[1])
    return min(across, along)


def cells(box):
    for x in range(int(box[0] // CELL), int(box[2] // CELL) + 1):
        for y in range(int(box[1] // CELL), int(box[3] // CELL) + 1):
            yield x, y


def over(letters, others, same):
    """Pairs of a letter and another thing that reach into each other."""
    grid = defaultdict(list)
    for index, (box, _) in enumerate(others):
        for cell in cells(box):
            grid[cell].append(index)
    found = {}
    for index, (box, text) in enumerate(letters):
        for cell in cells(box):
            for other in grid[cell]:
                if same and other <= index:
                    continue
                if deep(box, others[other][0]) > DEEP:
                    found[(index, other)] = f"{text}{others[other][1]} at {box[0]:.0f}, {box[1]:.0f}"
    return list(found.values())


def looked_at(pages):
    told = {"letters": 0, "shapes": 0, "letters_over_letters": [], "letters_over_shapes": [], "outside": 0}
    for letters, shapes, paper in pages:
        told["letters"] += len(letters)
        told["shapes"] += len(shapes)
        told["letters_over_letters"] += over(letters, letters, True)
        told["letters_over_shapes"] += over(letters, shapes, False)
        beyond = lambda box: box[0] < paper[0] or box[1] < paper[1] or box[2] > paper[2] or box[3] > paper[3]
        told["outside"] += sum(1 for box, _ in letters + shapes if beyond(box))
    return told


def read(path):
    for page in extract_pages(path, laparams=None):
        letters, shapes = [], []
        walk(page, letters, shapes)
        yield letters, shapes, page.bbox


def main():
    for path in sys.argv[1:]:
        name = path.replace("\\", "/").rsplit("/", 1)[-1]
        print(json.dumps({"file": name, **looked_at(read(path))}))
    letters, shapes, paper = next(iter(read(sys.argv[1])))
    laid_over = letters + [letters[len(letters) // 2]]
    print(json.dumps({"spoilt": "a letter over another", "seen": bool(looked_at([(laid_over, shapes, paper)])["letters_over_letters"])}))
    struck_out = shapes + [letters[0]]
    print(json.dumps({"spoilt": "a shape over a letter", "seen": bool(looked_at([(letters, struck_out, paper)])["letters_over_shapes"])}))


if __name__ == "__main__":
    main()

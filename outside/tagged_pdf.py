"""Walks the tags of PDFs as those have them read out who do not see the page.

    python tagged_pdf.py FILE...

Says a line of JSON for each file: what is amiss, and how many pieces it has. Then the first file is spoilt in some ways, and a
line for each says whether that was seen. What is asked is what PDF/UA-1
(ISO 14289-1) asks and a program can look at (numbers of clauses beside each): the reading is pikepdf's (qpdf),
not that of the library by which the file was written.
"""

import json
import re
import sys

import pikepdf

# Standard structure types of ISO 32000-1, 14.8.4, as far as pages of this kind have them.
GROUPS = {"/Document", "/Sect", "/Div", "/Part", "/NonStruct"}
BLOCKS = {"/P", "/Span", "/Figure", "/L", "/LI", "/Lbl", "/LBody", "/Table", "/TR", "/TH", "/TD"}
HEADING = re.compile(r"^/H([1-6])$")
# What draws: everything else sets a state or a place.
DRAWS = {"Tj", "TJ", "'", '"', "S", "s", "f", "F", "f*", "B", "B*", "b", "b*", "Do", "sh", "EI"}


class Walk:
    def __init__(self, pdf):
        self.pdf = pdf
        self.amiss = []
        self.pieces = 0
        self.level = 0
        # Marked content in the order of the tree: (number of the page, MCID).
        self.read = []
        self.pages = {page.obj.objgen: index for index, page in enumerate(pdf.pages)}

    def say(self, what):
        if what not in self.amiss:
            self.amiss.append(what)

    def catalog(self):
        root = self.pdf.Root
        # 7.2: the natural language; 7.1: title shown, marked as tagged.
        language = str(root.get("/Lang", ""))
        if not re.match(r"^[a-z]{2}(-[A-Za-z0-9]+)*$", language):
            self.say(f"no language: {language!r}")
        if not bool(root.get("/MarkInfo", {}).get("/Marked", False)):
            self.say("not marked as tagged")
        if not bool(root.get("/ViewerPreferences", {}).get("/DisplayDocTitle", False)):
            self.say("the title is not shown")
        with self.pdf.open_metadata() as metadata:
            if not str(metadata.get("dc:title", "")).strip():
                self.say("no title in its metadata")
            if str(metadata.get("pdfuaid:part", "")) != "1":
                self.say("it does not say that it is PDF/UA-1")

    def tree(self):
        root = self.pdf.Root.get("/StructTreeRoot")
        if root is None:
            self.say("no tags")
            return
        self.roles = root.get("/RoleMap", {})
        self.element(root.get("/K"), None, None)
        self.parents(root.get("/ParentTree"))

    def element(self, item, parent, page):
        if item is None:
            return
        if isinstance(item, pikepdf.Array):
            for each in item:
                self.element(each, parent, page)
            return
        if isinstance(item, int):
            self.read.append((page, int(item)))
            return
        page = self.pages.get(item["/Pg"].objgen, page) if "/Pg" in item else page
        if item.get("/Type") == "/MCR":
            self.read.append((page, int(item["/MCID"])))
            return
        kind = str(item.get("/S", ""))
        kind = str(self.roles.get(kind, kind)) if self.roles else kind
        heading = HEADING.match(kind)
        if not (kind in GROUPS or kind in BLOCKS or heading):
            self.say(f"a tag of no standard type: {kind}")
        if heading:
            # 7.4.2: no level is left out on the way down.
            level = int(heading.group(1))
            if level > self.level + 1:
                self.say(f"a heading of level {level} after one of level {self.level}")
            self.level = level
        # 7.3: pictures have words.
        if kind == "/Figure" and not str(item.get("/Alt", item.get("/ActualText", ""))).strip():
            self.say("a picture without words")
        before = len(self.read)
        self.element(item.get("/K"), kind, page)
        if kind not in GROUPS:
            self.pieces += 1
            if len(self.read) == before:
                self.say(f"a piece with nothing in it: {kind}")

    def parents(self, tree):
        """14.7.4.4 of ISO 32000-1: from marked content back to its tag."""
        if tree is None:
            self.say("no way from the page to its tags")
            return
        found = {}
        stack = [tree]
        while stack:
            node = stack.pop()
            stack.extend(node.get("/Kids", []))
            numbers = list(node.get("/Nums", []))
            found.update({int(key): value for key, value in zip(numbers[::2], numbers[1::2])})
        for index, page in enumerate(self.pdf.pages):
            key = page.obj.get("/StructParents")
            entries = found.get(int(key)) if key is not None else None
            count = sum(1 for number, _ in set(self.read) if number == index)
            if entries is None or sum(1 for each in entries if each is not None) < count:
                self.say(f"page {index + 1}: marked content that does not lead back to its tag")

    def content(self):
        """7.1: all content is marked, as a piece of the tree or as an artifact; each piece stands there once."""
        shown = []
        for index, page in enumerate(self.pdf.pages):
            marks = []
            for operands, operator in pikepdf.parse_content_stream(page):
                operator = str(operator)
                if operator in {"BMC", "BDC"}:
                    mark = None
                    if str(operands[0]) == "/Artifact":
                        mark = "artifact"
                    elif operator == "BDC" and isinstance(operands[1], pikepdf.Dictionary) and "/MCID" in operands[1]:
                        mark = int(operands[1]["/MCID"])
                        shown.append((index, mark))
                    if mark == "artifact" and any(isinstance(each, int) for each in marks):
                        self.say(f"page {index + 1}: an artifact inside a piece")
                    if isinstance(mark, int) and "artifact" in marks:
                        self.say(f"page {index + 1}: a piece inside an artifact")
                    marks.append(mark)
                elif operator == "EMC":
                    if not marks:
                        self.say(f"page {index + 1}: an end of marked content without a beginning")
                        continue
                    marks.pop()
                elif operator in DRAWS and all(mark is None for mark in marks):
                    self.say(f"page {index + 1}: something is drawn ({operator}) that is neither a piece nor an artifact")
            if marks:
                self.say(f"page {index + 1}: marked content without an end")
            # 7.18.3: the order of the tabulator is that of the tags where there are links.
            if "/Annots" in page.obj and str(page.obj.get("/Tabs", "")) != "/S":
                self.say(f"page {index + 1}: links whose order is not that of the tags")
        if len(set(self.read)) != len(self.read):
            self.say("a piece that is read twice")
        if len(set(shown)) != len(shown):
            self.say("two pieces of one number on a page")
        for missing in sorted(set(shown) - set(self.read))[:3]:
            self.say(f"page {missing[0] + 1}: piece {missing[1]} stands in no tag")
        for missing in sorted(set(self.read) - set(shown))[:3]:
            self.say(f"page {(missing[0] or 0) + 1}: a tag with piece {missing[1]}, which is not there")
        # Our pages are written from the top to the foot: read is in the order in which it stands.
        if [each for each in self.read if each in set(shown)] != shown:
            self.say("the order of reading is not the order of the page")

    def fonts(self):
        """7.21: fonts are within, and each sign leads back to a letter."""
        for page in self.pdf.pages:
            for font in page.get("/Resources", {}).get("/Font", {}).values():
                if "/ToUnicode" not in font:
                    self.say("a font whose signs lead to no letters")
                for each in font.get("/DescendantFonts", [font]):
                    descriptor = each.get("/FontDescriptor", {})
                    if not any(key in descriptor for key in ("/FontFile", "/FontFile2", "/FontFile3")):
                        self.say("a font that is not within")


def looked_at(pdf):
    walk = Walk(pdf)
    walk.catalog()
    walk.tree()
    walk.content()
    walk.fonts()
    return walk


def blocks(pdf):
    """The pieces of a file, wherever they stand in its tree."""
    stack = [pdf.Root["/StructTreeRoot"]["/K"]]
    while stack:
        item = stack.pop()
        if isinstance(item, pikepdf.Array):
            stack.extend(item)
        elif isinstance(item, pikepdf.Dictionary) and "/S" in item:
            if str(item["/S"]) in GROUPS:
                stack.append(item["/K"])
            else:
                yield item


def unmarked(pdf):
    """Draws a line that is neither a piece nor an artifact."""
    pdf.pages[0].contents_add(b"0 0 m 10 10 l S")


def drop(name):
    def spoil(pdf):
        del pdf.Root[name]

    return spoil


def empty(pdf):
    next(blocks(pdf))["/K"] = pikepdf.Array()


def unknown(pdf):
    next(blocks(pdf))["/S"] = pikepdf.Name("/Stave")


def turned(pdf):
    """Reads the first two pieces in the other order."""
    first, *rest = list(blocks(pdf))
    first["/K"], rest[0]["/K"] = rest[0]["/K"], first["/K"]


SPOILS = {
    "no language": drop("/Lang"),
    "no tags": drop("/StructTreeRoot"),
    "title not shown": drop("/ViewerPreferences"),
    "something drawn without a mark": unmarked,
    "a piece emptied": empty,
    "a tag of no type": unknown,
    "two pieces exchanged": turned,
}


def main():
    for path in sys.argv[1:]:
        with pikepdf.open(path) as pdf:
            walk = looked_at(pdf)
            name = path.replace("\\", "/").rsplit("/", 1)[-1]
            print(json.dumps({"file": name, "pieces": walk.pieces, "amiss": walk.amiss}))
    for name, spoil in SPOILS.items():
        with pikepdf.open(sys.argv[1]) as pdf:
            spoil(pdf)
            print(json.dumps({"spoilt": name, "seen": bool(looked_at(pdf).amiss)}))


if __name__ == "__main__":
    main()

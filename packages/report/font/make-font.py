"""Makes the two faces of the record from the published web subsets of Atkinson Hyperlegible Next (OFL 1.1).

    python make-font.py <files of @fontsource/atkinson-hyperlegible-next> <output folder>

Latin and Latin Extended are joined to one face, and the signs that the subsets lack and a service record needs are
drawn from the weight of the face's own minus and equals: → ← ≠ ≤ ≥ ≈ and Δ. The result is plain TrueType in base64, so that
it travels inside the package and is never fetched; a packed one is half as long, but the writer of the PDF unpacks it
anew for every glyph, which took more time than all the rest. Needs fontTools.
"""
import base64, io, json, sys
from fontTools.merge import Merger
from fontTools.pens.boundsPen import BoundsPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont

FACES = {400: "AtkinsonHyperlegibleNext-Regular", 700: "AtkinsonHyperlegibleNext-Bold"}
# Plain tables only: the joined layout tables would carry kerning that columns of figures do not want.
DROPPED = ["GPOS", "GDEF", "GSUB", "STAT", "fvar", "avar", "HVAR", "MVAR", "gvar", "DSIG", "meta", "gasp", "prep", "fpgm", "cvt "]


def face(folder, weight):
    paths = []
    for subset in ("latin", "latin-ext"):
        font = TTFont(f"{folder}/atkinson-hyperlegible-next-{subset}-{weight}-normal.woff")
        font.flavor = None
        if subset == "latin":
            tabular(font)
        for tag in DROPPED:
            if tag in font:
                del font[tag]
        path = f"/tmp/{subset}-{weight}.ttf"
        font.save(path)
        paths.append(path)
    joined = Merger().merge(paths)
    draw_signs(joined)
    for name_id in (1, 4, 6, 16):
        joined["name"].setName(FACES[weight], name_id, 3, 1, 0x409)
    out = io.BytesIO()
    joined.save(out)
    return out.getvalue()


def tabular(font):
    """Figures of one width for every digit, because a record is columns of figures."""
    cmap = font.getBestCmap()
    for lookup in font["GSUB"].table.LookupList.Lookup:
        for sub in lookup.SubTable:
            for plain, tnum in getattr(sub, "mapping", {}).items():
                if tnum.endswith((".tf", ".tnum")):
                    for table in font["cmap"].tables:
                        for code, name in list(table.cmap.items()):
                            if name == plain and code in cmap:
                                table.cmap[code] = tnum


def bounds(font, char):
    pen = BoundsPen(font.getGlyphSet())
    font.getGlyphSet()[font.getBestCmap()[ord(char)]].draw(pen)
    return pen.bounds


def draw_signs(font):
    left, low, right, high = bounds(font, "−")
    thick, middle = high - low, (low + high) / 2
    width = font["hmtx"][font.getBestCmap()[ord("−")]][0]
    _, equals_low, _, equals_high = bounds(font, "=")
    span = right - left

    def bar(y, x0=left, x1=right):
        return [(x0, y - thick / 2), (x0, y + thick / 2), (x1, y + thick / 2), (x1, y - thick / 2)]

    def stroke(a, b):
        (x0, y0), (x1, y1) = a, b
        length = ((x1 - x0) ** 2 + (y1 - y0) ** 2) ** 0.5
        nx, ny = -(y1 - y0) / length * thick / 2, (x1 - x0) / length * thick / 2
        return [(x0 - nx, y0 - ny), (x0 + nx, y0 + ny), (x1 + nx, y1 + ny), (x1 - nx, y1 - ny)]

    reach, top, bottom = span * 0.36, equals_high - thick / 2, equals_low + thick / 2
    rise = (top - bottom) * 0.62
    slash = stroke((left + span * 0.28, bottom - rise), (right - span * 0.28, top + rise))
    tip_right, tip_left = right, left
    signs = {
        "→": [bar(middle, left, right - thick / 2), stroke((tip_right, middle), (tip_right - reach, middle + reach)), stroke((tip_right, middle), (tip_right - reach, middle - reach))],
        "←": [bar(middle, left + thick / 2, right), stroke((tip_left, middle), (tip_left + reach, middle + reach)), stroke((tip_left, middle), (tip_left + reach, middle - reach))],
        "≠": [bar(top), bar(bottom), slash],
        "≤": [stroke((right, middle + reach * 1.3), (left, middle + reach * 0.35)), stroke((left, middle + reach * 0.35), (right, middle - reach * 0.6)), bar(middle - reach * 1.3)],
        "≥": [stroke((left, middle + reach * 1.3), (right, middle + reach * 0.35)), stroke((right, middle + reach * 0.35), (left, middle - reach * 0.6)), bar(middle - reach * 1.3)],
        "Δ": [stroke((left, thick / 2), (left + span / 2, 2 * middle)), stroke((left + span / 2, 2 * middle), (right, thick / 2)), bar(thick / 2)],
    }
    wave = lambda y: [stroke((left, y - thick * 0.4), (left + span * 0.3, y + thick * 0.5)), stroke((left + span * 0.3, y + thick * 0.5), (right - span * 0.3, y - thick * 0.5)), stroke((right - span * 0.3, y - thick * 0.5), (right, y + thick * 0.4))]
    signs["≈"] = wave(top) + wave(bottom)

    # The trade writes u for the micro sign where a keyboard lacks it.
    for table in font["cmap"].tables:
        if table.isUnicode():
            table.cmap[ord("µ")] = font.getBestCmap()[ord("u")]

    for char, contours in signs.items():
        name = f"sign{ord(char):04X}"
        pen = TTGlyphPen(None)
        for contour in contours:
            area = sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in zip(contour, contour[1:] + contour[:1]))
            points = contour if area < 0 else contour[::-1]
            pen.moveTo(tuple(round(c) for c in points[0]))
            for point in points[1:]:
                pen.lineTo(tuple(round(c) for c in point))
            pen.closePath()
        font["glyf"][name] = pen.glyph()
        font["hmtx"][name] = (width, round(left))
        font.setGlyphOrder([*[g for g in font.getGlyphOrder() if g != name], name])
        for table in font["cmap"].tables:
            if table.isUnicode():
                table.cmap[ord(char)] = name


if __name__ == "__main__":
    folder, out = sys.argv[1:]
    for weight, name in FACES.items():
        ttf = face(folder, weight)
        covered = "".join(sorted(chr(code) for code in TTFont(io.BytesIO(ttf)).getBestCmap()))
        with open(f"{out}/{name}.json", "w") as file:
            json.dump({"postScriptName": name, "licence": "OFL 1.1, see LICENSE beside this file", "characters": covered, "ttf": base64.b64encode(ttf).decode()}, file, ensure_ascii=False)
            file.write("\n")
        print(name, len(ttf))

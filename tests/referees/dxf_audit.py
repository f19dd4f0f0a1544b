"""Reads a DXF file with ezdxf; prints its audit, units and entities as JSON."""
import json
import sys

import ezdxf
from ezdxf import bbox, colors

document = ezdxf.readfile(sys.argv[1])
auditor = document.audit()
space = document.modelspace()
box = bbox.extents(e for e in space if e.dxftype() != "TEXT")


def luminance(rgb):
    """Relative luminance by WCAG 2.2."""
    linear = [c / 255 / 12.92 if c / 255 <= 0.04045 else ((c / 255 + 0.055) / 1.055) ** 2.4 for c in rgb]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(layer):
    """The lesser of the contrasts with a white page and with a black one; 7 is black on the one and white on the other."""
    if layer.color == 7:
        return 21
    light = luminance(colors.aci2rgb(layer.color)) + 0.05
    return min(1.05 / light, light / 0.05)


def corners(entity):
    if entity.dxftype() == "LWPOLYLINE":
        return len(entity)
    return 2 if entity.dxftype() == "LINE" else 0


print(json.dumps({
    "version": document.dxfversion,
    "errors": [e.message for e in auditor.errors],
    "fixes": [e.message for e in auditor.fixes],
    "units": document.units,
    "entities": [[e.dxftype(), e.dxf.layer, corners(e)] for e in space],
    "contrast": [contrast(y) for y in document.layers if y.dxf.name not in ("0", "Defpoints")],
    "box": [box.extmin.x, box.extmin.y, box.extmax.x, box.extmax.y],
    "extents": [*document.header["$EXTMIN"][:2], *document.header["$EXTMAX"][:2]],
}))

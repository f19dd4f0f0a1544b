"""Reads a DXF file with ezdxf; prints its audit, units and entities as JSON."""
import json
import sys

import ezdxf
from ezdxf import bbox

document = ezdxf.readfile(sys.argv[1])
auditor = document.audit()
space = document.modelspace()
box = bbox.extents(e for e in space if e.dxftype() != "TEXT")


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
    "box": [box.extmin.x, box.extmin.y, box.extmax.x, box.extmax.y],
    "extents": [*document.header["$EXTMIN"][:2], *document.header["$EXTMAX"][:2]],
}))

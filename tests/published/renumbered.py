"""A package with another version's number, and nothing else of it changed: renumbered.py FILE.nupkg VERSION FOLDER"""

import os
import re
import sys
import zipfile

source, version, folder = sys.argv[1:]
os.makedirs(folder, exist_ok=True)
with zipfile.ZipFile(source) as old:
    spec = next(n for n in old.namelist() if n.endswith(".nuspec"))
    text, changes = re.subn(rb"<version>[^<]*</version>", b"<version>%s</version>" % version.encode(), old.read(spec), count=1)
    assert changes == 1, "the package names no version"
    with zipfile.ZipFile(os.path.join(folder, f"BridgeForm.Tool.{version}.nupkg"), "w", zipfile.ZIP_DEFLATED) as new:
        for name in old.namelist():
            new.writestr(name, text if name == spec else old.read(name))

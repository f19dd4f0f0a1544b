"""What a tool package says of itself: package.py FILE.nupkg"""

import sys
import zipfile
import xml.etree.ElementTree as xml

with zipfile.ZipFile(sys.argv[1]) as package:
    names = package.namelist()
    spec = xml.fromstring(package.read(next(n for n in names if n.endswith(".nuspec"))))
said = {e.tag.split("}")[1]: (e.text or "").strip() for e in spec.iter()}
for key in ("title", "description", "license", "readme", "icon"):
    assert said.get(key), f"the package has no {key}"
assert said["license"] == "MIT", said["license"]
for file in (said["readme"], said["icon"], "LICENSE", "THIRD-PARTY-NOTICES.md"):
    assert file in names, f"{file} is not in the package"
print("package:", said["title"], said["version"])

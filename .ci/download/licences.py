"""Gathers the licences of everything that a download holds and that is not ours: licences.py PROJECT RUNTIME

Packages and versions are those that were restored for the project; what each says of its licence stands in its package.
"""
import glob
import json
import os
import re
import sys

project, runtime = sys.argv[1:]
packages = os.environ.get("NUGET_PACKAGES") or os.path.expanduser("~/.nuget/packages")
with open(os.path.join(project, "obj", "project.assets.json"), encoding="utf-8") as file:
    assets = json.load(file)
target = next(libraries for name, libraries in assets["targets"].items() if name.endswith("/" + runtime))
# What only compiles or analyses is not handed on.
held = sorted(name for name, library in target.items() if library["type"] == "package" and any(
    not path.endswith("_._") for kind in ("runtime", "native", "resource") for path in library.get(kind, {})))
framework = sorted(f"{pack['name']}/{pack['version'].strip('[]').split(',')[0]}" for pack in assets["project"]["frameworks"]["net10.0"].get("downloadDependencies", [])
                   if re.fullmatch(r"Microsoft\.(NETCore|AspNetCore)\.App\.(Runtime|Host)\." + re.escape(runtime), pack["name"]))


def read(path):
    with open(path, encoding="utf-8-sig", errors="replace") as text:
        return text.read().strip()


def field(nuspec, name):
    found = re.search(rf"<{name}[^>]*>(.*?)</{name}>", nuspec, re.S)
    return re.sub(r"\s+", " ", found.group(1)).strip() if found else ""


print("""Licences of what ClassKit holds and others have made

Each package is named with its version, what it says of its licence, and where it comes from. The texts that the packages bring follow below.
The solver of the bench plans (Google OR-Tools, Apache License 2.0) comes as libraries that hold other projects in turn: Abseil and SCIP (Apache License 2.0),
Protocol Buffers and RE2 (BSD 3-Clause), HiGHS (MIT), CBC, CLP, CGL, CoinUtils and OSI (Eclipse Public License 2.0, source at https://github.com/coin-or),
zlib (zlib License), bzip2 (bzip2 License), Eigen (Mozilla Public License 2.0). The Apache License 2.0 stands at the end.
""")
texts = {}
for name in framework + held:
    at = os.path.join(packages, *name.lower().split("/"))
    nuspec = read(glob.glob(os.path.join(at, "*.nuspec"))[0])
    licence, address = field(nuspec, "license"), field(nuspec, "licenseUrl")
    where = field(nuspec, "projectUrl") or (re.findall(r'<repository[^>]*url="([^"]*)"', nuspec) or [""])[0]
    says = "its own text, below" if '<license type="file"' in nuspec else licence or address or "nothing"
    print(f"{name}\n    licence: {says}\n    {field(nuspec, 'copyright') or 'by ' + field(nuspec, 'authors')}\n    {where}")
    for path in sorted(glob.glob(os.path.join(at, "*"))):
        if re.search(r"licen[sc]e|notice|copying", os.path.basename(path), re.I) and os.path.isfile(path) and not path.endswith((".nuspec", ".png")):
            texts.setdefault(read(path), []).append(f"{name}: {os.path.basename(path)}")
for text, names in texts.items():
    print("\n" + "=" * 100 + "\n" + "\n".join(names) + "\n" + "=" * 100 + "\n\n" + text)
apache = "/usr/share/common-licenses/Apache-2.0"
if not os.path.exists(apache):
    sys.exit(f"{apache} is missing: it comes with Debian's base-files.")
print("\n" + "=" * 100 + "\nApache License 2.0\n" + "=" * 100 + "\n\n" + read(apache))

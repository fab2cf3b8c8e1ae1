"""Packs a folder as a zip whose bytes follow from its files: zip.py FOLDER FILE"""
import os
import sys
import zipfile

folder, packed = sys.argv[1:]
with zipfile.ZipFile(packed, "w", zipfile.ZIP_DEFLATED, compresslevel=9) as archive:
    for path in sorted(os.path.join(at, name) for at, _, names in os.walk(folder) for name in names):
        entry = zipfile.ZipInfo(os.path.relpath(path, folder).replace(os.sep, "/"), (1980, 1, 1, 0, 0, 0))
        entry.compress_type = zipfile.ZIP_DEFLATED
        entry.external_attr = 0o100755 << 16 if os.access(path, os.X_OK) else 0o100644 << 16
        with open(path, "rb") as file:
            archive.writestr(entry, file.read(), compresslevel=9)

"""Says of every program and library of a download what it is by its own bytes, and fails where it is for another machine: formats.py FOLDER RUNTIME

Layouts: PE and COFF specification (machine at the offset that 0x3C names), Mach-O's loader.h (magic, cputype, load commands; 0x1D is a code signature),
ELF (e_machine at 18, System V ABI).
"""
import os
import struct
import sys

folder, runtime = sys.argv[1:]
WANTED = {"win-x64": ("PE", 0x8664), "osx-arm64": ("Mach-O", 0x0100000C), "osx-x64": ("Mach-O", 0x01000007), "linux-x64": ("ELF", 62), "linux-arm64": ("ELF", 183)}
LC_CODE_SIGNATURE = 0x1D
CERTIFICATES = 4


def of_mach(data, at=0):
    """The machine of a thin Mach-O file, and whether a signature is in it."""
    _, machine, _, _, commands, _, _, _ = struct.unpack_from("<IIIIIIII", data, at)
    place, signed = at + 32, False
    for _ in range(commands):
        command, size = struct.unpack_from("<II", data, place)
        signed |= command == LC_CODE_SIGNATURE
        place += size
    return machine, signed


def look(data):
    """What kind of file it is, the machines that it is for, and its signature in words; None for anything else."""
    if data[:2] == b"MZ":
        at = struct.unpack_from("<I", data, 0x3C)[0]
        if data[at:at + 4] != b"PE\0\0":
            return None
        optional = at + 24
        wide = struct.unpack_from("<H", data, optional)[0] == 0x20B
        size = struct.unpack_from("<I", data, optional + (112 if wide else 96) + 8 * CERTIFICATES + 4)[0]
        return "PE", {struct.unpack_from("<H", data, at + 4)[0]}, "signed" if size else "not signed"
    if data[:4] == b"\xcf\xfa\xed\xfe":
        machine, signed = of_mach(data)
        return "Mach-O", {machine}, "signed ad hoc, by nobody known" if signed else "not signed"
    if data[:4] == b"\xca\xfe\xba\xbe":
        parts = [struct.unpack_from(">IIIII", data, 8 + 20 * part) for part in range(struct.unpack_from(">I", data, 4)[0])]
        signed = all(of_mach(data, part[2])[1] for part in parts)
        return "Mach-O", {part[0] for part in parts}, "signed ad hoc, by nobody known" if signed else "not signed"
    if data[:4] == b"\x7fELF":
        return "ELF", {struct.unpack_from("<H", data, 18)[0]}, "no signatures in this format"
    return None


kind, machine = WANTED[runtime]
wrong, program, kinds = 0, False, {}
for path in sorted(os.path.join(at, name) for at, _, names in os.walk(folder) for name in names):
    with open(path, "rb") as file:
        found = look(file.read())
    if found is None:
        continue
    name = os.path.relpath(path, folder)
    fits = found[0] == kind and machine in found[1]
    program |= fits and name in ("classkit", "classkit.exe")
    # Apple's processors run nothing that is not signed at all.
    fits &= runtime != "osx-arm64" or found[2] != "not signed"
    wrong += not fits
    says = f"{found[0]} for {', '.join(hex(one) for one in sorted(found[1]))}, {found[2]}{'' if fits else ': WRONG'}"
    kinds.setdefault(says, []).append(name)
for says, names in kinds.items():
    print(f"  {says}: {', '.join(sorted(names, key=lambda name: (not name.startswith('classkit'), name))[:3])}{f' and {len(names) - 3} more' if len(names) > 3 else ''}")
if not program:
    sys.exit(f"There is no program for {runtime} in {folder}.")
if wrong:
    sys.exit(f"{wrong} files are not for {runtime}.")

using System.Globalization;
using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.UseCases.Intake;

/// <summary>Lists what lies below a folder, one folder at a time, so that one that cannot be opened hides only what is in it.</summary>
internal sealed class FolderWalk
{
    private static readonly EnumerationOptions Everything = new() { AttributesToSkip = 0, IgnoreInaccessible = false };

    private readonly List<FoundFile> _found = [];

    /// <summary>Every file, and every folder that was not looked into with the reason, in the order of their paths.</summary>
    public static IReadOnlyList<FoundFile> Through(string folder)
    {
        var walk = new FolderWalk();
        walk.Look(new(folder), "", 0);
        walk._found.Sort((one, other) => string.CompareOrdinal(one.Path, other.Path));
        return walk._found;
    }

    private void Look(DirectoryInfo folder, string path, int depth)
    {
        var entries = Guarded.Of<IReadOnlyList<FileSystemInfo>>(
            () => [.. folder.EnumerateFileSystemInfos("*", Everything)],
            failure =>
            {
                _found.Add(new(path.TrimEnd('/'), null, ReturnedItem.Failed(path.Length == 0 ? folder.Name : path.TrimEnd('/'), failure)));
                return [];
            }
        );
        var named = entries.Any(entry => ByteNames.MayBeLost(entry.Name)) ? InBytes(ByteNames.Of(folder.FullName), path) : [];
        var texts = named.Where(entry => entry.IsText).Select(entry => entry.Name).ToHashSet(StringComparer.Ordinal);
        foreach (var entry in entries.Where(entry => !ByteNames.MayBeLost(entry.Name) || texts.Contains(entry.Name)))
        {
            var inside = path + entry.Name;
            if (entry is not DirectoryInfo inner)
                _found.Add(new(inside, (FileInfo)entry, null));
            else if (depth == IntakeLimits.Folders || (inner.Attributes & FileAttributes.ReparsePoint) != 0)
                _found.Add(new(inside, null, ReturnedItem.Refused(inside, new Refusal.FarFolder())));
            else
                Look(inner, inside + "/", depth + 1);
        }

        Look(named.Where(entry => !entry.IsText), [.. entries.Select(entry => entry.Name)], path, depth);
    }

    /// <param name="entries">What is to be told by the bytes of its name.</param>
    /// <param name="taken">Names that already stand for something else.</param>
    /// <param name="path">The folder's.</param>
    /// <param name="depth">The folder's.</param>
    private void Look(IEnumerable<ByteNamed> entries, HashSet<string> taken, string path, int depth)
    {
        foreach (var entry in entries)
        {
            var name = entry.Name;
            for (var times = 2; !taken.Add(name); times++)
                name = string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Path.GetFileNameWithoutExtension(entry.Name)} ({times}){Path.GetExtension(entry.Name)}"
                );
            var inside = path + name;
            switch (entry.Kind)
            {
                case ByteNamed.Kinds.File:
                    _found.Add(
                        new(inside, null, null) { ByBytes = new(inside, () => ByteNames.Open(entry.Path)) { Dated = Changed(entry.Path) } }
                    );
                    break;
                case ByteNamed.Kinds.Folder when depth < IntakeLimits.Folders:
                    Look(InBytes(entry.Path, inside + "/"), [], inside + "/", depth + 1);
                    break;
                case ByteNamed.Kinds.Folder:
                    _found.Add(new(inside, null, ReturnedItem.Refused(inside, new Refusal.FarFolder())));
                    break;
                case ByteNamed.Kinds.Link:
                    _found.Add(new(inside, null, ReturnedItem.Refused(inside, new Refusal.Link())));
                    break;
                case ByteNamed.Kinds.Other:
                    _found.Add(new(inside, null, new(inside, [], null)));
                    break;
            }
        }
    }

    private IReadOnlyList<ByteNamed> InBytes(byte[] folder, string path) =>
        Guarded.Of(
            () => ByteNames.In(folder),
            failure =>
            {
                _found.Add(new(path.TrimEnd('/'), null, ReturnedItem.Failed(path.TrimEnd('/'), failure)));
                return [];
            }
        );

    private static DateTime? Changed(byte[] path) =>
        Guarded.Of<DateTime?>(
            () =>
            {
                using var file = ByteNames.Open(path);
                return File.GetLastWriteTimeUtc(file.SafeFileHandle);
            },
            _ => null
        );
}

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
        var entries = Attempt.Of<IReadOnlyList<FileSystemInfo>>(() => [.. folder.EnumerateFileSystemInfos("*", Everything)], failure =>
        {
            _found.Add(new(path.TrimEnd('/'), null, ReturnedItem.Failed(path.Length == 0 ? folder.Name : path.TrimEnd('/'), failure)));
            return [];
        });
        foreach (var entry in entries)
        {
            var inside = path + entry.Name;
            if (entry is not DirectoryInfo inner) _found.Add(new(inside, (FileInfo)entry, null));
            else if (depth == IntakeLimits.Folders || (inner.Attributes & FileAttributes.ReparsePoint) != 0) _found.Add(new(inside, null, ReturnedItem.Refused(inside, new Refusal.FarFolder())));
            else Look(inner, inside + "/", depth + 1);
        }
    }
}

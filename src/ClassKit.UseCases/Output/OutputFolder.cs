using ClassKit.Content;

namespace ClassKit.UseCases;

/// <summary>Writes a use case's files so that a folder holds either the old ones or the new ones, never a mixture.</summary>
/// <remarks>
/// The new folder is written beside the old one, the two are swapped by renaming, and files that ClassKit did not write are then carried
/// over. What a killed run left behind is finished or undone by the next one.
/// </remarks>
public static class OutputFolder
{
    /// <summary>Replaces what ClassKit wrote into <paramref name="folder"/> before by <paramref name="files"/>.</summary>
    /// <param name="folder">Created with its parents if it is not there.</param>
    /// <param name="kind">Which command the files come from; a folder of another kind is refused.</param>
    /// <param name="files">All of them.</param>
    /// <returns>Why nothing was written; null if all was.</returns>
    public static Diagnostic? Write(string folder, string kind, IReadOnlyList<OutputFile> files)
    {
        ArgumentException.ThrowIfNullOrEmpty(folder);
        ArgumentNullException.ThrowIfNull(files);
        try
        {
            var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
            if (FileInTheWay(full) is { } file)
                return new(folder, null, $"{(file == full ? "This" : file)} is a file", "Name a folder to write to, or one that does not exist yet.");
            var (next, old) = (Beside(full, "new"), Beside(full, "old"));
            Recover(full, old);
            if (Refusal(folder, full, kind, files) is { } refusal) return refusal;
            Stage(next, kind, files);
            Swap(full, next, old);
            return null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new(folder, null, $"It could not be written: {failure.Message}", "Check that there is room and that you may write there; what was there before is untouched.");
        }
    }

    private static string Beside(string full, string what) =>
        Path.Combine(Path.GetDirectoryName(full) ?? full, $".{Path.GetFileName(full)}.classkit-{what}");

    /// <summary>The folder itself or one of its parents, if that is a file.</summary>
    private static string? FileInTheWay(string full)
    {
        for (var path = full; !string.IsNullOrEmpty(path); path = Path.GetDirectoryName(path))
        {
            if (File.Exists(path)) return path;
        }
        return null;
    }

    private static Diagnostic? Refusal(string folder, string full, string kind, IReadOnlyList<OutputFile> files)
    {
        if (!Directory.Exists(full)) return null;
        var manifest = OutputManifest.Read(full);
        if (manifest is not null && manifest.Kind != kind)
            return new(folder, null, $"This folder was written by `classkit {manifest.Kind}`", $"Name another folder for `classkit {kind}`, so that neither overwrites the other.");
        var own = manifest?.Files.ToHashSet(StringComparer.Ordinal) ?? [];
        return files.FirstOrDefault(file => !own.Contains(file.Path) && Path.Exists(Path.Combine(full, file.Path))) is { } foreign
            ? new(folder, null, $"{foreign.Path} is there already and was not written by `classkit {kind}`", "Move it away or name another folder; nothing was written.")
            : null;
    }

    private static void Stage(string next, string kind, IReadOnlyList<OutputFile> files)
    {
        if (Directory.Exists(next)) Directory.Delete(next, recursive: true);
        Directory.CreateDirectory(next);
        foreach (var file in files)
        {
            var path = Path.Combine(next, file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            using var stream = File.Create(path);
            file.WriteTo(stream);
        }
        OutputManifest.Of(kind, files).Write(next);
    }

    private static void Swap(string full, string next, string old)
    {
        if (Directory.Exists(full)) Directory.Move(full, old);
        Directory.Move(next, full);
        CarryOver(old, full);
    }

    private static void Recover(string full, string old)
    {
        if (!Directory.Exists(old)) return;
        if (Directory.Exists(full)) CarryOver(old, full);
        else Directory.Move(old, full);
    }

    /// <summary>Moves what ClassKit did not write from the old folder into the new one, then removes the old one.</summary>
    private static void CarryOver(string old, string full)
    {
        if (!Directory.Exists(old)) return;
        var own = OutputManifest.Read(old)?.Files.Append(OutputManifest.FileName).ToHashSet(StringComparer.Ordinal) ?? [];
        foreach (var path in Directory.EnumerateFiles(old, "*", SearchOption.AllDirectories).ToList())
        {
            var relative = Path.GetRelativePath(old, path).Replace('\\', '/');
            if (own.Contains(relative)) continue;
            var target = Path.Combine(full, relative);
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Move(path, target);
        }
        Directory.Delete(old, recursive: true);
    }
}

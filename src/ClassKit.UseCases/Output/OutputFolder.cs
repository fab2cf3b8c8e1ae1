using ClassKit.Content;

namespace ClassKit.UseCases;

/// <summary>Writes a use case's files so that a folder holds either the old ones or the new ones, never a mixture.</summary>
/// <remarks>
/// The new folder is written beside the old one, with copies of the files that ClassKit did not write; the two are then swapped in one step, or
/// where the system has none in two that the next run undoes. What a killed run left beside the folder is cleared away by the next one.
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
            Recover(full, next, old);
            if (Refusal(folder, full, kind, files) is { } refusal) return refusal;
            StageOrClear(full, next, kind, files);
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

    /// <summary>Writes the new folder, or nothing: where there is no room, what was written so far gives its room back.</summary>
    private static void StageOrClear(string full, string next, string kind, IReadOnlyList<OutputFile> files)
    {
        var isWhole = false;
        try
        {
            Stage(next, kind, files);
            CopyOthers(full, next);
            isWhole = true;
        }
        finally
        {
            if (!isWhole) Clear(next);
        }
    }

    private static void Stage(string next, string kind, IReadOnlyList<OutputFile> files)
    {
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
        if (!Directory.Exists(full))
        {
            Directory.Move(next, full);
            return;
        }

        if (FolderExchange.Try(full, next))
        {
            Clear(next);
            return;
        }

        Directory.Move(full, old);
        Directory.Move(next, full);
        Clear(old);
    }

    private static void Recover(string full, string next, string old)
    {
        if (Directory.Exists(old) && !Directory.Exists(full)) Directory.Move(old, full);
        if (Directory.Exists(old)) Directory.Delete(old, recursive: true);
        if (Directory.Exists(next)) Directory.Delete(next, recursive: true);
    }

    /// <summary>Removes what is not needed any more; if it cannot be, the next run will try again.</summary>
    private static void Clear(string leftover)
    {
        try
        {
            if (Directory.Exists(leftover)) Directory.Delete(leftover, recursive: true);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // All that the instructor asked for is done, or was refused for another reason.
        }
    }

    /// <summary>Copies what ClassKit did not write, an instructor's notes or corrections.</summary>
    private static void CopyOthers(string full, string next)
    {
        if (!Directory.Exists(full)) return;
        var own = OutputManifest.Read(full)?.Files.Append(OutputManifest.FileName).ToHashSet(StringComparer.Ordinal) ?? [];
        foreach (var path in Directory.EnumerateFiles(full, "*", SearchOption.AllDirectories).ToList())
        {
            var relative = Path.GetRelativePath(full, path).Replace('\\', '/');
            if (own.Contains(relative)) continue;
            var target = Path.Combine(next, relative);
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(path, target);
        }
    }
}

using System.Security.Cryptography;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Rounds;
using ClassKit.Desk.Serving;
using ClassKit.UseCases.Intake;

namespace ClassKit.Desk.Returns;

/// <summary>
/// A file of a round that can be moved by itself. One that lies inside an archive does so once the archive is taken apart, which is kept
/// whole among what was set aside.
/// </summary>
internal static class ApartFile
{
    /// <summary>The path of a file below what came back, as the folders have it now.</summary>
    /// <param name="round">The round.</param>
    /// <param name="named">The file, as the account of returned files names it: through archives too.</param>
    /// <returns>Null if there is none.</returns>
    /// <exception cref="IOException">An archive could not be taken apart.</exception>
    /// <exception cref="UnauthorizedAccessException">The system refuses it.</exception>
    public static string? Find(Round round, string named)
    {
        if (RoundGrading.ZipAlone(round) is { } alone && !named.StartsWith(Path.GetFileName(alone) + "/", StringComparison.Ordinal))
            named = $"{Path.GetFileName(alone)}/{named}";
        while (true)
        {
            var there = FolderFiles.In(round.Returned);
            if (there.Contains(named))
                return named;
            if (there.Where(path => named.StartsWith(path + "/", StringComparison.Ordinal)).MaxBy(path => path.Length) is not { } archive)
                return null;
            if (TakeApart(round, archive, named[(archive.Length + 1)..]) is not { } inside)
                return null;
            named = inside;
        }
    }

    /// <summary>Puts what is in an archive into a folder in its place.</summary>
    /// <returns>Where the file lies then that is asked for; null if there is no such file in it.</returns>
    private static string? TakeApart(Round round, string archive, string asked)
    {
        var from = Path.Combine(round.Returned, archive);
        var work = Path.Combine(round.Folder, ".incoming", RandomNumberGenerator.GetHexString(16));
        Directory.CreateDirectory(work);
        try
        {
            // A file inside another archive begins with that one's name.
            if (
                ArchiveLayer.Unpack(from, work, HandedInName.Of) is not { } places
                || places
                    .Keys.Where(place => asked == place || asked.StartsWith(place + "/", StringComparison.Ordinal))
                    .MaxBy(place => place.Length)
                    is not { } found
            )
                return null;
            var folder = Free(round.Returned, Path.ChangeExtension(archive, null).TrimEnd('.', ' '));
            Directory.Move(work, Path.Combine(round.Returned, folder));
            Directory.CreateDirectory(round.SetAside);
            if (!HandIn.Keep(from, round.SetAside, archive))
                File.Delete(from);
            return $"{folder}/{places[found]}{asked[found.Length..]}";
        }
        finally
        {
            if (Directory.Exists(work))
                Directory.Delete(work, recursive: true);
        }
    }

    /// <summary>A name below a folder that nothing has.</summary>
    private static string Free(string folder, string plain) =>
        FreeName.In(folder, plain, number => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{plain} ({number})"));
}

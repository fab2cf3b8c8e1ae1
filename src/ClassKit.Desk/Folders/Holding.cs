using ClassKit.Content.Diagnostics;
using ClassKit.Content.Recognition;
using ClassKit.Content.Sources;
using ClassKit.Content.Terms;

namespace ClassKit.Desk.Folders;

/// <summary>What holds now in a folder and would not with a file changed.</summary>
internal static class Holding
{
    /// <summary>Terms that can be read now and not then, with why.</summary>
    /// <param name="folder">The teaching folder.</param>
    /// <param name="changed">The files as they would be.</param>
    public static IEnumerable<Diagnostic> Broken(TeachingFolder folder, Library changed) =>
        folder
            .PathsOf(ContentKind.Term)
            .Where(term => TermReader.Read(Library.OfPaths().At(term)).Succeeded)
            .SelectMany(term => TermReader.Read(changed.At(term)).Problems);
}

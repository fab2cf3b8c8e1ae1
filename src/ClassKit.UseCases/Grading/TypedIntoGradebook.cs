using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Output.Writing;
using ClassKit.Workbooks.Gradebooks;

namespace ClassKit.UseCases.Grading;

/// <summary>
/// What an instructor typed into the gradebook of a folder, or into one that was set aside there, and has not put into corrections yet.
/// </summary>
/// <param name="Points">At most one an answer: what was typed last.</param>
/// <param name="Unread">Gradebooks that were changed and cannot be read.</param>
public sealed record TypedIntoGradebook(IReadOnlyList<TypedPoints> Points, IReadOnlyList<UnreadGradebook> Unread)
{
    internal const string FileName = "gradebook.xlsx";

    /// <summary>Nothing was typed.</summary>
    public static TypedIntoGradebook Nothing { get; } = new([], []);

    private const int MostBytes = 50 << 20;

    /// <summary>Reads every changed gradebook of a folder.</summary>
    /// <param name="folder">The folder of grades, which may not be there.</param>
    /// <param name="dealt">What was dealt to whom.</param>
    /// <param name="corrections">Those that stand already; they are the instructor's last word, but for what the present gradebook says
    /// against them.</param>
    public static TypedIntoGradebook Read(string folder, DealtClass dealt, IReadOnlyList<Correction> corrections)
    {
        var standing = corrections.ToDictionary(
            correction => (correction.Student, correction.Exercise, correction.Part),
            correction => correction.Points
        );
        var typed = new Dictionary<(string, string, string), TypedPoints>();
        List<UnreadGradebook> unread = [];
        HashSet<string> names = [FileName, .. ClassPart.Of(dealt.Students.Count).Select(part => part.Named(FileName))];
        foreach (var file in Changed(folder, names, unread))
        {
            var reading = Read(Path.Combine(folder, file), dealt);
            if (reading.Fault is { } fault)
                unread.Add(new(file, fault));
            foreach (var one in reading.Typed)
            {
                var answer = (one.Student.Id, one.Exercise, one.Part);
                if (!standing.TryGetValue(answer, out var points))
                    typed[answer] = one with { File = file };
                else if (names.Contains(file) && one.Points != points)
                    typed[answer] = one with { File = file, Fault = new TypedPointsFault.OtherwiseCorrected() };
            }
        }
        return new([.. typed.Values.OrderBy(one => one.Student.Id, StringComparer.Ordinal)], unread);
    }

    /// <summary>
    /// A folder that cannot be looked at may hold points that somebody typed, and is told of like a gradebook that cannot be read.
    /// </summary>
    private static IReadOnlyList<string> Changed(string folder, IEnumerable<string> names, List<UnreadGradebook> unread)
    {
        try
        {
            return OutputFolder.Changed(folder, names);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            unread.Add(new(FileName, new GradebookFault.Unopened(failure.Message)));
            return [];
        }
    }

    private static GradebookReading Read(string path, DealtClass dealt)
    {
        try
        {
            return new FileInfo(path).Length is 0 or > MostBytes
                ? new([], new GradebookFault.NoGradebook())
                : GradebookReader.Read(File.ReadAllBytes(path), dealt);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new([], new GradebookFault.Unopened(failure.Message));
        }
    }
}

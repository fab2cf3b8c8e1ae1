using System.Security.Cryptography;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.OnPaper;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Output.Writing;
using ClassKit.Wording.Papers;
using ClassKit.Workbooks.OnPaper;

namespace ClassKit.UseCases.Papers;

/// <summary>Reads a workbook of answers on paper that the instructor names.</summary>
public static class PaperFile
{
    private const string Remedy = $"Name the {MakePaperSheet.FileName} of this deal with the answers typed in.";

    /// <summary>What stands in it, or why it cannot be used.</summary>
    public static Reading<PaperReading> Read(string path, DealtClass dealt)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(dealt);
        try
        {
            using var file = File.OpenRead(path);
            return BoundedBytes.Read(file, IntakeLimits.FileBytes) is { } bytes
                ? Read(path, bytes, dealt)
                : new(null, [new(path, null, "It is too large to be such a workbook", Remedy)]);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return new(null, [new(path, null, $"It cannot be read: {failure.Message.TrimEnd('.')}", Remedy)]);
        }
    }

    /// <summary>The same of a file of a library.</summary>
    internal static Reading<PaperReading> Read(Source source, DealtClass dealt)
    {
        using var file = source.Library.Tree.Open(source.Path);
        return BoundedBytes.Read(file, IntakeLimits.FileBytes) is { } bytes
            ? Read(source.Path, bytes, dealt)
            : new(null, [new(source.Path, null, "It is too large to be such a workbook", Remedy)]);
    }

    private static Reading<PaperReading> Read(string path, byte[] bytes, DealtClass dealt)
    {
        var reading = PaperReader.Read(bytes, Path.GetFileName(path), Digest.Text(SHA256.HashData(bytes)), dealt);
        return reading.Refusal is { } why ? new(null, [new(path, null, PaperFaultWords.Of(why), Remedy)]) : new(reading, []);
    }
}

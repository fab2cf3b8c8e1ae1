using System.Text.Json;
using ClassKit.EndToEnd.Tests.Tools;

[assembly: AssemblyFixture(typeof(ClassKit.EndToEnd.Tests.Tour.TourRun))]

namespace ClassKit.EndToEnd.Tests.Tour;

/// <summary>One tour, taken once for all tests that look at what it made.</summary>
public sealed class TourRun : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public TourRun()
    {
        Folder = _folder.Of("tour");
        Output = ClassKitRun.Of("tour", "--out", Folder).Done().Output;
        Grades = JsonDocument.Parse(File.ReadAllText(Path.Combine(Folder, "graded", "grades.json"))).RootElement;
    }

    public string Folder { get; }

    public string Output { get; }

    public JsonElement Grades { get; }

    public IEnumerable<string> Pages =>
        Directory.EnumerateFiles(Folder, "*.html", SearchOption.AllDirectories).Order(StringComparer.Ordinal);

    public void Dispose() => _folder.Dispose();
}

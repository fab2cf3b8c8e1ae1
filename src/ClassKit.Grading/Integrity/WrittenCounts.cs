namespace ClassKit.Grading.Integrity;

/// <summary>How many of a class were wrong at a part, and how many of those wrote what.</summary>
internal sealed class WrittenCounts
{
    private readonly Dictionary<(string Exercise, string Part), int> _wrong = [];
    private readonly Dictionary<((string Exercise, string Part) Part, string Text), int> _wrote = [];

    /// <param name="written">What every student wrote, by part.</param>
    public WrittenCounts(IEnumerable<Dictionary<(string Exercise, string Part), string>> written)
    {
        foreach (var (part, text) in written.SelectMany(student => student))
        {
            _wrong[part] = _wrong.GetValueOrDefault(part) + 1;
            _wrote[(part, text)] = _wrote.GetValueOrDefault((part, text)) + 1;
        }
    }

    /// <summary>How likely it is that a student who is wrong at a part writes a text, by the class without two who both wrote it.</summary>
    public double Alike((string Exercise, string Part) part, string text) => Chance(part, text, besides: 2);

    /// <summary>The same by the class without two who are both wrong, of whom one wrote it.</summary>
    public double Apart((string Exercise, string Part) part, string text) => Chance(part, text, besides: 1);

    private double Chance((string Exercise, string Part) part, string text, int besides) =>
        (_wrote[(part, text)] - besides + 0.5) / (_wrong[part] - 2 + 1);
}

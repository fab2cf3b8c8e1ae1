using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Wording;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>Reads what is measured of a bread, and the questions that follow from the difference to what was predicted.</summary>
internal static class ObservationList
{
    private static readonly string[] Columns = ["Measure", "If less", "If more"];

    private static readonly Dictionary<string, Measure> Measures = new(StringComparer.OrdinalIgnoreCase)
    {
        ["Mass before"] = Measure.MassBefore,
        ["Mass after"] = Measure.MassAfter,
        ["Bake loss"] = Measure.BakeLoss,
        ["Height"] = Measure.Height,
        ["Diameter"] = Measure.Diameter,
        ["Internal temperature"] = Measure.InternalTemperature,
    };

    public static IReadOnlyList<Observation> Read(Section? section, LessonTexts texts, ProblemList problems)
    {
        var observations = new List<Observation>();
        foreach (var row in Tables.Rows(section, Columns, problems))
        {
            var (name, less, more) = (
                row.Required("Measure", problems),
                row.Required("If less", problems),
                row.Required("If more", problems)
            );
            if (name is not { } measured || less is null || more is null)
                continue;
            if (!Measures.TryGetValue(measured.Text, out var measure))
                problems.Add(row.Line, $"`{measured.Text}` is not measured here", NearestWord.Advice(measured.Text, Measures.Keys));
            else if (observations.Exists(known => known.Measure == measure))
                problems.Add(row.Line, $"`{measured.Text}` is measured a second time", "Put both rows into one.");
            else
                observations.Add(new(measure, texts.Read(less.Value), texts.Read(more.Value)));
        }
        return observations;
    }
}

using System.Globalization;
using System.IO.Compression;
using System.Security;
using System.Text;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Exercises.Randomness;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Rehearsing;

namespace ClassKit.Benchmarks.LargeClasses;

/// <summary>
/// Answers every workbook of a dealt folder as an invented class would, straight into the packages: what a spreadsheet program takes a
/// second for has to be done ten thousand times.
/// </summary>
internal static class LargeReturn
{
    private const ulong Seed = 7;

    /// <summary>Mostly right, in the ways of the rehearsal's students.</summary>
    private static readonly AnswerWay[] Ways =
    [
        AnswerWay.Cells,
        AnswerWay.Cells,
        AnswerWay.Cells,
        AnswerWay.Cells,
        AnswerWay.Cells,
        AnswerWay.Cells,
        AnswerWay.Cells,
        AnswerWay.OneGo,
        AnswerWay.WrongTurn,
        AnswerWay.WrongTurnTyped,
        AnswerWay.Slip,
        AnswerWay.Typed,
        AnswerWay.Blank,
        AnswerWay.PartlyTyped,
        AnswerWay.TypedWithUnit,
        AnswerWay.DivisionByZero,
    ];

    /// <summary>Fills all workbooks in, but for every fiftieth student's, which never comes back.</summary>
    /// <param name="dealtFolder">A folder that dealing made.</param>
    /// <param name="returned">The folder that the returned workbooks go to.</param>
    public static void Write(string dealtFolder, string returned)
    {
        var file = Path.Combine(dealtFolder, DealtJson.FileName);
        var dealt = DealtJson.Read(file, File.ReadAllText(file)).Model ?? throw new InvalidOperationException($"{file} cannot be read.");
        var layout = dealt.LayOut();
        var sheets = layout.Exercises.Select(exercise => exercise.Sheet).Distinct().ToList();
        Directory.CreateDirectory(returned);
        for (var at = 0; at < dealt.Students.Count; at++)
        {
            if (at % 50 == 49)
                continue;
            var student = dealt.Students[at];
            var edits = Answers(layout, student).ToLookup(answer => answer.Cell.Sheet);
            using var from = ZipFile.OpenRead(Path.Combine(dealtFolder, student.Workbook));
            using var to = ZipFile.Open(Path.Combine(returned, student.Who.Id + ".xlsx"), ZipArchiveMode.Create);
            foreach (var entry in from.Entries)
            {
                using var content = new StreamReader(entry.Open());
                using var copy = new StreamWriter(to.CreateEntry(entry.FullName, CompressionLevel.Fastest).Open());
                // The first sheet is the one to start from.
                var sheet = sheets.FindIndex(name => entry.FullName == $"xl/worksheets/sheet{sheets.IndexOf(name) + 2}.xml");
                copy.Write(sheet < 0 ? content.ReadToEnd() : Fill(content.ReadToEnd(), [.. edits[sheets[sheet]]]));
            }
        }
    }

    private static IEnumerable<(CellAddress Cell, object Content)> Answers(PracticeLayout layout, DealtStudent student)
    {
        var random = SeededDraws.For(Seed, student.Who.Id);
        foreach (var exercise in layout.Of(student).Exercises)
        {
            var sheet = new AnswerSheet(exercise, student);
            foreach (var place in exercise.Answers)
            {
                if (sheet.Answer(place.Part, Ways[random.Below(Ways.Length)], random.Below(1000)).Content is { } content)
                    yield return (place.Address, content);
            }
        }
    }

    private static string Fill(string xml, IReadOnlyList<(CellAddress Cell, object Content)> edits)
    {
        var filled = new StringBuilder(xml);
        foreach (var (cell, content) in edits)
        {
            var text = filled.ToString();
            var from = text.IndexOf($"<x:c r=\"{cell.Cell}\"", StringComparison.Ordinal);
            var to = text.IndexOf("/>", from, StringComparison.Ordinal);
            if (from < 0 || text.AsSpan(from + 1, to - from).Contains('<'))
                throw new InvalidOperationException($"{cell} is no empty cell.");
            filled
                .Remove(to, 2)
                .Insert(
                    to,
                    content switch
                    {
                        double number => string.Create(CultureInfo.InvariantCulture, $"><x:v>{number:R}</x:v></x:c>"),
                        string formula when formula.StartsWith('=') => $"><x:f>{SecurityElement.Escape(formula[1..])}</x:f></x:c>",
                        _ => $" t=\"inlineStr\"><x:is><x:t>{SecurityElement.Escape((string)content)}</x:t></x:is></x:c>",
                    }
                );
        }
        return filled.ToString();
    }
}

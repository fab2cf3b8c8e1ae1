using System.IO.Compression;
using System.Xml.Linq;
using ClassKit.Workbooks.Dealing;

namespace ClassKit.PracticeBank.Tests.Fillings;

/// <summary>
/// What programs offer in the answer cells of a dealt workbook, read from the file's own XML (ECMA-376 Part 1, 18.3.1.32).
/// </summary>
public sealed class AnswerCellsTests
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    /// <summary>The sheets of one workbook with everything that ships.</summary>
    private static readonly Lazy<IReadOnlyList<XDocument>> Sheets = new(() =>
    {
        var seat = Shipped.Seats[0];
        using var package = new ZipArchive(new MemoryStream(DealtWorkbookWriter.Write(seat.Dealt, seat.Student)));
        return
        [
            .. package
                .Entries.Where(entry => entry.FullName.StartsWith("xl/worksheets/sheet", StringComparison.Ordinal))
                .Select(entry =>
                {
                    using var stream = entry.Open();
                    return XDocument.Load(stream);
                }),
        ];
    });

    private static (Dictionary<string, XElement> Rules, HashSet<string> Merged) Sheet(string exercise)
    {
        var layout = Shipped.Seats[0].Dealt.LayOut().Of(exercise);
        foreach (var sheet in Sheets.Value)
        {
            if (!sheet.Descendants(Main + "dataValidation").Any(rule => (string?)rule.Attribute("promptTitle") == layout.Answers[0].Tag))
                continue;
            return (
                sheet.Descendants(Main + "dataValidation").ToDictionary(rule => (string)rule.Attribute("promptTitle")!),
                [.. sheet.Descendants(Main + "mergeCell").Select(cell => (string)cell.Attribute("ref")!)]
            );
        }
        throw new InvalidOperationException($"{exercise} has no sheet");
    }

    [Fact]
    public void A_letter_is_chosen_from_a_drop_down_of_as_many_as_there_are_options()
    {
        foreach (var exercise in Shipped.Exercises.Where(exercise => exercise.Parts.Any(part => part.Choice is not null)))
        {
            var (rules, _) = Sheet(exercise.Id);
            foreach (var place in Shipped.Seats[0].Dealt.LayOut().Of(exercise.Id).Answers.Where(place => place.Part.Choice is not null))
            {
                var rule = rules[place.Tag];
                Assert.Equal("list", (string?)rule.Attribute("type"));
                Assert.NotEqual("1", (string?)rule.Attribute("showDropDown"));
                Assert.Equal(
                    '"' + string.Join(',', "ABCDEFGH"[..place.Part.Choice!.From.Options.Count].ToCharArray()) + '"',
                    (string)rule.Element(Main + "formula1")!
                );
            }
        }
    }

    /// <summary>showDropDown hides the arrow, as the standard has it. A rule for words warns of length alone and refuses nothing.</summary>
    [Fact]
    public void Words_have_a_wide_cell_that_takes_any_text()
    {
        foreach (var exercise in Shipped.Exercises.Where(exercise => exercise.Parts.Any(part => part.InWords is not null)))
        {
            var (rules, merged) = Sheet(exercise.Id);
            var place = Shipped.Seats[0].Dealt.LayOut().Of(exercise.Id).Answers.Single(place => place.Part.InWords is not null);

            Assert.Equal(
                ("textLength", "warning"),
                ((string?)rules[place.Tag].Attribute("type"), (string?)rules[place.Tag].Attribute("errorStyle"))
            );
            Assert.Contains($"C{place.Address.Row}:F{place.Address.Row}", merged);
        }
    }
}

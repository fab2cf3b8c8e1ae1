using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Deadlines;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Quoting;
using ClassKit.Wording.Flags;
using ClassKit.Wording.Tests.Samples;

namespace ClassKit.Wording.Tests.Flags;

public sealed class FlagWordsTests
{
    private static readonly Student Ada = new("ada-berg", "Ada Berg");
    private static readonly Student Ben = new("ben-okoye", "Ben Okoye");
    private static readonly DueMoment Due = DueWish.Parse("2026-11-20T17:00")!.In(ClassTimeZone.Find("Europe/Paris"))!;

    public static TheoryData<Flag, string> Said =>
        new()
        {
            {
                new Flag.GivenOverwritten(new(new("Dough", 7, 3), false), "Flour", 65, new("100")),
                "'Dough'!C7 (Flour) was dealt as 65 and now holds 100."
            },
            { new Flag.GivenOverwritten(new(new("Dough", 7, 3), false), "Flour", 65, null), "now holds nothing" },
            {
                new Flag.NameDiffers(new("ben.xlsx"), Ben, Ada),
                "by its name this file is Ben Okoye's, but the workbook inside was dealt to Ada Berg"
            },
            {
                new Flag.NumbersOfAnother(new("ada.xlsx"), Ada, Ben),
                "ada.xlsx bears Ada Berg’s id, but the numbers in it are those dealt to Ben Okoye."
            },
            {
                new Flag.SavedLate(new("ada.xlsx"), new(2026, 11, 22, 0, 0, 0, DateTimeKind.Utc), Due, 0),
                "saved 2026-11-22 01:00, 1 day and 8 hours after it was due, 2026-11-20 17:00 (Europe/Paris). Nothing is taken off."
            },
            { new Flag.SavedLate(new("ada.xlsx"), new(2026, 11, 22, 0, 0, 0, DateTimeKind.Utc), Due, 0.125m), "12.5 % is taken off." },
            {
                new Flag.SavedUnclear(
                    new("ada.ods"),
                    new(2026, 11, 20, 15, 30, 0, DateTimeKind.Utc),
                    new(2026, 11, 20, 16, 30, 0, DateTimeKind.Utc),
                    Due
                ),
                "It was saved 2026-11-20 16:30 or 2026-11-20 17:30 on the class’s clocks; it was due 2026-11-20 17:00 (Europe/Paris)."
            },
            {
                new Flag.SavedAfterItCame(
                    new("ada.xlsx"),
                    new(2031, 1, 1, 0, 0, 0, DateTimeKind.Utc),
                    new(2026, 11, 20, 15, 30, 0, DateTimeKind.Utc),
                    Due
                ),
                "says that it was saved 2031-01-01 01:00, but the file itself was changed last 2026-11-20 16:30"
            },
            {
                new Flag.FitsAnotherVariant(Ada, Ben, [("sums", "dough"), ("sums", "ice")], 1 / 343.0),
                "right for those dealt to Ben Okoye: sums.dough, sums.ice. Chance alone brings this about in about 1 in 343 classes."
            },
            { new Flag.SharedMistakes(Ben, [("sums", "dough")], 4, 0.0001), "in fewer than 1 in 1000 classes" },
            { new Flag.SharedAuthor([Ben]), "that of Ben Okoye name the same person" },
            { new Flag.DealDoubtful(new("ada.xlsx"), ["K7M-4RX9"], "T2P-8WQ3"), "(K7M-4RX9 besides T2P-8WQ3)" },
        };

    [Theory]
    [MemberData(nameof(Said))]
    public void A_flag_is_said_with_its_cells_students_and_numbers(Flag flag, string words) =>
        Assert.Contains(words, FlagWords.Of(flag, []), StringComparison.Ordinal);

    [Fact]
    public void Parts_are_named_as_every_page_names_them()
    {
        var (first, second) = (Parts.Dough(Parts.Of()), Parts.Dough(Parts.Of()) with { Id = "sums" });
        var flag = new Flag.SharedMistakes(Ben, [("sums", second.Parts[0].Id), ("dough", first.Parts[0].Id)], 4, 0.01);

        Assert.Contains("wrote: 2a, 1a.", FlagWords.Of(flag, [first, second]), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_many_files_eight_are_named_and_the_others_counted()
    {
        var flag = new Flag.SeveralFiles(Ada, [.. Enumerable.Range(1, 10).Select(at => new ReturnedName($"{at:00}.xlsx"))], new("03.xlsx"));

        Assert.Equal(
            "10 files came from Ada Berg: 01.xlsx, 02.xlsx, 03.xlsx, 04.xlsx, 05.xlsx, 06.xlsx, 07.xlsx, 08.xlsx and 2 more. 03.xlsx was graded.",
            FlagWords.Of(flag, [])
        );
    }

    [Fact]
    public void Every_flag_there_is_has_words() => Assert.All(Every.Of<Flag>(), flag => Assert.NotEmpty(FlagWords.Of(flag, [])));

    [Fact]
    public void Every_fact_about_people_has_an_innocent_explanation() =>
        Assert.All(
            Every
                .Of<Flag>()
                .Where(flag =>
                    flag is Flag.FitsAnotherVariant or Flag.SharedMistakes or Flag.SharedAuthor or Flag.NameDiffers or Flag.NumbersOfAnother
                ),
            flag => Assert.NotNull(InnocentExplanations.Of(flag))
        );
}

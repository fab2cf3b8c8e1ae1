using ClassKit.Exercises.Deadlines;
using ClassKit.Grading.Findings;
using Shape = ClassKit.UseCases.Grading.Facts.FactShape<ClassKit.Grading.Findings.Flag>;

namespace ClassKit.UseCases.Grading.Facts;

/// <summary>How facts about a returned workbook stand in grades.json.</summary>
internal static class FlagShapes
{
    public static FactShapes<Flag> All { get; } =
        new(
            Shape.Of<Flag.GivenOverwritten>(
                FlagCodes.GivenOverwritten,
                (fact, to) =>
                    (to["place"], to["label"], to["dealt"], to["found"]) = (
                        FactFields.Of(fact.Place),
                        fact.Label,
                        FactFields.Of(fact.Dealt),
                        fact.Found?.Text
                    ),
                from => new(from.Place("place"), from.Text("label"), from.Decimal("dealt"), from.QuoteOrNull("found"))
            ),
            Shape.Of<Flag.NameDiffers>(
                FlagCodes.NameDiffers,
                (fact, to) => (to["file"], to["named"], to["owner"]) = (fact.File.Path, fact.Named.Id, fact.Owner.Id),
                from => new(from.File("file"), from.Student("named"), from.Student("owner"))
            ),
            Shape.Of<Flag.NumbersOfAnother>(
                FlagCodes.NumbersOfAnother,
                (fact, to) => (to["file"], to["bears"], to["other"]) = (fact.File.Path, fact.Bears.Id, fact.Other.Id),
                from => new(from.File("file"), from.Student("bears"), from.Student("other"))
            ),
            Shape.Of<Flag.UnderOtherName>(
                FlagCodes.UnderOtherName,
                (fact, to) => (to["file"], to["named"], to["owner"]) = (fact.File.Path, fact.Named.Id, fact.Owner.Id),
                from => new(from.File("file"), from.Student("named"), from.Student("owner"))
            ),
            Shape.Of<Flag.OwnerInferred>(
                FlagCodes.OwnerInferred,
                (fact, to) => (to["file"], to["byNumbers"]) = (fact.File.Path, fact.ByNumbers),
                from => new(from.File("file"), from.Bool("byNumbers"))
            ),
            Shape.Of<Flag.OtherSheet>(
                FlagCodes.OtherSheet,
                (fact, to) => (to["exercise"], to["sheet"]) = (fact.Exercise, fact.Sheet.Text),
                from => new(from.Text("exercise"), from.Quote("sheet"))
            ),
            Shape.Of<Flag.SavedUnknown>(FlagCodes.SavedUnknown, (fact, to) => to["file"] = fact.File.Path, from => new(from.File("file"))),
            Shape.Of<Flag.SavedLate>(
                FlagCodes.Late,
                (fact, to) => (to["file"], to["saved"], to["off"]) = (fact.File.Path, fact.Saved, FactFields.Of(fact.Off)),
                from =>
                    from.Names.Due is { } due && from.Moment("saved") > due.At.UtcDateTime
                        ? new(from.File("file"), from.Moment("saved"), due, from.Decimal("off"))
                        : throw new FormatException("Work is late, and nothing says that it was due before it was saved")
            ),
            Shape.Of<Flag.SavedUnclear>(
                FlagCodes.SavedUnclear,
                (fact, to) => (to["file"], to["saved"], to["orSaved"]) = (fact.File.Path, fact.Saved, fact.OrSaved),
                from => new(from.File("file"), from.Moment("saved"), from.Moment("orSaved"), Due(from))
            ),
            Shape.Of<Flag.SavedAfterItCame>(
                FlagCodes.SavedAfterItCame,
                (fact, to) => (to["file"], to["saved"], to["dated"]) = (fact.File.Path, fact.Saved, fact.Dated),
                from => new(from.File("file"), from.Moment("saved"), from.Moment("dated"), Due(from))
            ),
            Shape.Of<Flag.SeveralFiles>(
                FlagCodes.SeveralFiles,
                (fact, to) => (to["student"], to["files"], to["graded"]) = (fact.Student.Id, FactFields.Of(fact.Files), fact.Graded.Path),
                from => new(from.Student("student"), from.Files("files"), from.File("graded"))
            ),
            Shape.Of<Flag.PaperBeside>(
                FlagCodes.PaperBeside,
                (fact, to) =>
                    (to["student"], to["file"], to["paper"], to["paperCounts"]) = (
                        fact.Student.Id,
                        fact.File.Path,
                        fact.Paper.Path,
                        fact.PaperCounts
                    ),
                from => new(from.Student("student"), from.File("file"), from.File("paper"), from.Bool("paperCounts"))
            ),
            Shape.Of<Flag.OfOtherDeal>(
                FlagCodes.OtherDeal,
                (fact, to) => (to["file"], to["why"]) = (fact.File.Path, UncountedShapes.All.Entry(fact.Why)),
                from =>
                    new(
                        from.File("file"),
                        UncountedShapes.All.Model(from.Within("why")) as Uncounted.OfOtherDeal
                            ?? throw new FormatException("A flag does not say which deal a file is from")
                    )
            ),
            Shape.Of<Flag.DealDoubtful>(
                FlagCodes.DealDoubtful,
                (fact, to) => (to["file"], to["others"], to["own"]) = (fact.File.Path, FactFields.Of(fact.Others), fact.Own),
                from => new(from.File("file"), from.Texts("others"), from.TextOrNull("own"))
            ),
            Shape.Of<Flag.FormulaToLookAt>(
                FlagCodes.FormulaToLookAt,
                (fact, to) => (to["place"], to["formula"]) = (FactFields.Of(fact.Place), fact.Formula.Text),
                from => new(from.Place("place"), from.Quote("formula"))
            ),
            Shape.Of<Flag.FitsAnotherVariant>(
                FlagCodes.FitsAnotherVariant,
                (fact, to) =>
                    (to["student"], to["other"], to["parts"], to["expected"]) = (
                        fact.Student.Id,
                        fact.Other.Id,
                        FactFields.Of(fact.Parts),
                        fact.Expected
                    ),
                from => new(from.Student("student"), from.Student("other"), from.Asked("parts"), from.Number("expected"))
            ),
            Shape.Of<Flag.SharedMistakes>(
                FlagCodes.SharedMistakes,
                (fact, to) =>
                    (to["other"], to["parts"], to["both"], to["expected"]) = (
                        fact.Other.Id,
                        FactFields.Of(fact.Parts),
                        fact.Both,
                        fact.Expected
                    ),
                from => new(from.Student("other"), from.Asked("parts"), from.Int("both"), from.Number("expected"))
            ),
            Shape.Of<Flag.SharedAuthor>(
                FlagCodes.SharedAuthor,
                (fact, to) => to["others"] = FactFields.Of(fact.Others),
                from => new(from.Students("others"))
            ),
            Shape.Of<Flag.UnreadableFile>(
                FlagCodes.UnreadableFile,
                (fact, to) => (to["file"], to["refusal"]) = (fact.File.Path, RefusalShapes.All.Entry(fact.Refusal)),
                from => new(from.File("file"), from.Fact("refusal", RefusalShapes.All))
            )
        );

    private static DueMoment Due(FactReader from) =>
        from.Names.Due ?? throw new FormatException("Nothing says when the work was due, and it is said how it came by that");
}

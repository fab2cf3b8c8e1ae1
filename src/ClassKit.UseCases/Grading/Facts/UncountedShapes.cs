using System.Text.Json.Nodes;
using ClassKit.Grading.Findings;
using ClassKit.UseCases.Output;
using Shape = ClassKit.UseCases.Grading.Facts.FactShape<ClassKit.Grading.Findings.Uncounted>;
using WhyShape = ClassKit.UseCases.Grading.Facts.FactShape<ClassKit.Grading.Findings.WhyThatVersion>;

namespace ClassKit.UseCases.Grading.Facts;

/// <summary>How it stands in grades.json why a returned file does not count.</summary>
internal static class UncountedShapes
{
    /// <summary>Why one of several versions was graded.</summary>
    public static FactShapes<WhyThatVersion> Because { get; } =
        new(
            WhyShape.Of<WhyThatVersion.SaysWhen>("says-when"),
            WhyShape.Of<WhyThatVersion.Newer>(
                "newer",
                (fact, to) => (to["changed"], to["other"]) = (fact.Changed, fact.Other),
                from => new(from.Moment("changed"), from.Moment("other"))
            ),
            WhyShape.Of<WhyThatVersion.OtherIsEmpty>("other-is-empty"),
            WhyShape.Of<WhyThatVersion.OtherIsNamed>(
                "other-is-named",
                (fact, to) => to["named"] = fact.Named.Id,
                from => new(from.Student("named"))
            ),
            WhyShape.Of<WhyThatVersion.NotAllSayWhen>("not-all-say-when"),
            WhyShape.Of<WhyThatVersion.EarnsAsMuch>("earns-as-much"),
            WhyShape.Of<WhyThatVersion.EarnsMost>("earns-most")
        );

    public static FactShapes<Uncounted> All { get; } =
        new(
            Shape.Of<Uncounted.NotRead>(
                "not-read",
                (fact, to) => to["refusal"] = RefusalShapes.All.Entry(fact.Refusal),
                from => new(from.Fact("refusal", RefusalShapes.All))
            ),
            Shape.Of<Uncounted.OfNobody>("of-nobody", (fact, to) => to["cohort"] = fact.Cohort, from => new(from.Text("cohort"))),
            Shape.Of<Uncounted.OfOtherDeal>(
                "of-other-deal",
                (fact, to) => (to["other"], to["lesson"], to["code"]) = (Entry(fact.Other), fact.LessonTitle, fact.Code),
                from => new(Other(from.Within("other")), from.Text("lesson"), from.TextOrNull("code"))
            ),
            Shape.Of<Uncounted.Copy>("copy", (fact, to) => to["graded"] = fact.Graded.Path, from => new(from.File("graded"))),
            Shape.Of<Uncounted.OtherVersion>(
                "other-version",
                (fact, to) =>
                    (to["student"], to["points"], to["outOf"], to["graded"], to["because"]) = (
                        fact.Student.Id,
                        FactFields.Of(fact.Points),
                        FactFields.Of(fact.OutOf),
                        fact.Graded.Path,
                        Because.Entry(fact.Because)
                    ),
                from =>
                    new(
                        from.Student("student"),
                        from.Decimal("points"),
                        from.Decimal("outOf"),
                        from.File("graded"),
                        Because.Model(from.Within("because"))
                            ?? throw new FormatException("A file does not say why another version of it was graded")
                    )
            )
        );

    /// <summary>Another deal, as it stands in the file.</summary>
    public static JsonObject Entry(OtherDeal other) =>
        new()
        {
            ["what"] = KindWords.Of(other.Kind),
            ["code"] = other.Code,
            ["lesson"] = other.Lesson,
            ["cohort"] = other.Cohort,
        };

    /// <summary>Another deal that stands in the file.</summary>
    public static OtherDeal Other(FactReader from) =>
        new(from.Word<OtherDealKind>("what"), from.TextOrNull("code"), from.TextOrNull("lesson"), from.TextOrNull("cohort"));
}

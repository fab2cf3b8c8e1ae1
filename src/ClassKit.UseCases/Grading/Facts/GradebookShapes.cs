using ClassKit.Grading.Results;
using PointsShape = ClassKit.UseCases.Grading.Facts.FactShape<ClassKit.Grading.Results.TypedPointsFault>;
using Shape = ClassKit.UseCases.Grading.Facts.FactShape<ClassKit.Grading.Results.GradebookFault>;

namespace ClassKit.UseCases.Grading.Facts;

/// <summary>How it stands in grades.json why what was typed into a gradebook cannot be used.</summary>
internal static class GradebookShapes
{
    public static FactShapes<TypedPointsFault> Points { get; } =
        new(
            PointsShape.Of<TypedPointsFault.NotDealt>("not-dealt"),
            PointsShape.Of<TypedPointsFault.OutOfRange>(
                "out-of-range",
                (fact, to) => to["most"] = FactFields.Of(fact.Most),
                from => new(from.Decimal("most"))
            ),
            PointsShape.Of<TypedPointsFault.OtherName>(
                "other-name",
                (fact, to) => to["named"] = fact.Named,
                from => new(from.Text("named"))
            ),
            PointsShape.Of<TypedPointsFault.OtherwiseCorrected>("otherwise-corrected")
        );

    public static FactShapes<GradebookFault> All { get; } =
        new(
            Shape.Of<GradebookFault.Refused>(
                "refused",
                (fact, to) => to["why"] = RefusalShapes.All.Entry(fact.Why),
                from => new(from.Fact("why", RefusalShapes.All))
            ),
            Shape.Of<GradebookFault.NoGradebook>("no-gradebook"),
            Shape.Of<GradebookFault.NoPoints>(
                "no-points",
                (fact, to) => (to["sheet"], to["column"]) = (fact.Sheet, fact.Column),
                from => new(from.Text("sheet"), from.Text("column"))
            ),
            Shape.Of<GradebookFault.NoAnswers>("no-answers", (fact, to) => to["sheet"] = fact.Sheet, from => new(from.Text("sheet"))),
            Shape.Of<GradebookFault.Unopened>("unopened", (fact, to) => to["message"] = fact.Message, from => new(from.Text("message")))
        );
}

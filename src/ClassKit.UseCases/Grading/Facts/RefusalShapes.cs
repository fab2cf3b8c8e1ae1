using ClassKit.Grading.Findings.Refusals;
using ClassKit.UseCases.Output;
using Shape = ClassKit.UseCases.Grading.Facts.FactShape<ClassKit.Grading.Findings.Refusals.Refusal>;

namespace ClassKit.UseCases.Grading.Facts;

/// <summary>How the reason why a file was not read stands in grades.json.</summary>
internal static class RefusalShapes
{
    public static FactShapes<Refusal> All { get; } =
        new(
            Shape.Of<Refusal.Empty>("empty"),
            Shape.Of<Refusal.OnlyZeros>("only-zeros"),
            Shape.Of<Refusal.CutOff>("cut-off"),
            Shape.Of<Refusal.PasswordProtected>("password-protected"),
            Shape.Of<Refusal.OtherKind>(
                "other-kind",
                (fact, to) => (to["what"], to["inside"], to["ending"]) = (KindWords.Of(fact.Kind), fact.Inside?.Text, fact.Ending),
                from => new(from.Word<FileKind>("what")) { Inside = from.QuoteOrNull("inside"), Ending = from.TextOrNull("ending") }
            ),
            Shape.Of<Refusal.Damaged>(
                "damaged",
                (fact, to) => to["damage"] = DamageShapes.All.Entry(fact.What),
                from => new(from.Fact("damage", DamageShapes.All))
            ),
            Shape.Of<Refusal.TooLarge>(
                "too-large",
                (fact, to) => (to["what"], to["most"], to["part"]) = (KindWords.Of(fact.What), fact.Most, fact.Part),
                from => new(from.Word<Excess>("what"), from.Long("most")) { Part = from.Text("part") }
            ),
            Shape.Of<Refusal.Oversized>("oversized", (fact, to) => to["bytes"] = fact.Bytes, from => new(from.Long("bytes"))),
            Shape.Of<Refusal.Leftover>(
                "leftover",
                (fact, to) => to["by"] = KindWords.Of(fact.By),
                from => new(from.Word<LeftoverKind>("by"))
            ),
            Shape.Of<Refusal.Link>("link"),
            Shape.Of<Refusal.FarFolder>("far-folder"),
            Shape.Of<Refusal.Packed>(
                "packed",
                (fact, to) => (to["what"], to["most"]) = (KindWords.Of(fact.What), fact.Most),
                from => new(from.Word<PackingFault>("what"), from.Int("most"))
            ),
            Shape.Of<Refusal.Unopened>(
                "unopened",
                (fact, to) => to["why"] = KindWords.Of(fact.Why),
                from => new(from.Word<OpeningFault>("why"))
            )
        );
}

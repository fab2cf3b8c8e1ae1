using ClassKit.Terms.Skills;

namespace ClassKit.Pages.Tests.Samples;

/// <summary>Three students: one who shows everything, one who never did, one of whom nothing is known.</summary>
internal static class SampleSkills
{
    private static readonly DateOnly Today = new(2026, 11, 29);

    public static ClassSkills Class { get; } =
        new(
            "Invented class",
            Today,
            Today.AddDays(30),
            [
                new(
                    new("ada", "Ada <Berg>"),
                    SkillStanding.Of([new("baker's percentages", Today.AddDays(-20), 4, 4), new("steam", Today, 1, 2)], Today)
                ),
                new(new("ben", "Ben Okoye"), SkillStanding.Of([new("baker's percentages", Today.AddDays(-20), 0, 4)], Today)),
                new(new("cleo", "Cleo Marín"), []),
            ]
        )
        {
            Years = YearBeside.Of(
                [("a", "Flour <for> popovers", new("steam", Today, 2, 20)), ("b", "Soda", new("acid", Today, 9, 20))],
                [("a", "Flour <for> popovers", new("steam", Today, 18, 20)), ("b", "Soda", new("acid", Today, 11, 20))]
            ),
        };
}

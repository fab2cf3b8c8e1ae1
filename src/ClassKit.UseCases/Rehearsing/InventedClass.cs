using System.Globalization;
using Bogus;
using ClassKit.Exercises.Randomness;

namespace ClassKit.UseCases.Rehearsing;

/// <summary>Invents a class: names from Bogus, abilities spread evenly.</summary>
internal static class InventedClass
{
    private static readonly string[] Locales = ["en", "fr", "de", "es", "pt_BR", "it", "nl", "pl", "tr", "sv"];

    /// <summary>The ability in the middle of an invented class; the ends lie as far from it on either side.</summary>
    public const double MiddleAbility = 0.65;

    private const double Reach = 0.3;

    /// <summary>As many students as asked for; the seed decides who they are.</summary>
    public static IReadOnlyList<InventedStudent> Invent(int students, ulong seed)
    {
        var random = SeededDraws.For(seed, "class");
        return [.. Enumerable.Range(1, students).Select(number => Invent(number, random))];
    }

    private static InventedStudent Invent(int number, SeededDraws random)
    {
        var person = new Faker(Locales[random.Below(Locales.Length)]) { Random = new Randomizer(random.Below(int.MaxValue)) };
        var id = string.Create(CultureInfo.InvariantCulture, $"student-{number:000}");
        return new(new(id, person.Name.FullName(), $"{id}@example.org"), MiddleAbility - Reach + 2 * Reach * random.Fraction());
    }
}

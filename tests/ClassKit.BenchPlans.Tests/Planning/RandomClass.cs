using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Tests.Planning;

/// <summary>Classes as no instructor would think of them.</summary>
internal sealed class RandomClass
{
    private static readonly double[] Heats = [175, 190, 200, 220];

    private readonly Random _random;

    private RandomClass(int seed) => _random = new Random(seed);

    /// <summary>The class of a seed. Some of them have no plan.</summary>
    public static BenchClass Of(int seed) => new RandomClass(seed).Draw();

    private BenchClass Draw()
    {
        var teams = From(1, 4);
        var people = From(1, 4);
        var breads = Enumerable.Range(0, From(1, 3)).Select(Bread).ToArray();
        var time = new ClassTime(From(90, 160), From(0, 10), From(0, 20), From(0, 10));
        EquipmentCount[] equipment =
        [
            new(Bakery.Burner, From(1, 4)),
            new(Bakery.Mixer, From(1, 4)),
            new(EquipmentKind.Scale, From(1, 4)),
            new(EquipmentKind.SmallScale, From(1, 4)),
        ];
        var ovens = new OvenBank(
            From(1, 3),
            From(2, 4),
            From(0, 20),
            TemperatureDifference.FromKelvins(From(5, 15)),
            TemperatureDifference.FromKelvins(From(3, 10))
        );
        var shown = Enumerable.Range(0, From(0, 2)).Select(at => Demonstration(at, breads)).ToArray();
        // One of them may bake what it shows.
        if (shown.Length > 0 && From(0, 2) == 0)
        {
            shown[0] = shown[0] with { Load = breads.Length };
            breads = [.. breads, new("shown", "Shown", [.. Bake()]) { LeftToInstructor = true, IsForShow = true }];
        }
        return new(time, teams, people, equipment, ovens, breads, shown);
    }

    private Demonstration Demonstration(int at, BenchBread[] breads)
    {
        var before = From(0, 2) == 0 ? (StepOfBread?)null : Before(breads);
        return new Demonstration($"shown {at}", From(2, 5), before)
        {
            Uses = From(0, 1) == 0 ? [] : [new(EquipmentKind.Scale, 1)],
            After =
                From(0, 2) > 0 ? null
                : before is { Step: > 0 } known ? known with { Step = known.Step - 1 }
                : before is null ? Before(breads)
                : null,
        };
    }

    private StepOfBread Before(BenchBread[] breads)
    {
        var bread = From(0, breads.Length - 1);
        return new(bread, From(0, breads[bread].Steps.Count - 1));
    }

    private BenchBread Bread(int at)
    {
        var steps = Enumerable.Range(0, From(1, 3)).Select(_ => Step()).ToList();
        if (From(0, 4) > 0)
            steps.AddRange(Bake());
        if (From(0, 1) == 0)
            steps.Add(Step());
        return new($"bread_{at}", $"Bread {at}", steps) { KeepsMinutes = From(0, 3) == 0 ? From(20, 60) : null };
    }

    private BenchStep Step()
    {
        var least = From(1, 15);
        var alone = From(0, 2) == 0;
        return new("step", least, least + From(0, 6))
        {
            People = alone ? 0 : From(1, 2),
            Uses = From(0, 4) switch
            {
                0 => [new(Bakery.Burner, 1)],
                1 => [new(Bakery.Mixer, 1)],
                2 => [new(EquipmentKind.Scale, 1), new(EquipmentKind.SmallScale, 1)],
                3 => [new(EquipmentKind.Scale, 1)],
                _ => [],
            },
            BakedWithinMinutes = From(0, 5) == 0 ? From(40, 90) : null,
            Wait = new(From(0, 1), From(1, 15)),
            Heats = From(0, 3) == 0 ? [new("butter", Temperature.FromCelsius(18), From(0, 60))] : [],
        };
    }

    private IEnumerable<BenchStep> Bake()
    {
        var (first, places, shut) = (Heats[From(0, 3)], From(1, 2), From(0, 2) == 0);
        yield return Bakery.Baked("bake", 10, 10 + From(0, 5), first, places, shut) with
        {
            Wait = new(0, From(0, 5)),
        };
        if (From(0, 3) == 0)
            yield return Bakery.Baked("dry", 5, 5 + From(0, 5), Heats[From(0, 3)], places, shut);
    }

    private int From(int least, int most) => _random.Next(least, most + 1);
}

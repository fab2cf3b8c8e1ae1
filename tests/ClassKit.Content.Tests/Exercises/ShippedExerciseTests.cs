using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Content.Lessons;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Tests.Exercises;

public sealed class ShippedExerciseTests
{
    private static readonly IReadOnlyList<Exercise> Shipped = LessonReader.Read(Repository.Lesson).Model!.Exercises;

    public static TheoryData<string> Ids => [.. Shipped.Select(exercise => exercise.Id)];

    private static Exercise Of(string id) => Shipped.Single(exercise => exercise.Id == id);

    [Fact]
    public void There_are_at_least_six_with_two_to_four_parts()
    {
        Assert.True(Shipped.Count >= 6);
        Assert.All(Shipped, exercise => Assert.InRange(exercise.Parts.Count, 2, 4));
        // One is answered by choosing and in words, and so asks for no formula.
        Assert.Equal(
            ["three_trays"],
            Shipped.Where(exercise => !exercise.Parts.Any(part => part.FormulaAsked)).Select(exercise => exercise.Id)
        );
        Assert.All(Shipped.SelectMany(exercise => exercise.Parts).Where(part => part.InWords is null), part =>
            Assert.InRange(part.Misconceptions.Count, 1, 3)
        );
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_key_comes_to_a_finite_number_at_every_corner_of_the_givens(string id)
    {
        var exercise = Of(id);
        foreach (var draw in Corners(exercise))
        {
            var answers = Work(exercise, Names(draw));
            Assert.All(answers.Values, answer => Assert.True(double.IsFinite(answer)));
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void No_misconception_lands_within_tolerance_of_the_key_or_of_another(string id)
    {
        var exercise = Of(id);
        var tried = 0;
        foreach (var draw in Corners(exercise).Concat(Sample(exercise, 2000)))
        {
            var names = Names(draw);
            var answers = Work(exercise, names);
            if (!exercise.Constraints.All(constraint => NamedEvaluation.Evaluate(constraint, names).Value.Logical))
                continue;
            tried++;
            foreach (var part in exercise.Parts)
            {
                var values = part
                    .Misconceptions.Select(misconception => Evaluate(misconception.Formula, names))
                    .Prepend(answers[part.Id])
                    .ToList();
                var room = part.Tolerance.Around(answers[part.Id]);
                for (var i = 0; i < values.Count; i++)
                {
                    for (var j = i + 1; j < values.Count; j++)
                        Assert.True(
                            Math.Abs(values[i] - values[j]) > 2 * room,
                            $"{id}/{part.Id}: {values[i]} and {values[j]} at {string.Join(", ", draw)}"
                        );
                }
            }
        }
        Assert.True(tried >= 200, $"Only {tried} draws met the constraints.");
    }

    [Fact]
    public void The_oven_answers_a_published_conversion()
    {
        // NIST SP 811, appendix B.9: t/°C = (t/°F - 32)/1.8, so 350 °F is 176.667 °C.
        var part = Of("oven_dial").Parts[0];

        Assert.Equal(176.667, Evaluate(part.Key, new() { ["oven_f"] = CellValue.FromNumber(350) }), 0.001);
    }

    [Fact]
    public void Dough_temperature_answers_a_published_example()
    {
        // Pizza Today, June 2018: dough 80 °F, flour 65, room 75, friction 35 gives water of 65 °F; and friction from it gives 35 back.
        var exercise = Of("dough_temperature");
        var names = new Dictionary<string, CellValue>
        {
            ["want"] = CellValue.FromNumber(80),
            ["trial_dough"] = CellValue.FromNumber(80),
            ["flour_temp"] = CellValue.FromNumber(65),
            ["room"] = CellValue.FromNumber(75),
            ["trial_water"] = CellValue.FromNumber(65),
        };

        names["friction"] = CellValue.FromNumber(Evaluate(exercise.Parts[0].Key, names));

        Assert.Equal(35, names["friction"].Number, 1e-9);
        Assert.Equal(65, Evaluate(exercise.Parts[1].Key, names), 1e-9);
    }

    [Fact]
    public void Ice_answers_a_heat_balance()
    {
        // 40 kg from 20 °C to 10 °C with 80 °C for the melting: the ice takes in 80 + 10, the rest gives up 10, so a tenth of 40 kg is ice.
        var names = new Dictionary<string, CellValue>
        {
            ["water"] = CellValue.FromNumber(40_000),
            ["tap"] = CellValue.FromNumber(20),
            ["water_temp"] = CellValue.FromNumber(10),
            ["melting"] = CellValue.FromNumber(80),
        };

        Assert.Equal(4000, Evaluate(Of("dough_temperature").Parts[2].Key, names), 1e-9);
    }

    [Fact]
    public void Yeast_answers_a_published_conversion()
    {
        // 30 g fresh is 9.9 g instant and 12 g active dry with the factors 0.33 and 0.4 (cook books, "Yeast conversions: fresh to dry").
        var exercise = Of("yeast");
        var names = new Dictionary<string, CellValue>
        {
            ["fresh"] = CellValue.FromNumber(30),
            ["instant_factor"] = CellValue.FromNumber(0.33),
            ["dry_factor"] = CellValue.FromNumber(0.4),
        };

        names["instant"] = CellValue.FromNumber(Evaluate(exercise.Parts[1].Key, names));

        Assert.Equal(9.9, names["instant"].Number, 1e-9);
        Assert.Equal(12, Evaluate(exercise.Parts[2].Key, names), 1e-9);
    }

    private static double Evaluate(CellFormula formula, Dictionary<string, CellValue> names)
    {
        var result = NamedEvaluation.Evaluate(formula, names);
        Assert.Equal(EvaluationStatus.Computed, result.Status);
        return result.Value.Number;
    }

    /// <summary>Every part's answer; each becomes a name for the parts after it.</summary>
    private static Dictionary<string, double> Work(Exercise exercise, Dictionary<string, CellValue> names)
    {
        foreach (var part in exercise.Parts)
            names[part.Id] = CellValue.FromNumber(Evaluate(part.Key, names));
        return exercise.Parts.ToDictionary(part => part.Id, part => names[part.Id].Number);
    }

    private static Dictionary<string, CellValue> Names(Dictionary<string, decimal> draw) =>
        draw.ToDictionary(value => value.Key, value => CellValue.FromNumber((double)value.Value));

    private static IEnumerable<Dictionary<string, decimal>> Corners(Exercise exercise)
    {
        var varied = exercise.Givens.Where(given => !given.IsConstant).ToList();
        for (var corner = 0; corner < 1 << varied.Count; corner++)
            yield return exercise.Givens.ToDictionary(
                given => given.Id,
                given => varied.IndexOf(given) is var place and >= 0 && (corner >> place & 1) == 1 ? given.To : given.From
            );
    }

    private static IEnumerable<Dictionary<string, decimal>> Sample(Exercise exercise, int count)
    {
        var random = new Random(20_261_125);
        for (var i = 0; i < count; i++)
            yield return exercise.Givens.ToDictionary(given => given.Id, given => given.ValueAt(random.Next(given.Count)));
    }
}

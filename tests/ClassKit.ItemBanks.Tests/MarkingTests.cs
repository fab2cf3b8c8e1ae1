using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.ItemBanks.Packages;
using ClassKit.ItemBanks.Tests.Support;
using ClassKit.Tests.Exercises;

namespace ClassKit.ItemBanks.Tests;

/// <summary>Items of every shipped exercise, marked by a delivering program of the tests' own.</summary>
public sealed class MarkingTests
{
    private const int Variants = 5;
    private const int TemplateDraws = 40;
    private static readonly ItemBank Bank = ItemBank.OfVariants("all", ShippedExercises.All, Variants, 3);
    private static readonly OpenedBank Opened = new(Bank);

    public static TheoryData<string> Ids => [.. ShippedExercises.All.Select(exercise => exercise.Id)];

    public static TheoryData<string> IdsOfNumbers =>
        [.. ShippedExercises.All.Where(exercise => exercise.Parts.All(part => part.IsNumber)).Select(exercise => exercise.Id)];

    public static TheoryData<string> IdsOfChoices =>
        [.. ShippedExercises.All.Where(exercise => exercise.Parts.Any(part => part.Choice is not null)).Select(exercise => exercise.Id)];

    [Fact]
    public void There_is_an_item_for_every_variant() => Assert.Equal(ShippedExercises.All.Count * Variants, Bank.Items);

    [Theory]
    [MemberData(nameof(Ids))]
    public void Right_answers_earn_all_points_and_none_earn_nothing(string id)
    {
        var exercise = Exercise(id);
        foreach (var item in ItemsOf(exercise))
        {
            var delivery = new Delivery(item, new(0));
            Assert.Equal(
                (double)exercise.Parts.Where(part => part.InWords is null).Sum(part => part.Points),
                delivery
                    .MarkAll(
                        exercise
                            .Parts.Where(part => part.InWords is null)
                            .ToDictionary(part => "R_" + part.Id, part => delivery.Right("R_" + part.Id))
                    )
                    .Score,
                1e-9
            );
            Assert.Equal(0, delivery.Mark(new Dictionary<string, double>()).Score);
        }
    }

    [Theory]
    [MemberData(nameof(IdsOfNumbers))]
    public void A_tolerance_is_kept_to_its_bounds(string id)
    {
        var exercise = Exercise(id);
        foreach (var item in ItemsOf(exercise))
        {
            var delivery = new Delivery(item, new(0));
            foreach (var part in exercise.Parts)
            {
                var scale = part.Unit == "%" ? 100 : 1;
                var correct = delivery.Correct("R_" + part.Id);
                var room = part.Tolerance.Around(correct / scale) * scale;
                Assert.Equal(
                    (double)part.Points,
                    delivery.Mark(new Dictionary<string, double> { ["R_" + part.Id] = correct + room * 0.999 }).Score
                );
                Assert.Equal(
                    (double)part.Points,
                    delivery.Mark(new Dictionary<string, double> { ["R_" + part.Id] = correct - room * 0.999 }).Score
                );
                Assert.Equal(0, delivery.Mark(new Dictionary<string, double> { ["R_" + part.Id] = correct + room * 1.001 + 1e-6 }).Score);
            }
        }
    }

    [Fact]
    public void A_rounding_is_kept_to_its_bounds_which_lie_unevenly_about_the_answer()
    {
        const double Step = 0.5;
        var thermometers = Exercise("oven_and_fridge");
        var rounded = thermometers with
        {
            Parts = [.. thermometers.Parts.Select(part => part with { Tolerance = Tolerance.Rounding(Step), Misconceptions = [] })],
        };
        foreach (var item in new OpenedBank(ItemBank.OfVariants("rounded", [rounded], Variants, 3)).Items.Values)
        {
            var delivery = new Delivery(item, new(0));
            foreach (var part in rounded.Parts)
            {
                double Score(double answer) => delivery.Mark(new Dictionary<string, double> { ["R_" + part.Id] = answer }).Score;
                var nearest = Math.Round(delivery.Correct("R_" + part.Id) / Step, MidpointRounding.AwayFromZero) * Step;
                Assert.Equal(
                    [(double)part.Points, (double)part.Points, (double)part.Points],
                    [Score(nearest), Score(nearest - 0.249), Score(nearest + 0.249)]
                );
                Assert.Equal([0, 0], [Score(nearest - 0.251), Score(nearest + 0.251)]);
            }
        }
    }

    [Theory]
    [MemberData(nameof(IdsOfNumbers))]
    public void A_wrong_turn_is_told_in_its_own_words(string id)
    {
        var exercise = Exercise(id);
        foreach (var item in ItemsOf(exercise))
        {
            var delivery = new Delivery(item, new(0));
            var names = KeyValues.Names(
                GivensShown(exercise, item),
                exercise.Parts.Select(part => KeyValuePair.Create(part.Id, delivery.Correct("R_" + part.Id) / (part.Unit == "%" ? 100 : 1)))
            );
            foreach (var part in exercise.Parts)
            {
                foreach (var misconception in part.Misconceptions)
                {
                    if (KeyValues.Number(misconception.Formula, names) is not { } wrong)
                        continue;
                    var (score, said) = delivery.Mark(
                        new Dictionary<string, double> { ["R_" + part.Id] = wrong * (part.Unit == "%" ? 100 : 1) }
                    );
                    Assert.Equal(0, score);
                    Assert.Equal([misconception.Words], said);
                }
            }
        }
    }

    /// <summary>The key over the numbers that the item shows says which choice is right; its words are the option's.</summary>
    [Theory]
    [MemberData(nameof(IdsOfChoices))]
    public void A_choice_is_right_by_the_numbers_shown_and_every_wrong_one_is_told_its_words(string id)
    {
        var exercise = Exercise(id);
        foreach (var item in ItemsOf(exercise))
        {
            var delivery = new Delivery(item, new(0));
            var answers = new Dictionary<string, double>();
            foreach (var part in exercise.Parts)
            {
                var names = KeyValues.Names(GivensShown(exercise, item), answers);
                answers[part.Id] = KeyValues.Number(part.Key, names)!.Value;
                if (part.Choice is not { From: var list })
                    continue;
                var choices = item.Descendants()
                    .Where(element =>
                        element.Name.LocalName == "qti-choice-interaction"
                        && (string?)element.Attribute("response-identifier") == "R_" + part.Id
                    )
                    .Single()
                    .Elements()
                    .Where(element => element.Name.LocalName == "qti-simple-choice")
                    .ToDictionary(choice => (string)choice.Attribute("identifier")!, choice => choice.Value);
                Assert.Equal(
                    list.Options.Select(option => option.Words).Order(StringComparer.Ordinal),
                    choices.Values.Order(StringComparer.Ordinal)
                );
                Assert.Equal(list.Options[(int)answers[part.Id] - 1].Words, choices[delivery.Choice("R_" + part.Id)]);
                foreach (var (identifier, words) in choices.Where(choice => choice.Key != delivery.Choice("R_" + part.Id)))
                {
                    var number = list.Options.Index().Single(entry => entry.Item.Words == words).Index + 1;
                    var known = part
                        .Misconceptions.Where(wrong => KeyValues.Number(wrong.Formula, names) == number)
                        .Select(wrong => wrong.Words);
                    var (score, said) = delivery.MarkAll(new Dictionary<string, object> { ["R_" + part.Id] = identifier });
                    Assert.Equal(0, score);
                    Assert.Equal(known, said);
                }
            }
        }
    }

    /// <summary>The standard's external-scored says that no processing may set these points.</summary>
    [Fact]
    public void Words_are_left_to_people_with_what_to_look_for_and_are_beside_the_score()
    {
        var exercise = Exercise("jar_beside_the_dough");
        var part = exercise.Parts.Single(one => one.InWords is not null);
        foreach (var item in ItemsOf(exercise))
        {
            System.Xml.Linq.XElement Declared(string identifier) =>
                item.Elements().Single(element => (string?)element.Attribute("identifier") == identifier);

            Assert.Equal(
                ("string", 0),
                ((string?)Declared("R_newcomer").Attribute("base-type"), Declared("R_newcomer").Elements().Count())
            );
            Assert.Equal(
                ("human", "2"),
                (
                    (string?)Declared("POINTS_newcomer").Attribute("external-scored"),
                    (string?)Declared("POINTS_newcomer").Attribute("normal-maximum")
                )
            );
            Assert.Equal("2", Declared("MAXSCORE").Value);
            var rubric = item.Descendants().Single(element => element.Name.LocalName == "qti-rubric-block");
            Assert.Equal(("scorer", part.InWords!.LookFor), ((string?)rubric.Attribute("view"), rubric.Value));
            Assert.DoesNotContain(
                "newcomer",
                item.Elements().Single(element => element.Name.LocalName == "qti-response-processing").ToString(),
                StringComparison.Ordinal
            );
        }
    }

    /// <summary>
    /// The standard: a program may give up after a hundred draws and takes the values declared, which its author is to see to.
    /// </summary>
    [Fact]
    public void What_a_template_falls_back_on_is_a_variant_whole()
    {
        foreach (
            var (id, item) in new OpenedBank(ItemBank.OfTemplates("all", ShippedExercises.All, 1, 3)).Items.Where(one =>
                ShippedExercises.All.Any(exercise => exercise.Id == one.Key)
            )
        )
        {
            if (item.Elements().All(element => element.Name.LocalName != "qti-template-processing"))
                continue;
            var declared = item.Elements()
                .Where(element => element.Name.LocalName == "qti-template-declaration")
                .ToDictionary(
                    element => (string)element.Attribute("identifier")!,
                    element => double.Parse(element.Value, System.Globalization.CultureInfo.InvariantCulture)
                );
            var exercise = Exercise(id);
            var givens = exercise.Givens.ToDictionary(given => given.Id, given => (decimal)declared["G_" + given.Id]);
            var answers = exercise.Parts.ToDictionary(part => part.Id, part => declared["A_" + part.Id]);
            var names = KeyValues.Names(givens, answers);
            Assert.All(exercise.Givens, given =>
                Assert.Contains((decimal)declared["G_" + given.Id], Enumerable.Range(0, given.Count).Select(given.ValueAt))
            );
            Assert.All(exercise.Parts, part =>
                Assert.Equal(KeyValues.Number(part.Key, names)!.Value, answers[part.Id], 1e-9 * Math.Max(1, Math.Abs(answers[part.Id])))
            );
            Assert.All(exercise.Constraints, constraint => Assert.True(KeyValues.Holds(constraint, names)));
        }
    }

    [Fact]
    public void Templates_draw_numbers_whose_answers_are_those_of_the_keys()
    {
        var templates = new OpenedBank(ItemBank.OfTemplates("all", ShippedExercises.All, 2, 3)).Items;
        var expressed = ShippedExercises.All.Where(exercise => templates.ContainsKey(exercise.Id)).ToList();
        // Rounding up to whole packs and the like is not in the standard; most exercises are.
        Assert.True(
            expressed.Count > ShippedExercises.All.Count / 2,
            $"{expressed.Count} of {ShippedExercises.All.Count} could be expressed"
        );
        foreach (var exercise in expressed)
        {
            var random = new Random(5);
            for (var draw = 0; draw < TemplateDraws; draw++)
            {
                var delivery = new Delivery(templates[exercise.Id], random);
                var givens = exercise.Givens.ToDictionary(
                    given => given.Id,
                    given =>
                        given.ValueAt(
                            (int)
                                Math.Round(
                                    given.IsConstant
                                        ? 0
                                        : ((double)delivery.Variables["G_" + given.Id]! - (double)given.From) / (double)given.Step
                                )
                        )
                );
                var answers = new Dictionary<string, double>();
                foreach (var part in exercise.Parts)
                {
                    answers[part.Id] = KeyValues.Number(part.Key, KeyValues.Names(givens, answers))!.Value;
                    var expected = answers[part.Id] * (part.Unit == "%" ? 100 : 1);
                    Assert.Equal(expected, delivery.Correct("R_" + part.Id), 1e-9 * Math.Max(1, Math.Abs(expected)));
                }
                Assert.All(exercise.Constraints, constraint =>
                    Assert.True(KeyValues.Holds(constraint, KeyValues.Names(givens, answers)), $"{exercise.Id}: {constraint.Text}")
                );
                var right = RightIn(exercise, delivery);
                Assert.Equal((double)exercise.Parts.Sum(part => part.Points), delivery.Mark(right).Score, 1e-9);
                // Some wrong turns lead below zero.
                foreach (
                    var (part, wrong) in exercise.Parts.SelectMany(part =>
                        part.Misconceptions.Select(turn => (part, KeyValues.Number(turn.Formula, KeyValues.Names(givens, answers))!.Value))
                    )
                )
                    Assert.Single(
                        delivery
                            .Mark(new Dictionary<string, double>(right) { ["R_" + part.Id] = wrong * (part.Unit == "%" ? 100 : 1) })
                            .Said,
                        words => part.Misconceptions.Any(turn => turn.Words == words)
                    );
            }
        }
    }

    private static Exercise Exercise(string id) => ShippedExercises.All.Single(exercise => exercise.Id == id);

    private static IEnumerable<System.Xml.Linq.XElement> ItemsOf(Exercise exercise) =>
        Enumerable.Range(1, Variants).Select(variant => Opened.Items[$"{exercise.Id}_{variant:000}"]);

    private static Dictionary<string, double> RightIn(Exercise exercise, Delivery delivery) =>
        exercise.Parts.ToDictionary(part => "R_" + part.Id, part => delivery.Correct("R_" + part.Id));

    /// <summary>The givens as a student reads them in the item's table.</summary>
    private static Dictionary<string, decimal> GivensShown(Exercise exercise, System.Xml.Linq.XElement item)
    {
        var shown = item.Descendants()
            .Where(element => element.Name.LocalName == "td")
            .Select(cell => cell.Value.Split('\u00A0')[0])
            .ToList();
        return exercise
            .Givens.Zip(shown)
            .ToDictionary(
                pair => pair.First.Id,
                pair => decimal.Parse(pair.Second, System.Globalization.CultureInfo.InvariantCulture) / (pair.First.Unit == "%" ? 100 : 1)
            );
    }
}

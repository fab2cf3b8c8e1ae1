using ClassKit.Baking.FoodSafety;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.FrontMatter;
using ClassKit.Content.Ingredients;
using ClassKit.Content.Lessons;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Content.Recognition;
using ClassKit.Content.Rosters;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Cohorts;
using ClassKit.Lessons.Classes;

namespace ClassKit.Content.Classes;

/// <summary>Reads a class profile: quantities in the front matter, the class's name as title, and any text below for people.</summary>
public static class ClassProfileReader
{
    private static readonly Dictionary<string, UnitSystem> Systems = new()
    {
        ["both"] = UnitSystem.Both,
        ["metric"] = UnitSystem.Metric,
        ["us"] = UnitSystem.UnitedStates,
    };

    private static readonly Dictionary<string, Paper> Papers = new() { ["a4"] = Paper.A4, ["letter"] = Paper.Letter };

    private static readonly Dictionary<string, bool> AltitudeFormulas = new() { ["as written"] = false, ["adjusted"] = true };

    private const double Freezing = 0;

    /// <summary>In °C. From memory: bakeries in summer come near it; what is above is a slip of the scale.</summary>
    private const double HottestKitchen = 45;

    /// <summary>From below the lowest shore to above the highest town, in metres or feet.</summary>
    private static readonly Bounds Altitudes = new(-1500, true, 20_000);

    /// <summary>The profile, or everything that is wrong with its file.</summary>
    public static Reading<ClassProfile> Read(Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return source.Once(() => ReadFile(source));
    }

    private static Reading<ClassProfile> ReadFile(Source source)
    {
        var problems = OwnIngredients.ProblemsOf(source);
        if (SourceFile.Read(source, problems) is not { } text)
            return problems.Fail<ClassProfile>();

        if (FrontMatterBlock.Split(text, problems) is not { } block)
            return problems.Fail<ClassProfile>();
        var fields = FrontMatterReader.Read(block.Yaml, problems);
        var kitchen = fields.Text("kitchen");
        var files = new LinkedFiles(source, problems);
        var size = ClassSize.Read(fields, files.Table(fields.Optional("roster"), file => RosterReader.Read(file)), problems);
        var pieces = fields.Whole("pieces per team", Bounds.Countable);
        var period = fields.Quantity("period", Dimensions.Minutes, Dimensions.Period, 1);
        var temperature = fields.Quantity("kitchen temperature", Dimensions.Temperature, Dimensions.KitchenDegrees, default);
        var altitude = fields.Quantity("altitude", Dimensions.Metres, Altitudes, 0);
        var scale = fields.Quantity("scale", Dimensions.Mass, Bounds.AboveZero, default);
        var smallScale = fields.Quantity("small scale", Dimensions.Mass, Bounds.AboveZero, default);
        var ovens = fields.Whole("ovens", new Bounds(0, true, Bounds.Countable.High));
        var ovenPlaces = fields.Has("oven places") ? fields.Whole("oven places", Bounds.Countable) : ClassProfile.UsualOvenPlaces;
        var heatUp = fields.Has("oven heat-up")
            ? fields.Quantity("oven heat-up", Dimensions.Minutes, Dimensions.PartOfPeriod, 0)
            : ClassProfile.UsualHeatUpMinutes;
        var refrigerator = fields.Has("refrigerator") ? Refrigerator(fields, problems) : ClassProfile.UsualRefrigerator;
        var (equipment, appliances) = fields.Has("equipment")
            ? EquipmentList.Read(fields.List("equipment"), fields.LineOf("equipment"), problems)
            : ([], new Dictionary<EquipmentKind, Appliance>());
        var allergies = AllergyList.Read(fields.Items("allergies"), problems);
        var units = fields.Choice("units", Systems);
        var adjusts = fields.Has("altitude formulas") && fields.Choice("altitude formulas", AltitudeFormulas);
        var flours = fields.Has("flours") ? FlourList(fields, problems) : null;
        var start = fields.Optional("starts") is { } clock ? StartOfClass.Read(clock, problems) : null;
        var zone = fields.Optional("time zone") is { } place ? TimeZoneName.Read(place, problems) : null;
        Paper? paper = fields.Has("paper") ? fields.Choice("paper", Papers) : null;
        var prices = files.One(fields.Optional("prices"), ContentKind.PriceList, PriceListReader.Read);
        if (temperature.Celsius > HottestKitchen)
            problems.Add(
                fields.LineOf("kitchen temperature"),
                $"The kitchen is at {temperature.Celsius:0.#} °C, hotter than anybody can work in",
                $"If you read it from a thermometer in °F, write `{temperature.Celsius:0.#} °F`."
            );
        if (temperature.Celsius < Freezing && fields.Has("kitchen temperature"))
            problems.Add(
                fields.LineOf("kitchen temperature"),
                $"The kitchen is at {temperature.Celsius:0.#} °C, colder than anybody bakes in",
                $"If you read it from a thermometer in °C, write `{(temperature.Celsius * 9 / 5) + 32:0.#} °C`."
            );
        fields.Finish();

        if (Document.Read(block.Markdown, problems) is not { } document)
            return problems.Fail<ClassProfile>();
        var reading = problems.Finish(() =>
            files.Problems.Count > 0
                ? null!
                : new ClassProfile(
                    document.Title.Text,
                    kitchen!.Value.Text,
                    size.Students,
                    size.Teams,
                    pieces,
                    (int)Math.Round(period, MidpointRounding.AwayFromZero),
                    temperature,
                    altitude,
                    scale,
                    smallScale,
                    ovens,
                    allergies,
                    units
                )
                {
                    OvenPlaces = ovenPlaces,
                    OvenHeatUpMinutes = (int)Math.Round(heatUp, MidpointRounding.AwayFromZero),
                    Refrigerator = refrigerator,
                    Equipment = equipment,
                    Appliances = appliances,
                    AdjustsForAltitude = adjusts,
                    Pantry = problems.Pantry,
                    Flours = flours,
                    Start = start,
                    TimeZone = zone,
                    Paper = paper,
                    Prices = prices,
                    NamedTeams = size.Named,
                }
        );
        return files.With(reading);
    }

    /// <summary>One that is too warm for food is no setting to plan with.</summary>
    private static Temperature Refrigerator(Fields fields, ProblemList problems)
    {
        var read = fields.Quantity("refrigerator", Dimensions.Temperature, Dimensions.KitchenDegrees, ClassProfile.UsualRefrigerator);
        if (read.Celsius is < Freezing || read.Celsius > HoldingRule.FoodCode.Cold.Celsius)
            problems.Add(
                fields.LineOf("refrigerator"),
                $"The refrigerator is at {read.Celsius:0.#} °C",
                $"Food is kept from 0 °C (32 °F) to 5 °C (41 °F): {HoldingRule.FoodCode.Source}. Measure it, and see to it before the class if it is warmer."
            );
        return read;
    }

    private static List<string> FlourList(Fields fields, ProblemList problems)
    {
        var flours = new List<string>();
        foreach (var name in fields.List("flours"))
        {
            var line = fields.LineOf("flours")!.Value;
            if (KnownIngredient.Find(new(name, line), problems) is not { } flour)
                continue;
            if (flour.Role != IngredientRole.Flour)
                problems.Add(line, $"`{name}` is not a flour", "List the flours that the kitchen has: `flours: [All-purpose flour]`.");
            flours.Add(flour.Id);
        }
        return flours;
    }
}

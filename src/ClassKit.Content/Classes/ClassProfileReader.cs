using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.FrontMatter;
using ClassKit.Content.Lessons;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Lessons;

namespace ClassKit.Content;

/// <summary>Reads a class profile: quantities in the front matter, the class's name as title, and any text below for people.</summary>
public static class ClassProfileReader
{
    private static readonly Dictionary<string, UnitSystem> Systems = new()
    {
        ["both"] = UnitSystem.Both,
        ["metric"] = UnitSystem.Metric,
        ["us"] = UnitSystem.UnitedStates,
    };

    /// <summary>From below the lowest shore to above the highest town, in metres or feet.</summary>
    private static readonly Bounds Altitudes = new(-1500, true, 20_000);

    /// <summary>The profile, or everything that is wrong with its file.</summary>
    public static Reading<ClassProfile> Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var problems = new ProblemList(ContentPath.Shown(path));
        if (SourceFile.Read(path, problems) is not { } text)
            return problems.Fail<ClassProfile>();

        if (FrontMatterBlock.Split(text, problems) is not { } block)
            return problems.Fail<ClassProfile>();
        var fields = FrontMatterReader.Read(block.Yaml, problems);
        var kitchen = fields.Text("kitchen");
        var students = fields.Whole("students", Bounds.Countable);
        var teams = fields.Whole("teams", Bounds.Countable);
        var pieces = fields.Whole("pieces per team", Bounds.Countable);
        var period = fields.Quantity("period", Dimensions.Minutes, Dimensions.Period, 1);
        var temperature = fields.Quantity("kitchen temperature", Dimensions.Temperature, Dimensions.KitchenDegrees, default);
        var altitude = fields.Quantity("altitude", Dimensions.Metres, Altitudes, 0);
        var scale = fields.Quantity("scale", Dimensions.Mass, Bounds.AboveZero, default);
        var smallScale = fields.Quantity("small scale", Dimensions.Mass, Bounds.AboveZero, default);
        var ovens = fields.Whole("ovens", Bounds.Countable);
        var ovenPlaces = fields.Has("oven places") ? fields.Whole("oven places", Bounds.Countable) : ClassProfile.UsualOvenPlaces;
        var heatUp = fields.Has("oven heat-up") ? fields.Quantity("oven heat-up", Dimensions.Minutes, Dimensions.PartOfPeriod, 0) : ClassProfile.UsualHeatUpMinutes;
        var equipment = fields.Has("equipment") ? EquipmentList.Read(fields.List("equipment"), fields.LineOf("equipment"), problems) : [];
        var allergies = fields.List("allergies");
        var units = fields.Choice("units", Systems);
        var files = new LinkedFiles(problems);
        var prices = files.One(fields.Optional("prices"), PriceListReader.Read);
        if (teams > students)
            problems.Add(fields.LineOf("teams"), $"There are {teams} teams for {students} students", "Every team needs a student: at most as many teams as students.");
        fields.Finish();

        if (Document.Read(block.Markdown, problems) is not { } document)
            return problems.Fail<ClassProfile>();
        var reading = problems.Finish(() => files.Problems.Count > 0 ? null! : new ClassProfile(
            document.Title.Text, kitchen!.Value.Text, students, teams, pieces, (int)Math.Round(period, MidpointRounding.AwayFromZero),
            temperature, altitude, scale, smallScale, ovens, allergies, units)
        {
            OvenPlaces = ovenPlaces,
            OvenHeatUpMinutes = (int)Math.Round(heatUp, MidpointRounding.AwayFromZero),
            Equipment = equipment,
            Prices = prices,
        });
        return files.Problems.Count == 0 ? reading : new(null, [.. reading.Problems, .. files.Problems]);
    }
}

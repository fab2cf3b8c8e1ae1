using System.Runtime.CompilerServices;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Deadlines;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.Findings.Quoting;
using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Wording.Tests.Samples;

/// <summary>One of every case of a closed set of facts, so that a new one is found that has no words, or that keeps a name.</summary>
internal static class Every
{
    /// <summary>Who every fact is about, and whose name is typed wherever something can be.</summary>
    public static readonly Student Ada = new("zq-01", "Ada Berg");

    public static IReadOnlyList<T> Of<T>()
        where T : class =>
        [.. typeof(T).GetNestedTypes().Where(type => type.IsSealed && type.IsAssignableTo(typeof(T))).Select(type => (T)Make(type))];

    private static object Make(Type type)
    {
        var parameters = type.GetConstructors()
            .Single(constructor => constructor.GetParameters() is not [{ } only] || only.ParameterType != type)
            .GetParameters();
        return Activator.CreateInstance(type, [.. parameters.Select(parameter => ValueOf(parameter.ParameterType))])!;
    }

    private static object? ValueOf(Type type)
    {
        if (type == typeof(string))
            return "ours";
        if (type == typeof(Student))
            return Ada;
        if (type == typeof(Quotation))
            return new Quotation($"by {Ada.Name}");
        if (type == typeof(ReturnedName))
            return new ReturnedName($"{Ada.Name}.xlsx");
        if (type == typeof(CellPlace))
            return new CellPlace(new(Ada.Name, 5, 2), IsOwnSheet: true);
        if (type == typeof(Obstacle))
            return new Obstacle.NoSheet(Ada.Name);
        if (type == typeof(CellAddress))
            return new CellAddress("ours", 5, 2);
        if (type == typeof(Damage))
            return new Damage.NowhereSheet(new(Ada.Name));
        if (type == typeof(SyntaxError))
            return CellFormula.Parse("=ours(").Error!;
        if (type == typeof(SyntaxFound))
            return new SyntaxFound(SyntaxFoundKind.Name, Ada.Name);
        if (type == typeof(Refusal))
            return new Refusal.Damaged(new Damage.NowhereSheet(new(Ada.Name)));
        if (type == typeof(OtherDeal))
            return new OtherDeal(OtherDealKind.Class, null, null, Ada.Name);
        if (type == typeof(Part))
            return Parts.Of();
        if (type == typeof(Given))
            return Parts.Flour;
        if (type == typeof(Misconception))
            return Parts.Divided;
        if (type == typeof(DueMoment))
            return DueWish.Parse("2026-11-20T17:00")!.In(ClassTimeZone.Utc);
        if (type == typeof(DateTime))
            return new DateTime(2026, 11, 22, 0, 0, 0, DateTimeKind.Utc);
        if (type == typeof(WhyThatVersion))
            return new WhyThatVersion.EarnsMost();
        if (type == typeof((Part, double)))
            return (Parts.Of(), 100.0);
        if (type == typeof(CellFormula))
            return CellFormula.Of("=flour*2");
        if (type == typeof(KeyEdit))
            return new KeyEdit.OtherCell("flour", "water", IsWhole: false);
        if (type == typeof(IReadOnlyDictionary<string, string>))
            return new Dictionary<string, string> { ["flour"] = "C5" };
        if (type == typeof((string, string)))
            return ("dough", "water");
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>))
            return List(type.GetGenericArguments()[0]);
        if (type.IsEnum)
            return type.GetEnumValues().GetValue(0);
        return type.IsValueType ? RuntimeHelpers.GetUninitializedObject(type) : Make(type);
    }

    private static Array List(Type of)
    {
        var list = Array.CreateInstance(of, 1);
        list.SetValue(ValueOf(of), 0);
        return list;
    }
}

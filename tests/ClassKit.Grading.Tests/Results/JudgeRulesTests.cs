using System.Reflection;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Tests.Results;

/// <summary>A class is judged again by the rules of its version, each of which began with one.</summary>
public sealed class JudgeRulesTests
{
    private static IEnumerable<PropertyInfo> Rules =>
        typeof(JudgeRules).GetProperties().Where(property => property.PropertyType == typeof(bool));

    private static IEnumerable<int> Versions =>
        Enumerable.Range(JudgeRecord.EarliestKept, JudgeRecord.CurrentVersion - JudgeRecord.EarliestKept + 1);

    /// <summary>What each version brought, as the lists in Judged show it.</summary>
    [Theory]
    [InlineData(nameof(JudgeRules.NearMisses), 3)]
    [InlineData(nameof(JudgeRules.InProportion), 3)]
    [InlineData(nameof(JudgeRules.OnAllInputs), 4)]
    [InlineData(nameof(JudgeRules.Powers), 4)]
    [InlineData(nameof(JudgeRules.Apart), 5)]
    [InlineData(nameof(JudgeRules.ReadsRounding), 6)]
    [InlineData(nameof(JudgeRules.ExactFirst), 6)]
    [InlineData(nameof(JudgeRules.OtherWays), 7)]
    [InlineData(nameof(JudgeRules.CarriesExactly), 7)]
    [InlineData(nameof(JudgeRules.AsksRounded), 7)]
    [InlineData(nameof(JudgeRules.OfTheMethod), 7)]
    public void A_rule_holds_from_its_version_on(string rule, int first) =>
        Assert.All(Versions, version => Assert.Equal(version >= first, Holds(rule, version)));

    [Fact]
    public void Every_version_but_the_first_that_is_kept_brought_a_rule() =>
        Assert.All(Versions.Skip(1), version => Assert.NotEqual(JudgeRules.Of(version - 1), JudgeRules.Of(version)));

    [Fact]
    public void The_program_that_judges_has_every_rule() =>
        Assert.All(Rules, rule => Assert.True(Holds(rule.Name, JudgeRecord.CurrentVersion)));

    [Theory]
    [InlineData(JudgeRecord.EarliestKept - 1)]
    [InlineData(JudgeRecord.CurrentVersion + 1)]
    public void Nobody_is_judged_by_rules_that_we_do_not_have(int version) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => JudgeRules.Of(version));

    private static bool Holds(string rule, int version) => (bool)typeof(JudgeRules).GetProperty(rule)!.GetValue(JudgeRules.Of(version))!;
}

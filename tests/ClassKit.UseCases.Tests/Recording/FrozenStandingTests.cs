using ClassKit.Terms.Grades;
using ClassKit.UseCases.Recording;

namespace ClassKit.UseCases.Tests.Recording;

/// <summary>The words stand in records on disks: a new standing adds one, and none changes.</summary>
public sealed class FrozenStandingTests
{
    [Fact]
    public void Standings_keep_their_words() =>
        Assert.Equal(
            "Counts Dropped Excused LeftOut NotDue Missing",
            string.Join(' ', Enum.GetValues<Standing>().Select(FrozenStanding.Of))
        );
}

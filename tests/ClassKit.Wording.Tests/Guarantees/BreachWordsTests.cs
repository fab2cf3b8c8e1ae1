using ClassKit.Exercises.Guarantees;
using ClassKit.Wording.Guarantees;
using ClassKit.Wording.Tests.Samples;

namespace ClassKit.Wording.Tests.Guarantees;

public sealed class BreachWordsTests
{
    public static TheoryData<Breach> Breaches => [.. Every.Of<Breach>()];

    [Theory]
    [MemberData(nameof(Breaches))]
    public void Every_fault_of_a_draw_has_a_clause_numbers_and_something_to_do(Breach breach)
    {
        Assert.Matches(@"^[`\p{Ll}].*[^.]$", BreachWords.Because(breach));
        Assert.NotEmpty(BreachWords.Seen(breach));
        Assert.Matches(@"^\p{Lu}.*[.]$", BreachWords.WhatToDo(breach));
    }

    [Fact]
    public void No_two_faults_are_told_alike() => Assert.Distinct(Every.Of<Breach>().Select(BreachWords.Because));
}

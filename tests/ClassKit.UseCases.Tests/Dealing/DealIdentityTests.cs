using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Identity;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Dealing;

/// <summary>What makes a deal another one, and what does not.</summary>
public sealed class DealIdentityTests
{
    private static readonly DealtClass Dealt = SmallClass.Dealt;

    public static TheoryData<string, DealtClass> Others =>
        new()
        {
            { "seed", SmallClass.Deal(seed: 12) },
            { "class", SmallClass.Deal(cohort: "Friday class") },
            { "title", SmallClass.Deal(title: "Another") },
            { "purpose", SmallClass.Deal(settings: new(DealPurpose.FollowUp, NumbersToAvoid.None)) },
            { "choice", SmallClass.Deal(settings: DealSettings.Usual with { Choice = "spread" }) },
            { "hint", SmallClass.Deal(change: exercise => exercise with { Hints = [.. exercise.Hints, "More."] }) },
            { "source", SmallClass.Deal(change: exercise => exercise with { Source = "Elsewhere" }) },
            {
                "points",
                SmallClass.Deal(change: exercise =>
                    exercise with
                    {
                        Parts = [.. exercise.Parts.Select(part => part with { Points = part.Points + 1 })],
                    }
                )
            },
            {
                "words",
                SmallClass.Deal(change: exercise =>
                    exercise with
                    {
                        Parts =
                        [
                            .. exercise.Parts.Select(part =>
                                part with
                                {
                                    Misconceptions = [.. part.Misconceptions.Select(one => one with { Words = "So." })],
                                }
                            ),
                        ],
                    }
                )
            },
        };

    [Fact]
    public void The_list_of_students_is_no_part_of_it()
    {
        var more = Dealer
            .Deal(
                Dealt.Lesson,
                Dealt.LessonTitle,
                Dealt.Exercises,
                Dealt.Marking,
                new(Dealt.Cohort, [.. Dealt.Students.Select(student => student.Who), new("dora", "Dora")]),
                Dealt.Seed
            )
            .Class!;

        Assert.Equal(Dealt.Identity, more.Identity);
        Assert.Equal(Dealt.Identity, SmallClass.Deal().Identity);
    }

    [Theory]
    [MemberData(nameof(Others))]
    public void Everything_that_was_dealt_is(string what, DealtClass other)
    {
        Assert.NotEqual(Dealt.Identity!.Digest, other.Identity!.Digest);
        Assert.True(Dealt.Identity.Code != other.Identity.Code, what);
    }

    [Fact]
    public void It_is_written_down_and_a_code_that_does_not_fit_is_refused()
    {
        var text = DealtJson.Write(Dealt);

        Assert.Equal(Dealt.Identity, DealtJson.Read("dealt.json", text).Model!.Identity);
        var problem = Assert.Single(
            DealtJson
                .Read("dealt.json", text.Replace(Dealt.Identity!.Code, SmallClass.Deal(seed: 12).Identity!.Code, StringComparison.Ordinal))
                .Problems
        );
        Assert.Contains("do not belong together", problem.Found, StringComparison.Ordinal);
    }

    // Every substitution of one sign and every exchange of two is found where the number of signs is a prime and weights differ: the
    // argument behind the check digit of ISBN-10 (ISO 2108:1992, annex A). Tried on 200 codes in full.
    [Fact]
    public void A_code_with_one_wrong_sign_or_two_exchanged_is_none()
    {
        const string signs = "23456789ACDEFHJKMPRTWXY";
        foreach (
            var code in Enumerable
                .Range(0, 200)
                .Select(seed => DealIdentity.Of("l", "L", "C", (ulong)seed, DealPurpose.Graded, "", []).Code)
        )
        {
            Assert.True(DealCode.TryFind(code, out _));
            Assert.True(DealCode.TryFind($"Ada · about 5 minutes · deal {code}", out var found) && found == code);
            foreach (var written in (string[])[$"(deal {code})", $"{code}.", $"Hers was deal {code}, of Monday"])
                Assert.True(DealCode.TryFind(written, out var mailed) && mailed == code, written);
            Assert.False(DealCode.TryFind($"{code}.xlsx", out _));
            Assert.False(DealCode.TryFind($"{code}-2", out _));
            for (var at = 0; at < code.Length; at++)
            {
                if (code[at] == '-')
                    continue;
                Assert.All(signs.Where(sign => sign != code[at]), sign =>
                    Assert.False(DealCode.TryFind(code[..at] + sign + code[(at + 1)..], out _))
                );
                for (var other = at + 1; other < code.Length; other++)
                {
                    if (code[other] == '-' || code[other] == code[at])
                        continue;
                    var exchanged = code.ToCharArray();
                    (exchanged[at], exchanged[other]) = (exchanged[other], exchanged[at]);
                    Assert.False(DealCode.TryFind(new string(exchanged), out _));
                }
            }
        }
    }
}

using ClassKit.Exercises.Dealing;

namespace ClassKit.UseCases.Tests.Samples;

/// <summary>What a student was dealt with the places where it stands.</summary>
internal static class Seats
{
    public static IReadOnlyList<DealtGiven> GivensOf(this DealtClass dealt, DealtStudent student) => [.. dealt.LayOut().GivensOf(student)];

    public static IReadOnlyList<DealtAnswer> AnswersOf(this DealtClass dealt, DealtStudent student) =>
        [.. dealt.LayOut().AnswersOf(student)];
}

using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Identity;
using ClassKit.Exercises.Layout;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Dealing;

/// <summary>Deals a class its practice.</summary>
public static class DealPractice
{
    /// <summary>The kind of folder that its files go into; see <see cref="DealFiles"/>.</summary>
    public const string Kind = "deal";

    /// <summary>The seed when none is named.</summary>
    public const ulong DefaultSeed = 1;

    /// <summary>Draws everybody's numbers.</summary>
    /// <returns>What was dealt, or why nothing can be.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<DealMade> Run(DealRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        run.Begin(RunStep.DrawingVariants);
        var (set, wish, before) = (request.Set, request.Wish, request.Earlier.Dealt);
        var who = Sitting.Of(request);
        if (!who.Succeeded)
            return new(null, who.Problems);
        var roster = who.Model;
        var canExtend = before is not null && before.Exercises.All(dealt => set.Pool.Any(exercise => exercise.Id == dealt.Id));
        var spread =
            !wish.IsSpread ? null
            : canExtend ? SpreadChooser.Extend(before!, set.Pool, roster.Students)
            : SpreadChooser.Choose(set.Pool, wish.Set, roster.Students, wish.Seed, request.Expected);
        var exercises = spread?.Exercises ?? set.Exercises;
        if (PracticeLayout.FirstNameClash(exercises) is { } clash)
            return new(null, [PracticeSet.Clash(set.Source, clash)]);
        var settings = DealSettings.Usual with
        {
            Purpose = wish.Purpose,
            Choice = Sitting.Choice(request),
            Replaces = request.Replaces?.Identity,
            Avoid = request.Replaces is { } replaced ? NumbersToAvoid.OfEach(replaced) : NumbersToAvoid.None,
            Sets = spread?.Sets,
            Before = before,
            Plan = PracticePlan.Usual with { OneSheet = wish.OneSheet, SheetsAsDealt = before?.Plan.SheetsAsDealt },
        };
        if (before is not null)
            roster = roster with { TimeZone = roster.TimeZone ?? before.TimeZone, Paper = roster.Paper ?? before.Paper };
        var due = wish.Due is null ? before?.Due : wish.Due.In(roster.TimeZone);
        var planned = new DealtClass(set.Id, set.Title, roster.Cohort, wish.Seed, set.Marking, exercises, [])
        {
            Identity = DealIdentity.Of(set.Id, set.Title, roster.Cohort, wish.Seed, settings.Purpose, settings.Choice, exercises),
            Purpose = wish.Purpose,
            Replaces = settings.Replaces,
            Due = due,
            Plan = settings.Plan,
        };
        if (request.Earlier.Refusal(planned, roster) is { } refusal)
            return new(null, [refusal]);
        if (Sitting.WithoutAny(request, roster, exercises, settings) is { Count: > 0 } bare)
            return new(null, bare);
        var result = Dealer.Deal(set.Id, set.Title, exercises, set.Marking, roster, wish.Seed, settings, run.Draws());
        return result.Class is { } dealt
            ? new(new(request, dealt with { Due = due }, spread, result.Shared), [])
            : new(null, PracticeSet.Undealt(set.Source, result));
    }
}

using ClassKit.Grading.Judging.Slips;
using ClassKit.Grading.Judging.Trials;

namespace ClassKit.Grading.Judging;

/// <summary>What an answer shows when it is read in one way.</summary>
/// <param name="Reading">How it is read.</param>
/// <param name="IsRight">True if it is right on the dealt inputs.</param>
/// <param name="FollowsOwn">True if on the dealt inputs it is what the key makes of the student's own earlier answers, one of which is
/// wrong.</param>
/// <param name="Method">The answer doing what the key does under all trials; null for one that does not, or that is typed.</param>
/// <param name="FindRounding">Looks for the answer being, under all trials, what the key gives when rounded more than the part allows; a
/// long search.</param>
internal sealed record Evidence(Reading Reading, bool IsRight, bool FollowsOwn, Behaviour? Method, Func<Slip?> FindRounding)
{
    private readonly Lazy<Slip?> _rounding = new(FindRounding, isThreadSafe: false);

    /// <summary>What rounds more than the part allows; null if nothing does.</summary>
    public Slip? Rounding => _rounding.Value;

    /// <summary>True for a formula that shows the method.</summary>
    public bool ShowsMethod => Method is not null && Rounding is null;
}

namespace ClassKit.Grading;

/// <summary>What an answer shows when it is read in one way.</summary>
/// <param name="Reading">How it is read.</param>
/// <param name="IsRight">True if it is right on the dealt inputs.</param>
/// <param name="FollowsOwn">True if on the dealt inputs it is what the key makes of the student's own earlier answers, one of which is wrong.</param>
/// <param name="Method">The answer doing what the key does under all trials; null for one that does not, or that is typed.</param>
/// <param name="Rounding">The answer being, under all trials, what the key gives when rounded more than the part allows; null if it is not.</param>
internal sealed record Evidence(Reading Reading, bool IsRight, bool FollowsOwn, Behaviour? Method, Slip? Rounding)
{
    /// <summary>True for a formula that shows the method.</summary>
    public bool ShowsMethod => Method is not null && Rounding is null;
}

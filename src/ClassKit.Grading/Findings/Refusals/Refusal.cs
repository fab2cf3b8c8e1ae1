using ClassKit.Grading.Findings.Quoting;

namespace ClassKit.Grading.Findings.Refusals;

/// <summary>Why a returned file was not read as a workbook.</summary>
public abstract record Refusal
{
    private Refusal() { }

    /// <summary>The same refusal under other names.</summary>
    internal virtual Refusal Under(IDisguise disguise) => this;

    /// <summary>It has no bytes.</summary>
    public sealed record Empty : Refusal;

    /// <summary>It has bytes that say nothing.</summary>
    public sealed record OnlyZeros : Refusal;

    /// <summary>Its end is missing.</summary>
    public sealed record CutOff : Refusal;

    /// <summary>It needs a password to open.</summary>
    public sealed record PasswordProtected : Refusal;

    /// <summary>It is a file of another kind, whatever its name says.</summary>
    /// <param name="Kind">Which.</param>
    public sealed record OtherKind(FileKind Kind) : Refusal
    {
        /// <summary>The workbook that lies in it, of an archive with one.</summary>
        public Quotation? Inside { get; init; }

        /// <summary>The ending of a workbook that its name bears all the same, such as <c>.xlsx</c>; null if it bears none.</summary>
        public string? Ending { get; init; }

        internal override Refusal Under(IDisguise disguise) => this with { Inside = Inside?.Under(disguise) };
    }

    /// <summary>It is a workbook with something broken in it.</summary>
    /// <param name="What">What is broken.</param>
    public sealed record Damaged(Damage What) : Refusal
    {
        internal override Refusal Under(IDisguise disguise) => new Damaged(What.Under(disguise));
    }

    /// <summary>It is a workbook that holds more than may be read.</summary>
    /// <param name="What">What there is too much of.</param>
    /// <param name="Most">How much there may be.</param>
    public sealed record TooLarge(Excess What, long Most) : Refusal
    {
        /// <summary>The part of the package that has too much; empty where the whole has.</summary>
        public string Part { get; init; } = "";
    }

    /// <summary>It is larger than any practice workbook, and was not opened.</summary>
    /// <param name="Bytes">How large.</param>
    public sealed record Oversized(long Bytes) : Refusal;

    /// <summary>A program or an operating system left it there, and nobody handed it in.</summary>
    /// <param name="By">What left it.</param>
    public sealed record Leftover(LeftoverKind By) : Refusal;

    /// <summary>It is a link to another place.</summary>
    public sealed record Link : Refusal;

    /// <summary>It is a folder that lies too deep or is a link to another place.</summary>
    public sealed record FarFolder : Refusal;

    /// <summary>The archive that it is, or lies in, cannot be unpacked.</summary>
    /// <param name="What">Why not.</param>
    /// <param name="Most">How many there may be, where there are too many.</param>
    public sealed record Packed(PackingFault What, int Most = 0) : Refusal;

    /// <summary>It could not be opened or judged, which is nothing that the student did.</summary>
    /// <param name="Why">Why not.</param>
    public sealed record Unopened(OpeningFault Why) : Refusal;
}

using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Notes;
using ClassKit.UseCases.Output;
using ClassKit.Wording.Dealing;

namespace ClassKit.UseCases.Dealing;

/// <summary>
/// A deal that the output folder holds, which students may have in their hands: it can be added to and is never replaced.
/// </summary>
/// <param name="Folder">The folder.</param>
/// <param name="Dealt">What was dealt; null if the folder holds no deal.</param>
public sealed record EarlierDeal(string? Folder, DealtClass? Dealt)
{
    /// <summary>Nothing was dealt before.</summary>
    public static EarlierDeal None { get; } = new(null, null);

    /// <summary>What a folder holds, or why that cannot be said.</summary>
    public static Reading<EarlierDeal> In(string? folder)
    {
        if (folder is null || !File.Exists(Path.Combine(folder, DealtJson.FileName)))
            return new(new(folder, null), []);
        var dealt = DealtFolder.Read(folder);
        return dealt.Succeeded
            ? new(new(folder, dealt.Model), [])
            : new(
                null,
                [
                    .. dealt.Problems.Select(problem =>
                        problem with
                        {
                            Expected =
                                "This folder holds a deal that students may have, so that nothing is written over it: name another folder.",
                        }
                    ),
                ]
            );
    }

    /// <summary>Why something cannot be dealt into the folder; null if it can.</summary>
    internal Diagnostic? Refusal(DealtClass wanted, Roster roster)
    {
        if (Dealt is null)
            return null;
        var differences = DealDifferences.Between(Dealt, wanted, roster);
        return differences.Count == 0
            ? null
            : Refused(string.Join("; ", differences.Select(DealDifferenceWords.Of))) with
            {
                Remedy = Dealt.Marking == wanted.Marking ? null : Remedy.RegradeUnderOtherMarking,
            };
    }

    /// <summary>Why practice, whose sets follow from grades, cannot be written over what the folder holds; null if it can.</summary>
    internal Diagnostic? RefusalOf(DealtClass made) =>
        Dealt is not null
        && !(
            Dealt.Identity == made.Identity
            && DealtJson.Write(Dealt with { TimeZone = made.TimeZone, Paper = made.Paper }) == DealtJson.Write(made)
        )
            ? Refused("students, exercises or numbers are others")
            : null;

    /// <summary>
    /// The files, with those of the earlier students as they are in the folder, unless another arrangement was made for one.
    /// </summary>
    internal IReadOnlyList<OutputFile> Keep(IReadOnlyList<OutputFile> files, DealtClass now)
    {
        if (Dealt is null)
            return files;
        var seats = now.Students.ToDictionary(student => student.Who.Id);
        var kept = Dealt
            .Students.Where(student => seats.TryGetValue(student.Who.Id, out var seat) && HasSameArrangement(student, seat))
            .SelectMany(student => new[] { student.Workbook, DealFiles.SheetOf(student) })
            .ToHashSet(StringComparer.Ordinal);
        return
        [
            .. files.Select(file =>
                kept.Contains(file.Path) && Path.Combine(Folder!, file.Path) is var there && File.Exists(there)
                    ? new OutputFile(file.Path, stream => Copy(there, stream))
                    : file
            ),
        ];
    }

    /// <summary>What the instructor should know of what was added.</summary>
    internal IEnumerable<Note> Notes(DealtClass now)
    {
        if (Dealt is null)
            return [];
        var added = now
            .Students.Select(student => student.Who)
            .ExceptBy(Dealt.Students.Select(student => student.Who.Id), student => student.Id)
            .ToList();
        return added.Count == 0 ? [new Note.SameDeal(now.Identity!.Code)] : [new Note.AddedToDeal(now.Identity!.Code, added)];
    }

    private static bool HasSameArrangement(DealtStudent one, DealtStudent other) =>
        (one.LargePrint, one.ExtraTime, one.Due) == (other.LargePrint, other.ExtraTime, other.Due)
        && one.LeavesOut.SequenceEqual(other.LeavesOut);

    private Diagnostic Refused(string differences) =>
        new(
            Folder!,
            null,
            $"This folder holds deal {Dealt!.Identity?.Code ?? "without a code"}, which students may have, and this would be another one: {differences}",
            "Name another folder; a deal can only be made again or get more students."
        );

    private static void Copy(string from, Stream to)
    {
        using var file = File.OpenRead(from);
        file.CopyTo(to);
    }
}

using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;

namespace ClassKit.Exercises.Guarantees;

/// <summary>
/// On follow-through the later parts are judged on a wrong earlier answer: there, too, right and wrong methods must differ.
/// </summary>
/// <remarks>
/// Earlier answers are made wrong one at a time, each by its own misconceptions; slips of other kinds cannot be foreseen. Some pairs come
/// to the same by nature (who takes the total for 100 % may multiply by it or divide): no range of givens helps there, and the grader's
/// order decides.
/// </remarks>
internal sealed class SlipsCarriedOnApart : VariantRule
{
    /// <summary>Pairs that meet in more than this share of draws are taken to meet by nature.</summary>
    private const double ByNature = 0.1;

    private readonly HashSet<(Misconception Slip, Misconception Later)> _byNature;

    /// <param name="sample">Draws that keep all other rules, to learn from which pairs meet by nature.</param>
    public SlipsCarriedOnApart(IReadOnlyCollection<Candidate> sample)
    {
        _byNature = sample
            .SelectMany(Meetings)
            .GroupBy(meeting => (meeting.Slip, meeting.Later), meeting => meeting.Slip)
            .Where(pair => pair.Count() > ByNature * sample.Count)
            .Select(pair => pair.Key)
            .ToHashSet();
    }

    public override string Name => "slips carried on stay apart";

    internal override Breach? Check(Candidate candidate)
    {
        foreach (var met in Meetings(candidate))
        {
            if (_byNature.Contains((met.Slip, met.Later)))
                continue;
            return new Breach.CloseAfterSlip(Name, met.Slip, met.First, met.Part, met.Later, met.Mistaken, met.Carried);
        }
        return null;
    }

    private static IEnumerable<Meeting> Meetings(Candidate candidate)
    {
        var parts = candidate.Exercise.Parts;
        for (var first = 0; first < parts.Count - 1; first++)
        {
            if (!parts.Skip(first + 1).Any(later => later.Misconceptions.Count > 0 && candidate.Structure.Uses(later, parts[first].Id)))
                continue;
            foreach (var slip in parts[first].Misconceptions)
            {
                if (candidate.Mistaken(slip) is not { } wrong)
                    continue;
                foreach (var meeting in Carry(candidate, first, slip, wrong))
                    yield return meeting;
            }
        }
    }

    private static IEnumerable<Meeting> Carry(Candidate candidate, int first, Misconception slip, double wrong)
    {
        var parts = candidate.Exercise.Parts;
        var names = new Dictionary<string, CellValue>(candidate.Names, StringComparer.OrdinalIgnoreCase)
        {
            [parts[first].Id] = CellValue.FromNumber(wrong),
        };
        for (var later = first + 1; later < parts.Count; later++)
        {
            var part = parts[later];
            if (!candidate.Structure.Uses(part, parts[first].Id))
                continue;
            // An earlier slip may lead to a division by zero; the grader then judges without it.
            if (KeyValues.Number(part.Key, names) is not { } carried)
                yield break;
            foreach (var misconception in part.Misconceptions)
            {
                if (KeyValues.Number(misconception.Formula, names) is { } mistaken && !Closeness.Apart(part, carried, mistaken))
                    yield return new(parts[first], slip, part, misconception, carried, mistaken);
            }
            names[part.Id] = CellValue.FromNumber(carried);
        }
    }

    private sealed record Meeting(Part First, Misconception Slip, Part Part, Misconception Later, double Carried, double Mistaken);
}

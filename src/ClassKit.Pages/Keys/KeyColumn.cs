using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Lettering;

namespace ClassKit.Pages.Keys;

/// <summary>A column of the grid of answers: one part of one exercise.</summary>
/// <param name="Number">The exercise's place in the workbook, from 1.</param>
/// <param name="Exercise">The exercise.</param>
/// <param name="Place">The part's place in it, from 0.</param>
public sealed record KeyColumn(int Number, Exercise Exercise, int Place)
{
    /// <summary>As many as one landscape sheet holds beside the names.</summary>
    private const int OnASheet = 30;

    /// <summary>The part.</summary>
    public Part Part => Exercise.Parts[Place];

    /// <summary>As everywhere: 2c.</summary>
    public string Label => KeyRow.Label(Number, Place);

    /// <summary>True for the first part of its exercise.</summary>
    public bool IsFirst => Place == 0;

    /// <summary>A student's right answer; null where they were not asked.</summary>
    public string? AnswerOf(DealtStudent student)
    {
        ArgumentNullException.ThrowIfNull(student);
        return student.AnswersOf(Exercise.Id).TryGetValue(Part.Id, out var answer)
            ? LetteredAnswer.Brief(Exercise, Part, student.GivensOf(Exercise.Id), answer)
            : null;
    }

    /// <summary>
    /// The parts of a deal in columns, as many together as fit a sheet; an exercise is parted only where it alone does not fit. What is
    /// answered in own words has no column: the instructor reads it.
    /// </summary>
    public static IReadOnlyList<IReadOnlyList<KeyColumn>> Sheets(DealtClass dealt)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        var sheets = new List<List<KeyColumn>>();
        foreach (var (index, exercise) in dealt.Exercises.Index())
        {
            foreach (
                var columns in Enumerable
                    .Range(0, exercise.Parts.Count)
                    .Where(place => exercise.Parts[place].InWords is null)
                    .Select(place => new KeyColumn(index + 1, exercise, place))
                    .Chunk(OnASheet)
            )
            {
                if (sheets.Count == 0 || sheets[^1].Count + columns.Length > OnASheet)
                    sheets.Add([]);
                sheets[^1].AddRange(columns);
            }
        }
        return sheets;
    }
}

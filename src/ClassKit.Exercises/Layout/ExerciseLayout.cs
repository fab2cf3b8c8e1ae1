using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Layout;

/// <summary>The sheet of one exercise: title, problem, givens, answers, scratch area, one below the other.</summary>
public sealed class ExerciseLayout
{
    /// <summary>How many rows a student has for working.</summary>
    public const int ScratchRows = 14;

    /// <param name="exercise">The exercise.</param>
    /// <param name="number">Its number in the workbook.</param>
    /// <param name="plan">How sheets are laid out.</param>
    /// <param name="above">The exercise above it on the same sheet; null for the first one of a sheet.</param>
    internal ExerciseLayout(Exercise exercise, int number, PracticePlan plan, ExerciseLayout? above)
    {
        Exercise = exercise;
        Number = number;
        Columns = plan.Columns;
        Sheet = plan.OneSheet
            ? SheetNames.OfAll
            : plan.SheetsAsDealt?.GetValueOrDefault(exercise.Id) ?? SheetNames.For(number, exercise.Skill);
        TitleRow = above is null ? plan.FirstRow : above.ScratchTo.Row + 2;
        // Tags of givens are unique on a sheet.
        var numerals = above?.LastNumeral ?? 0;
        LastNumeral = numerals + exercise.Givens.Count;
        Givens =
        [
            .. exercise.Givens.Select(
                (given, index) =>
                    new GivenPlace(
                        given,
                        Tags.OfGiven(numerals + index),
                        Naming.DefinedName(exercise.Id, given.Id),
                        ValueCell(GivensHeadingRow + 1 + index)
                    )
            ),
        ];
        var rows = new AnswerRows(exercise, AnswersHeadingRow + 1);
        Options = rows.Options;
        Answers =
        [
            .. exercise.Parts.Select(
                (part, index) =>
                    new AnswerPlace(part, Tags.OfAnswer(number, index), Naming.DefinedName(exercise.Id, part.Id), ValueCell(rows.Of(index)))
            ),
        ];
        ScratchHeadingRow = rows.After + 1;
    }

    /// <summary>The exercise laid out.</summary>
    public Exercise Exercise { get; }

    /// <summary>Its number in the workbook, from 1.</summary>
    public int Number { get; }

    /// <summary>The name on the sheet's tab.</summary>
    public string Sheet { get; }

    /// <summary>What stands in which column.</summary>
    public PracticeColumns Columns { get; }

    /// <summary>The row of the exercise's title.</summary>
    public int TitleRow { get; }

    /// <summary>The row under the title: points and minutes.</summary>
    public int SubtitleRow => TitleRow + 1;

    /// <summary>The row with how far one is and the ways to the sheets before and after.</summary>
    public int WayRow => TitleRow + 2;

    /// <summary>The row of the problem's text.</summary>
    public int ProblemRow => TitleRow + 3;

    /// <summary>The row of the heading above the givens.</summary>
    public int GivensHeadingRow => TitleRow + 5;

    /// <summary>The givens, in order.</summary>
    public IReadOnlyList<GivenPlace> Givens { get; }

    /// <summary>The answers, in order.</summary>
    public IReadOnlyList<AnswerPlace> Answers { get; }

    /// <summary>Where the lists stand that answers are chosen from.</summary>
    public IReadOnlyList<OptionPlace> Options { get; }

    /// <summary>The row of the heading above the answers.</summary>
    public int AnswersHeadingRow => GivensHeadingRow + Exercise.Givens.Count + 2;

    /// <summary>The row of the heading above the scratch area.</summary>
    public int ScratchHeadingRow { get; }

    /// <summary>The last row that has to stay in view while one answers: that of the last given.</summary>
    public int LastGivenRow => GivensHeadingRow + Givens.Count;

    /// <summary>The top left cell of the scratch area.</summary>
    public CellAddress ScratchFrom => new(Sheet, ScratchHeadingRow + 1, Columns.Label);

    /// <summary>The bottom right cell of the scratch area.</summary>
    public CellAddress ScratchTo => new(Sheet, ScratchHeadingRow + ScratchRows, Columns.Last);

    private int LastNumeral { get; }

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Number} {Exercise.Id} on '{Sheet}'");

    private CellAddress ValueCell(int row) => new(Sheet, row, Columns.Value);
}

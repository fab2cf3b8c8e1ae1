using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Layout;

/// <summary>The sheet of one exercise: title, problem, givens, answers, scratch area, one below the other.</summary>
public sealed class ExerciseLayout
{
    /// <summary>The row of the exercise's title.</summary>
    public const int TitleRow = 1;

    /// <summary>The row under the title: points and minutes.</summary>
    public const int SubtitleRow = 2;

    /// <summary>The row of the problem's text.</summary>
    public const int ProblemRow = 4;

    /// <summary>The row of the heading above the givens.</summary>
    public const int GivensHeadingRow = 6;

    /// <summary>How many rows a student has for working.</summary>
    public const int ScratchRows = 14;

    internal ExerciseLayout(Exercise exercise, int number)
    {
        Exercise = exercise;
        Number = number;
        Sheet = SheetNames.For(number, exercise.Title);
        Givens = [.. exercise.Givens.Select((given, index) =>
            new GivenPlace(given, Tags.OfGiven(index), Naming.DefinedName(exercise.Id, given.Id), ValueCell(GivensHeadingRow + 1 + index)))];
        Answers = [.. exercise.Parts.Select((part, index) =>
            new AnswerPlace(part, Tags.OfAnswer(number, index), Naming.DefinedName(exercise.Id, part.Id), ValueCell(AnswersHeadingRow + 1 + index)))];
    }

    /// <summary>The exercise laid out.</summary>
    public Exercise Exercise { get; }

    /// <summary>Its number in the workbook, from 1.</summary>
    public int Number { get; }

    /// <summary>The name on the sheet's tab.</summary>
    public string Sheet { get; }

    /// <summary>The givens, in order.</summary>
    public IReadOnlyList<GivenPlace> Givens { get; }

    /// <summary>The answers, in order.</summary>
    public IReadOnlyList<AnswerPlace> Answers { get; }

    /// <summary>The row of the heading above the answers.</summary>
    public int AnswersHeadingRow => GivensHeadingRow + Exercise.Givens.Count + 2;

    /// <summary>The row of the heading above the scratch area.</summary>
    public int ScratchHeadingRow => AnswersHeadingRow + Exercise.Parts.Count + 2;

    /// <summary>The top left cell of the scratch area.</summary>
    public CellAddress ScratchFrom => new(Sheet, ScratchHeadingRow + 1, PracticeColumns.Label);

    /// <summary>The bottom right cell of the scratch area.</summary>
    public CellAddress ScratchTo => new(Sheet, ScratchHeadingRow + ScratchRows, PracticeColumns.Note);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Number} {Exercise.Id} on '{Sheet}'");

    private CellAddress ValueCell(int row) => new(Sheet, row, PracticeColumns.Value);
}

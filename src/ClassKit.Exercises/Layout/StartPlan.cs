using ClassKit.CellFormulas.Sheets;

namespace ClassKit.Exercises.Layout;

/// <summary>
/// Where the first sheet of a practice workbook says whose it is and what deal it is from: part of the deal's plan, read by writer and
/// owner-finder alike.
/// </summary>
/// <param name="Sheet">The sheet's name.</param>
/// <param name="FirstRow">The row of the title, from 1.</param>
/// <param name="LabelColumn">The column of the words beside name, id and code, from 2; the title begins in the one before.</param>
public sealed record StartPlan(string Sheet, int FirstRow, int LabelColumn)
{
    /// <summary>The defined name of the cell with the student's id; it starts with an underscore, so no exercise can have it.</summary>
    public const string StudentIdName = "_student_id";

    /// <summary>The words in the cell to the left of the student's id.</summary>
    public const string StudentIdLabel = "Student id";

    /// <summary>The defined name of the cell with the deal's code.</summary>
    public const string DealCodeName = "_deal_code";

    /// <summary>The words in the cell to the left of the deal's code.</summary>
    public const string DealCodeLabel = "Deal code";

    /// <summary>The words in the cell to the left of the class's name.</summary>
    public const string ClassLabel = "Class";

    /// <summary>The words in the cell to the left of when the work is due.</summary>
    public const string DueLabel = "Due";

    /// <summary>What the title begins with, before the lesson's.</summary>
    public const string TitlePrefix = "Practice: ";

    /// <summary>At the top of a sheet called <c>Start here</c>.</summary>
    public static StartPlan Usual { get; } = new("Start here", 1, 2);

    /// <summary>The student's name.</summary>
    public CellAddress Name => Fact(2);

    /// <summary>The student's id.</summary>
    public CellAddress StudentId => Fact(3);

    /// <summary>The class's name.</summary>
    public CellAddress Class => Fact(4);

    /// <summary>The deal's code; the subtitle of every exercise's sheet says it too.</summary>
    public CellAddress DealCode => Fact(5);

    /// <summary>When the work is due.</summary>
    public CellAddress Due => Fact(6);

    private CellAddress Fact(int below) => new(Sheet, FirstRow + below, LabelColumn + 1);
}

using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Findings.Quoting;

namespace ClassKit.Grading.OnPaper;

/// <summary>
/// Something typed into a workbook of answers on paper that is not taken over. Whoever takes in all of them has taken in every fault there
/// is.
/// </summary>
/// <param name="Cell">Where it stands, with its sheet.</param>
public abstract record PaperFault(string Cell)
{
    /// <summary>Nobody of the class has this id.</summary>
    /// <param name="Cell">Where it stands.</param>
    /// <param name="Id">What stands there.</param>
    public sealed record UnknownStudent(string Cell, Quotation Id) : PaperFault(Cell);

    /// <summary>A student has a second row.</summary>
    /// <param name="Cell">Where it stands.</param>
    /// <param name="Student">Whose.</param>
    public sealed record SecondRow(string Cell, Student Student) : PaperFault(Cell);

    /// <summary>A row has one student's id and another's name: a column was sorted alone, so that nobody knows whose it is.</summary>
    /// <param name="Cell">Where the name stands.</param>
    /// <param name="Student">Whose id it is.</param>
    /// <param name="Name">The name.</param>
    public sealed record OtherName(string Cell, Student Student, Quotation Name) : PaperFault(Cell);

    /// <summary>A student was not dealt the part.</summary>
    /// <param name="Cell">Where it stands.</param>
    /// <param name="Student">Who.</param>
    /// <param name="Tag">The part's tag.</param>
    public sealed record NotDealt(string Cell, Student Student, string Tag) : PaperFault(Cell);

    /// <summary>What stands for the working is neither a tick nor nothing.</summary>
    /// <param name="Cell">Where it stands.</param>
    /// <param name="Student">Whose working.</param>
    /// <param name="Tag">The part's tag.</param>
    /// <param name="Found">What stands there.</param>
    public sealed record NoTick(string Cell, Student Student, string Tag, Quotation Found) : PaperFault(Cell);
}

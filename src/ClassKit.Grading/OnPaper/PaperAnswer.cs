using ClassKit.CellFormulas.Values;

namespace ClassKit.Grading.OnPaper;

/// <summary>What a student answered on paper, as the instructor typed it.</summary>
/// <param name="Exercise">The exercise's id.</param>
/// <param name="Part">The part's id.</param>
/// <param name="Written">The number, the letter or the words; blank where there is only working.</param>
/// <param name="MethodShown">True if the instructor saw working that shows the method.</param>
public sealed record PaperAnswer(string Exercise, string Part, CellValue Written, bool MethodShown);

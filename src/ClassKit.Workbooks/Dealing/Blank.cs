using ClassKit.Exercises.Dealing;

namespace ClassKit.Workbooks.Dealing;

/// <summary>A place in a <see cref="WorkbookTemplate"/> that is filled in for every student.</summary>
/// <param name="Found">What stands there in the template.</param>
/// <param name="Fill">What stands there for a student.</param>
internal sealed record Blank(string Found, Func<DealtStudent, string> Fill);

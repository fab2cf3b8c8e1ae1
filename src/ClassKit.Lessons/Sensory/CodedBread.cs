using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Sensory;

/// <summary>A bread behind a number that tells nothing.</summary>
/// <param name="Bread">The bread.</param>
/// <param name="Code">Three digits.</param>
public sealed record CodedBread(LessonFormula Bread, int Code);

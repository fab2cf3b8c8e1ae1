using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Pages.Rendering;

namespace ClassKit.Pages.Keys;

/// <summary>
/// The answer key in pieces, made one by one: of a large class neither the page nor what it is rendered from is ever whole in memory.
/// </summary>
internal static class KeyPieces
{
    private const int StudentsAtATime = 50;

    public static IEnumerable<string> Of(DealtClass dealt)
    {
        var page = PageRenderer.Render<AnswerKeyPage>((nameof(AnswerKeyPage.Dealt), dealt)).Split(AnswerKeyPage.Seam);
        var grids = KeyColumn.Sheets(dealt).SelectMany(columns => Grid(dealt, columns));
        var exercises = dealt.Exercises.Index().SelectMany(entry => Of(dealt, entry.Item, entry.Index + 1));
        return grids.Prepend(page[0]).Append(page[1]).Concat(exercises).Append(page[2]);
    }

    private static IEnumerable<string> Grid(DealtClass dealt, IReadOnlyList<KeyColumn> columns)
    {
        var around = PageRenderer.Render<AnswerGrid>((nameof(AnswerGrid.Columns), columns)).Split(AnswerGrid.Seam);
        yield return around[0];
        foreach (var some in dealt.Students.Chunk(StudentsAtATime))
            yield return PageRenderer.Render<GridRows>((nameof(GridRows.Columns), columns), (nameof(GridRows.Students), some));
        yield return around[1];
    }

    private static IEnumerable<string> Of(DealtClass dealt, Exercise exercise, int number)
    {
        var students = dealt.Students.Where(student => student.Has(exercise.Id));
        var around = PageRenderer
            .Render<ExerciseKey>(
                (nameof(ExerciseKey.Number), number),
                (nameof(ExerciseKey.Exercise), exercise),
                (nameof(ExerciseKey.Example), students.First())
            )
            .Split(ExerciseKey.Seam);
        yield return around[0];
        foreach (var some in students.Chunk(StudentsAtATime))
            yield return PageRenderer.Render<NumberRows>((nameof(NumberRows.Exercise), exercise), (nameof(NumberRows.Students), some));
        yield return around[1];
        foreach (var some in students.Chunk(StudentsAtATime))
            yield return PageRenderer.Render<WorkingRows>(
                (nameof(WorkingRows.Number), number),
                (nameof(WorkingRows.Exercise), exercise),
                (nameof(WorkingRows.Students), some)
            );
        yield return around[2];
    }
}

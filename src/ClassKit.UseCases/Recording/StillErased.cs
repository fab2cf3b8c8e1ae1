using ClassKit.Content.Terms;
using ClassKit.Notes;
using ClassKit.Records.Erasing;
using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>
/// Work and terms without those who were erased from the record: their lists and folders may still name them, and nobody who was erased
/// comes back that way.
/// </summary>
internal static class StillErased
{
    /// <summary>Those of some ids who were erased.</summary>
    public static IReadOnlySet<string> Among(RecordSession session, IEnumerable<string> ids) =>
        ErasedMark.Among(session, EraseStudent.Kind, ids);

    /// <summary>What the instructor is told of so many of them; nothing of none.</summary>
    public static IEnumerable<Note> Notes(int count) => count > 0 ? [new Note.StillErased(count)] : [];

    /// <summary>A term without them.</summary>
    public static TermPlan Without(TermPlan plan, IReadOnlySet<string> erased) =>
        erased.Count == 0
            ? plan
            : plan with
            {
                Class = plan.Class with { Students = [.. plan.Class.Students.Where(student => !erased.Contains(student.Id))] },
                Works =
                [
                    .. plan.Works.Select(work =>
                        work with
                        {
                            Typed = [.. work.Typed.Where(typed => !erased.Contains(typed.Student))],
                            Bench =
                            [
                                .. work.Bench.Select(marking =>
                                    marking with
                                    {
                                        First = marking.First.Without(erased),
                                        Second = marking.Second?.Without(erased),
                                    }
                                ),
                            ],
                        }
                    ),
                ],
            };
}

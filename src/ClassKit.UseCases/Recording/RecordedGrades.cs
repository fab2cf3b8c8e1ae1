using ClassKit.Grading.Results;
using ClassKit.Records.Deals;
using ClassKit.Records.Gradings;
using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>Grades as they are on record.</summary>
public static class RecordedGrades
{
    /// <summary>
    /// The grades of a deal that stand, with what was dealt; null if none are on record. Students who were erased are not among them.
    /// </summary>
    /// <param name="session">A look into the record.</param>
    /// <param name="digest">The identity of the deal.</param>
    public static ClassGrades? Of(RecordSession session, string digest)
    {
        if (DealRegister.Read(session, digest) is not { } deal || GradingRegister.Latest(session, digest) is not { } grading)
            return null;
        return GradesParts.Model(grading, deal, DealParts.Model(deal));
    }
}

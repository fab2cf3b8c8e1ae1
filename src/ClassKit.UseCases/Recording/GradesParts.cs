using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.Records.Deals;
using ClassKit.Records.Gradings;
using ClassKit.UseCases.Grading;

namespace ClassKit.UseCases.Recording;

/// <summary>Grades taken apart into what the record keeps of everybody, and put together again, equal in every field.</summary>
internal static class GradesParts
{
    private const string Students = "students",
        Files = "files",
        Unmatched = "unmatched",
        Typed = "typed",
        Deal = "deal",
        Owner = "student";

    public static RecordedGrading Of(ClassGrades grades, RecordedDeal deal)
    {
        var text = GradesJson.Write(grades);
        var frame = PlainJson.Read(text);
        var (students, files, typed) = (PlainJson.Take(frame, Students), PlainJson.Take(frame, Files), PlainJson.Take(frame, Typed));
        // It follows from the files.
        frame.Remove(Unmatched);
        if (Frozen(frame[Deal]) == deal.Frozen)
            frame.Remove(Deal);
        var places = deal.Parts.Index().ToDictionary(part => (part.Item.Exercise, part.Item.Part), part => part.Index);
        return new(
            deal.Digest,
            Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text))),
            grades.Judging?.Version,
            grades.Judging?.Program ?? "",
            PlainJson.Write(frame),
            [.. grades.Students.Zip(students, (student, entry) => Of(student, entry, places))],
            [.. files.Select(file => new ReturnedEntry((string?)file[Owner], (string?)file["sha256"], PlainJson.Write(file)))],
            [.. typed.Select(one => new TypedEntry((string)one[Owner]!, PlainJson.Write(one)))]
        );
    }

    /// <summary>The grades of all who are still on record.</summary>
    /// <param name="grading">As it is on record.</param>
    /// <param name="deal">Its deal, as it is on record.</param>
    /// <param name="dealt">The same, put together.</param>
    public static ClassGrades Model(RecordedGrading grading, RecordedDeal deal, DealtClass dealt)
    {
        var document = PlainJson.Read(grading.Frame);
        PlainJson.Put(document, Students, grading.Students.Select(student => student.Entry).OfType<string>());
        PlainJson.Put(document, Files, grading.Files.Select(file => file.Entry));
        PlainJson.Put(document, Unmatched, []);
        if (grading.Typed.Count > 0)
            PlainJson.Put(document, Typed, grading.Typed.Select(typed => typed.Entry));
        if (document[Deal] is null)
        {
            document[Deal] = PlainJson.Read(deal.Frozen);
            document[Deal]![Students] = new JsonArray();
        }
        return GradesJson.Read(deal.Code, PlainJson.Write(document), dealt) is { Succeeded: true, Model: var grades }
            ? grades
            : throw new InvalidDataException($"grades of deal {deal.Code} cannot be read back");
    }

    /// <summary>The deal within the grades in the form in which the record keeps deals.</summary>
    private static string? Frozen(JsonNode? deal)
    {
        if (deal is null)
            return null;
        var bare = deal.DeepClone().AsObject();
        bare.Remove(Students);
        return PlainJson.Write(bare);
    }

    private static GradedStudent Of(StudentGrade student, JsonObject entry, Dictionary<(string, string), int> places) =>
        new(
            student.Who.Id,
            (string)entry["status"]!,
            student.HasPoints ? student.Points : null,
            student.HasPoints ? student.OutOf : null,
            student.Late?.Days,
            student.Late?.Off,
            [
                .. student
                    .Answers.Select(answer => new RecordedAnswer(
                        places[(answer.Exercise.Id, answer.Part.Id)],
                        OutcomeWords.Of(answer.Outcome),
                        answer.Points,
                        answer.OutOf,
                        answer.Misconception?.Id,
                        answer.NearMiss?.Formula,
                        answer.Correction is { } correction ? new(correction.AsGraded, correction.Reason) : null
                    ))
                    .OrderBy(answer => answer.Place),
            ],
            PlainJson.Write(entry)
        );
}

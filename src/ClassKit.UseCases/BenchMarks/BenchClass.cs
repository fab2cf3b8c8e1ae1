using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Rosters;
using ClassKit.Content.Rubrics;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Cohorts;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Rubrics;
using ClassKit.UseCases.Dealing;

namespace ClassKit.UseCases.BenchMarks;

/// <summary>A class at its bench work: what it is marked with, its profile, and who is in it.</summary>
/// <param name="Rubric">What is marked with.</param>
/// <param name="Profile">The class's profile.</param>
/// <param name="Roster">Who is in it; those of one name are told apart.</param>
internal sealed record BenchClass(PracticalRubric Rubric, ClassProfile Profile, Roster Roster)
{
    /// <summary>All three, or everything that is wrong with their files.</summary>
    /// <param name="library">What reads files.</param>
    /// <param name="rubricFile">The practical rubric.</param>
    /// <param name="classFile">The class profile.</param>
    /// <param name="rosterFile">The students; null for the list that the profile names.</param>
    public static Reading<BenchClass> Read(Library library, string rubricFile, string classFile, string? rosterFile)
    {
        var rubric = PracticalRubricReader.Read(library.At(rubricFile));
        var profile = ClassProfileReader.Read(library.At(classFile));
        if (ClassList.Named(library, rosterFile, classFile) is not { } list)
            return new(null, [.. rubric.Problems, .. profile.Problems, ClassList.Missing(classFile)]);
        var roster = RosterReader.Read(list, profile.Model?.Name);
        return rubric.Succeeded && profile.Succeeded && roster.Succeeded
            ? new(
                new(
                    rubric.Model,
                    profile.Model,
                    roster.Model with
                    {
                        Students = Namesakes.ToldApart(roster.Model.Students),
                        Paper = profile.Model.Paper,
                    }
                ),
                []
            )
            : new(null, [.. rubric.Problems, .. profile.Problems, .. roster.Problems]);
    }
}

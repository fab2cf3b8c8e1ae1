using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Rosters;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Cohorts;
using ClassKit.Lessons.Classes;

namespace ClassKit.UseCases.Dealing;

/// <summary>The students of a class, with what its profile says of them all.</summary>
internal static class ClassList
{
    /// <summary>Reads the roster, and the profile where there is one.</summary>
    public static Reading<Roster> Read(Source rosterFile, Source? classFile) =>
        classFile is null ? RosterReader.Read(rosterFile) : Of(rosterFile, ClassProfileReader.Read(classFile));

    /// <summary>The roster with the name, the time zone and the paper of a profile.</summary>
    public static Reading<Roster> Of(Source rosterFile, Reading<ClassProfile> profile)
    {
        var roster = RosterReader.Read(rosterFile, profile.Model?.Name);
        return profile.Succeeded && roster.Succeeded
            ? new(roster.Model with { TimeZone = profile.Model.TimeZone, Paper = profile.Model.Paper }, [])
            : new(null, [.. profile.Problems, .. roster.Problems]);
    }
}

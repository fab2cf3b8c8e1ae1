using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Grading.Tests;

/// <summary>
/// Names of files as sites, programs and phones make them; all patterns are invented, in kinds that are common practice (no source).
/// </summary>
public sealed class NameHintTests
{
    private static readonly string[] Names =
    [
        "Ada Berg",
        "Ben Okoye",
        "Cleo Marín",
        "Jürgen Müller",
        "Søren Åkjær",
        "María José García López",
        "Ann Lee",
        "Ann Lee Park",
        "Yael O’Connor",
        "王小明",
        "Łucja Żak",
    ];

    private static readonly DealtClass Class = DealtForTests.Class with
    {
        Students = [.. Names.Select((name, at) => DealtForTests.Ada with { Who = new($"student-{at:D2}", name) })],
    };

    [Theory]
    [InlineData("Ada Berg_12345_practice.xlsx", "Ada Berg")]
    [InlineData("practice (1).xlsx", null)]
    [InlineData("student-01 (1).xlsx", "Ben Okoye")]
    [InlineData("Copy of student-01 - Kopie (3).xlsx", "Ben Okoye")]
    [InlineData("STUDENT_01.XLSX", "Ben Okoye")]
    [InlineData("bergada_LATE_99120_4410077_student-work-2.xlsx", "Ada Berg")]
    [InlineData("Berg, Ada - Practice 3.xlsx", "Ada Berg")]
    [InlineData("AdaBerg.xlsx", "Ada Berg")]
    [InlineData("ada.berg@example.org_1700000000.xlsx", "Ada Berg")]
    [InlineData("Cleo Marin.xlsx", "Cleo Marín")]
    [InlineData("Cleo Mari\u0301n.xlsx", "Cleo Marín")]
    [InlineData("Cleo%20Mar%C3%ADn.xlsx", "Cleo Marín")]
    [InlineData("=?utf-8?Q?Cleo_Mar=C3=ADn?=.xlsx", "Cleo Marín")]
    [InlineData("=?UTF-8?B?Q2xlbyBNYXLDrW4ueGxzeA==?=", "Cleo Marín")]
    [InlineData("=_iso-8859-1_Q_Cleo=20Mar=EDn_=.xlsx", "Cleo Marín")]
    [InlineData("utf-8''Cleo%20Mar%C3%ADn.xlsx", "Cleo Marín")]
    [InlineData("Cleo MarÃ\u00ADn.xlsx", "Cleo Marín")]
    [InlineData("Mueller_Juergen.xlsx", "Jürgen Müller")]
    [InlineData("Jurgen Muller.xlsx", "Jürgen Müller")]
    [InlineData("Ju\u0308rgen Mu\u0308ller.xlsx", "Jürgen Müller")]
    [InlineData("soeren aakjaer.xlsx", "Søren Åkjær")]
    [InlineData("Soren Akjaer 2.xlsx", "Søren Åkjær")]
    [InlineData("Maria Garcia homework.xlsx", "María José García López")]
    [InlineData("Ann Lee hw.xlsx", "Ann Lee")]
    [InlineData("Ann Lee Park hw.xlsx", "Ann Lee Park")]
    [InlineData("Joann Leeds.xlsx", null)]
    [InlineData("yael oconnor.xlsx", "Yael O’Connor")]
    [InlineData("Yael_O'Connor.xlsx", "Yael O’Connor")]
    [InlineData("王小明.xlsx", "王小明")]
    [InlineData("Lucja Zak.xlsx", "Łucja Żak")]
    [InlineData("Ben Okoye_8812_assignsubmission/workbook.xlsx", "Ben Okoye")]
    [InlineData("submissions.zip/OkoyeBen.zip/final FINAL.xlsx", "Ben Okoye")]
    [InlineData("Ada Berg/Ben Okoye.xlsx", "Ben Okoye")]
    [InlineData("Ada Berg and Jane Berg.xlsx", "Ada Berg")]
    [InlineData("Ann Lee and Ada Lee.xlsx", "Ann Lee")]
    [InlineData("Ada Berg und Ann Lee und Ann Lee Park.xlsx", "Ann Lee Park")]
    [InlineData("IMG_2041.jpg", null)]
    [InlineData("Ada.xlsx", null)]
    [InlineData("", null)]
    [InlineData("=?utf-8?B?????=.xlsx", null)]
    [InlineData("%%%zz%C3.xlsx", null)]
    public void A_files_name_speaks_of_one_student_or_of_nobody(string path, string? name)
    {
        // A file that cannot be read is known by its name alone.
        var file = Assert.Single(ClassGrader.Grade(Class, [new(path, null, new Refusal.CutOff())]).Files);

        Assert.Equal(name, file.Student?.Name);
    }
}

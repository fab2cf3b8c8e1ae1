using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Filling;
using ClassKit.Workbooks.Gradebooks;
using ClassKit.Workbooks.OnPaper;
using ClassKit.Workbooks.Tests.Samples;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;

namespace ClassKit.Workbooks.Tests.Packages;

/// <summary>Every workbook that we write obeys the schemas, as the validator of the Open XML SDK sees them.</summary>
public sealed class PackageValidityTests
{
    public static TheoryData<string, byte[]> Workbooks =>
        new()
        {
            { "dealt", FilledWorkbook.Dealt },
            { "dealt, awkward name", DealtWorkbookWriter.Write(SampleClass.Dealt, SampleClass.Dealt.Students[1]) },
            { "filled", FilledWorkbook.Bytes },
            {
                "with pictures",
                WorkbookFiller.Fill(
                    FilledWorkbook.Bytes,
                    [new PastePicture(FilledWorkbook.Scratch("hydration", 3)), new PastePicture(FilledWorkbook.Scratch("soda", 1))]
                )
            },
            { "gradebook", GradebookWriter.Write(SampleGrades.Grades, SampleGrades.Summary) },
            { "in large print", DealtWorkbookWriter.Write(SampleClass.Dealt, SampleClass.Dealt.Students[0] with { LargePrint = true }) },
            { "answers on paper", PaperWriter.Write(SampleClass.Dealt) },
        };

    [Theory]
    [MemberData(nameof(Workbooks), DisableDiscoveryEnumeration = true)]
    public void A_written_workbook_obeys_the_schemas(string name, byte[] workbook)
    {
        Assert.NotEmpty(name);
        using var document = SpreadsheetDocument.Open(new MemoryStream(workbook), isEditable: false);

        var errors = new OpenXmlValidator(FileFormatVersions.Office2013).Validate(document).ToList();
        Assert.True(
            errors.Count == 0,
            string.Join('\n', errors.Take(20).Select(error => $"{error.Part?.Uri} {error.Path?.XPath}: {error.Description}"))
        );
    }
}

using System.Text.Json;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Values;
using ClassKit.UseCases.Inspecting;

namespace ClassKit.UseCases.Tests.Inspecting;

public sealed class InspectionJsonTests
{
    [Fact]
    public void What_is_unsupported_says_why()
    {
        var inspection = new Inspection(
            "a.xlsx",
            [
                new(
                    "Sheet1",
                    [
                        new("A1", "=1+1", CellValue.FromNumber(2), CellValue.FromNumber(2), InspectionResult.Agree, null),
                        new(
                            "A2",
                            "=WEBSERVICE(\"x\")",
                            CellValue.FromNumber(2),
                            CellValue.Blank,
                            InspectionResult.Unsupported,
                            new Obstacle.UnknownFunction("WEBSERVICE")
                        ),
                    ]
                ),
            ]
        );

        var cells = JsonDocument.Parse(InspectionJson.Write(inspection)).RootElement.GetProperty("sheets")[0].GetProperty("cells");

        Assert.Equal("the function WEBSERVICE is not evaluated", cells[1].GetProperty("reason").GetString());
        Assert.True(!cells[0].TryGetProperty("reason", out var reason) || reason.ValueKind == JsonValueKind.Null);
    }
}

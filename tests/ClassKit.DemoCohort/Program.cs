using ClassKit.UseCases.Touring;
using ReturnedFiles = ClassKit.DemoCohort.ReturnedFiles;

// Remakes demo-cohort/returned: deals the demo lesson with the demo seed and lets every invented student return a workbook.
if (DemoMaterial.Find(Environment.CurrentDirectory, AppContext.BaseDirectory) is not { } demo)
{
    Console.Error.WriteLine("Run this inside a checkout of ClassKit.");
    return 1;
}
ReturnedFiles.Remake(demo);
Console.WriteLine($"Remade {demo.Returned}.");
return 0;

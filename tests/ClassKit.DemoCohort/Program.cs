using ClassKit.DemoCohort;
using ClassKit.UseCases.Touring;
using ReturnedFiles = ClassKit.DemoCohort.ReturnedFiles;

// Remakes demo-cohort/returned: deals the demo lesson with the demo seed and lets every invented student return a workbook. So too what
// came back in the term; with `term` that alone.
if (DemoMaterial.Find(Environment.CurrentDirectory, AppContext.BaseDirectory) is not { } demo)
{
    Console.Error.WriteLine("Run this inside a checkout of ClassKit.");
    return 1;
}
if (args is not ["term"])
    ReturnedFiles.Remake(demo);
TermFiles.Remake(demo);
Console.WriteLine($"Remade {demo.Returned} and what the class brought back in its term.");
return 0;

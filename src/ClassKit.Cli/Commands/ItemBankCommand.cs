using System.CommandLine;
using System.Globalization;
using ClassKit.Cli.Reporting;
using ClassKit.ItemBanks.Packages;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Exporting;
using ClassKit.UseCases.Output;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit item-bank</c></summary>
internal static class ItemBankCommand
{
    public static Command Create(Report report)
    {
        var lesson = CommonOptions.Lesson();
        var to = CommonOptions.Out("the package");
        var variants = new Option<int>("--variants")
        {
            Description = $"How many variants of each exercise, 1 to {ItemBank.MostVariants}; {ExportItems.DefaultVariants} if not named.",
            HelpName = "N",
            DefaultValueFactory = _ => ExportItems.DefaultVariants,
        };
        variants.Validators.Add(result =>
        {
            if (
                result.Tokens is [{ Value: var text }]
                && !(int.TryParse(text, CultureInfo.InvariantCulture, out var count) && count is >= 1 and <= ItemBank.MostVariants)
            )
                result.AddError($"--variants takes a whole number from 1 to {ItemBank.MostVariants}, such as --variants 20.");
        });
        var templates = new Option<bool>("--templates")
        {
            Description = "One item an exercise, whose numbers the delivering program draws, where the standard can express it.",
        };
        var seed = CommonOptions.Seed(DealPractice.DefaultSeed);
        var command = new Command(
            ExportItems.Kind,
            "Write the exercises as items of the open standard QTI 3.0, for programs that deliver tests."
        )
        {
            lesson,
            to,
            variants,
            templates,
            seed,
        };
        command.SetAction(parsed =>
            report.Write(new(parsed.GetRequiredValue(to), ExportItems.Kind, [.. LessonInputs.Of(parsed.GetRequiredValue(lesson))]), run =>
                Produced.Of(
                    ExportItems.Read(
                        parsed.GetRequiredValue(lesson),
                        parsed.GetValue(variants),
                        parsed.GetValue(templates),
                        parsed.GetValue(seed)
                    ),
                    request => ExportItems.Write(request, ExportItems.Run(request, run))
                )
            )
        );
        return command;
    }
}

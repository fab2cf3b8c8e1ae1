namespace ClassKit.LessonPacks.Tests.Broken;

/// <summary>
/// Seventy ways to break the second lesson: one change each, with the line that must be blamed and words that the message must hold.
/// </summary>
internal static class BrokenLessons
{
    private const string Lesson = "lesson.md";
    private const string Soda = "formulas/soda_bread.md";
    private const string Cakes = "formulas/butter_cakes.md";

    public static IReadOnlyList<Breakage> All { get; } =
    [
        // the front matter
        new(Lesson, "period: 120 min", "period 120 min", "period 120 min", "`period 120 min` has no colon"),
        new(Lesson, "period: 120 min", "period: [120 min", "period: [", "the lines at the top"),
        new(Lesson, "period: 120 min", "period: \"120 min", "period: \"", "cannot be read from here on"),
        new(Lesson, "period: 120 min", "\tperiod: 120 min", "\tperiod", "tab"),
        new(Lesson, "period: 120 min", "period: 120 min\nperiod: 130 min", "period: 130", "period"),
        new(Lesson, "period: 120 min", "peroid: 120 min", "peroid", "peroid"),
        new(Lesson, "period: 120 min", "period: two hours", "two hours", "two hours"),
        new(Lesson, "period: 120 min", "period: 120 mins", "120 mins", "mins"),
        new(Lesson, "period: 120 min", "period: -5 min", "-5 min", "-5"),
        new(Lesson, "period: 120 min", "period: 99999999 min", "period: 99999999", "99999999"),
        new(Lesson, "period: 120 min", "period: 1e400 min", "1e400", "e400"),
        new(Lesson, "period: 120 min", "period: NaN min", "NaN", "NaN"),
        new(Lesson, "period: 120 min", "period: *hour", "*hour", "the lines at the top"),
        new(Lesson, "period: 120 min\n", "", "1", "`period` is missing"),
        new(Lesson, "cleanup: 10 min", "cleanup: {minutes: 10}", "cleanup: {", "deeper than one level"),
        new(
            Lesson,
            "marking: ../../rubrics/calculation-marks.md",
            "marking: ../../rubrics/quick-breads.md",
            "marking:",
            "is a practical rubric"
        ),
        new(Lesson, "marking: ../../rubrics/calculation-marks.md", "marking: ../../../../../etc/passwd", "marking:", "no Markdown file"),
        new(
            Lesson,
            "bench rubric: ../../rubrics/quick-breads.md",
            "bench rubric: ../../rubrics/quick-bread.md",
            "bench rubric",
            "quick-bread.md"
        ),
        new(
            Lesson,
            "cleanup: 10 min\nmarking: ../../rubrics/calculation-marks.md\nbench rubric: ../../rubrics/quick-breads.md\n---",
            "cleanup: 10 min\nmarking: ../../rubrics/calculation-marks.md\nbench rubric: ../../rubrics/quick-breads.md",
            "1",
            "never end"
        ),
        // the outline
        new(Lesson, "# Thin Air, Quick Breads\n", "", null, "no title"),
        new(Lesson, "# Thin Air, Quick Breads\n", "# Thin Air, Quick Breads\n\n# Again\n", "# Again", "second title"),
        new(Lesson, "## Objectives", "## Objectivs", "## Objectivs", "Objectivs"),
        new(Lesson, "## Objectives", "### Objectives", "### Objectives", "wrong number of #"),
        new(Lesson, "## Vocabulary", "## Objectives", null, "second time"),
        new(Lesson, "## Questions", "## Answers", "## Answers", "Answers"),
        new(
            Lesson,
            "- Baker's percentages and weighing to the scale's resolution.",
            "Baker's percentages and weighing to the scale's resolution.",
            "Baker's percentages",
            "does not belong to the list"
        ),
        new(Lesson, "- **Rubbing in.** Working", "- Rubbing in: working", "- Rubbing in: working", "Rubbing in: working"),
        new(Lesson, " *Source: common practice, no source.*", "", "- **House rules first**", "names no source"),
        new(Lesson, "| Sign | Cause | Cure |", "| Sign | Cause | Remedy |", "| Sign |", "Remedy"),
        new(
            Lesson,
            "### Why is more lift not simply better?\n\nA crumb must set while it is stretched. Walls that are blown up too far before egg and starch set tear, bubbles run\ntogether, and the middle sinks. That is why published tables take leavening away.\n",
            "### Why is more lift not simply better?\n",
            "### Why is more lift",
            "no model answer"
        ),
        // links, and circles among them
        new(Lesson, "- [Soda bread](formulas/soda_bread.md)", "- [Soda bread](formulas/soda_brad.md)", "soda_brad.md", "soda_brad.md"),
        new(Lesson, "- [Soda bread](formulas/soda_bread.md)", "- [Soda bread](lesson.md)", "(lesson.md)", "is a lesson"),
        new(Lesson, "- [Soda bread](formulas/soda_bread.md)", "- [Soda bread](formulas)", "(formulas)", "formulas"),
        new(Lesson, "- [Soda bread](formulas/soda_bread.md)", "- [Sodabread](formulas/soda_bread.md)", "[Sodabread]", "Sodabread"),
        new(
            Lesson,
            "- [Soda bread](formulas/soda_bread.md)",
            "- [Soda bread](formulas/soda_bread.md)\n- [Soda bread](formulas/soda_bread.md)",
            null,
            "second time"
        ),
        new(Lesson, "- [Soda bread](formulas/soda_bread.md)\n", "", "## Formulas", "soda_bread.md` is not listed"),
        new(
            Lesson,
            "../practice/chemical-leavening/acid_for_the_soda.md",
            "../practice/chemical-leavening/acid_for_soda.md",
            "acid_for_soda.md",
            "acid_for_soda.md"
        ),
        // moments and values
        new(Lesson, "- **Butter cakes: Cream.**", "- **Butter cakes: Creme.**", "Creme", "Creme"),
        new(Lesson, "- **Butter cakes: Cream.**", "- **Butter cake: Cream.**", "**Butter cake:", "Butter cake"),
        new(Lesson, "- **Begin.**", "- **Start.**", "**Start.**", "Start"),
        new(Lesson, "(3 min, before Soda bread: Rub in)", "(3 min, before Soda bread: Rubbing)", "Rubbing)", "Rubbing"),
        new(Lesson, "(3 min, before Soda bread: Rub in)", "(0 min, before Soda bread: Rub in)", "(0 min", "0 min"),
        new(Lesson, "(3 min, before Soda bread: Rub in)", "(a while)", "(a while)", "(a while)"),
        new(Lesson, "{butter_cakes.inside}", "{butter_cakes.insid}", "{butter_cakes.insid}", "butter_cakes.insid"),
        new(Lesson, "here, at {altitude},", "here, at {alt},", "{alt}", "{alt}"),
        new(
            Lesson,
            "here, at {altitude},",
            "here, at {soda_bread.liquid_temperature},",
            "{soda_bread.liquid_temperature}",
            "soda_bread.liquid_temperature"
        ),
        // a formula's own file
        new(Soda, "leavening: chemical", "leavening: soda", "leavening: soda", "soda"),
        new(Soda, "leavening: chemical\n", "", "1", "`leavening` is missing"),
        new(Soda, "piece mass: 90 g", "piece mass: 90", "piece mass: 90", "without a unit"),
        new(Soda, "piece mass: 90 g", "piece mass: 0 g", "piece mass: 0 g", "0 g"),
        new(Soda, "piece mass: 90 g", "piece mass: 1,5 kg", "piece mass: 1,5", "1,5"),
        new(Soda, "loss: 3 %", "loss: 100 %", "loss: 100 %", "100"),
        new(Cakes, "mix temperature: 22 °C", "mix temperature: 22 K", "22 K", "`K`"),
        new(Cakes, "mix temperature: 22 °C", "mix temperature: 2000 °C", "2000 °C", "2000"),
        new(
            Soda,
            "loss: 3 %",
            "loss: 3 %\nmix temperature: 20 °C",
            "mix temperature: 20",
            "20 °C (68 °F) is asked of the mix, and it comes to"
        ),
        new(Soda, "| All-purpose flour | 100 |", "| All-porpoise flour | 100 |", "All-porpoise", "All-porpoise"),
        new(Soda, "| All-purpose flour | 100 |\n", "", "## Formula", "no flour"),
        new(Soda, "| All-purpose flour | 100 |", "| All-purpose flour | 90 |", "## Formula", "90"),
        new(Soda, "| Buttermilk | 78 |", "| Buttermilk | much |", "| much |", "much"),
        new(Soda, "| Buttermilk | 78 |", "| Buttermilk | -78 |", "| -78 |", "-78"),
        new(Soda, "| Buttermilk | 78 |", "| Buttermilk | 1e99 |", "1e99", "1e99"),
        new(Soda, "| Ingredient | % |", "| Ingredient | Percent |", "| Ingredient | Percent |", "Percent"),
        new(Soda, "(20–24 min, oven 210 °C)", "(24–20 min, oven 210 °C)", "24–20", "24–20"),
        new(Soda, "(20–24 min, oven 210 °C)", "(20–24 min, oven 210)", "oven 210)", "210"),
        new(Soda, "(20–24 min, oven 210 °C)", "(20–24 min)", "## Method", "oven"),
        new(Soda, "(1–2 min, no wait)", "(1–2 min, no wiat)", "no wiat", "no wiat"),
        new(Soda, "{buttermilk} of buttermilk", "{butermilk} of buttermilk", "{butermilk}", "butermilk"),
        new(Soda, "- Baking tray", "- Baking tray\n- Baking tray", null, "second time"),
        new(Soda, "- **Onset.** The moment buttermilk meets soda.\n", "", "## Leavening", "Onset"),
        new(Soda, "| Internal temperature |", "| Temperature inside |", "| Temperature inside |", "Temperature inside"),
        new(Cakes, "cup depth: 35 mm\n", "", "cup top", "cup"),
        new(Cakes, "cup depth: 35 mm", "cup depth: 35 hands", "35 hands", "hands"),
    ];
}

using ClassKit.Exercises.Dealing;
using ClassKit.UseCases.Rehearsing;
using static ClassKit.DemoCohort.OtherProgram;
using static ClassKit.UseCases.Rehearsing.AnswerWay;

namespace ClassKit.DemoCohort;

/// <summary>The invented class: who answers how. One line tells a student's story.</summary>
/// <remarks>
/// Made so that a class report has something to say: several students take loss for something to add on, several forget the friction
/// or the warming of melted ice, and the yeast factors confuse a few. Five turn the oven's degrees by a rule of thumb, and a few more go
/// wrong together, in ways that no exercise lists.
/// </remarks>
public static class DemoClass
{
    /// <summary>Every student of demo-cohort/roster.csv, in its order.</summary>
    public static IReadOnlyList<DemoStudent> Students { get; } =
    [
        Student("amara-osei", LibreOffice, Cells),
        Student(
            "anders-lindqvist",
            LibreOffice,
            Cells,
            ("scaling.batter", WrongTurn, 0),
            ("dough_temperature.ice", WrongTurn, 0),
            ("yeast.extra_water", UnlistedTurn, 0),
            ("three_trays.popovers", WrongTurn, 0)
        ),
        Student("aroha-ngata", OpenPyXl, OneGo, ("steam.used_share", Cells, 0)),
        Student(
            "bao-nguyen",
            None,
            Cells,
            ("hydration.all_water", WrongTurn, 0),
            ("dough_temperature.water_temp", WrongTurn, 1),
            ("yeast.active_dry", Slip, 0),
            ("oven_dial.oven_c", UnlistedTurn, 0),
            ("three_trays.buns", WrongTurn, 0)
        ) with
        {
            File = "Bảo Nguyễn practice.xlsx",
        },
        // Every number is right, and every one was worked out elsewhere.
        Student("beatriz-carvalho", LibreOffice, Typed),
        Student(
            "chiara-moretti",
            LibreOffice,
            Cells,
            ("scaling.batter", WrongTurn, 0),
            ("soda_and_acid.powder", WrongTurn, 0),
            ("steam.used_share", WrongTurn, 1),
            ("yeast.extra_water", UnlistedTurn, 0),
            ("three_trays.popovers", WrongTurn, 0),
            ("three_trays.muffins", WrongTurn, 1)
        ),
        // An early slip in every chain, carried on rightly.
        Student(
            "daniyar-abenov",
            None,
            Cells,
            ("hydration.milk", Slip, 0),
            ("scaling.batter", Slip, 0),
            ("dough_temperature.friction", Slip, 0),
            ("soda_and_acid.buttermilk", Slip, 0)
        ),
        Student(
            "eilidh-macrae",
            OpenPyXl,
            Cells,
            ("hydration.all_water", UnlistedTurn, 0),
            ("scaling.batter", WrongTurn, 0),
            ("dough_temperature.ice", WrongTurn, 0),
            ("yeast.instant", WrongTurnTyped, 0),
            ("three_trays.buns", WrongTurn, 0)
        ),
        // Types units and decimal commas into the cells.
        Student(
            "farida-haidari",
            LibreOffice,
            Typed,
            ("hydration.milk", TypedWithUnit, 0),
            ("hydration.all_water", TypedWithComma, 0),
            ("scaling.flour", TypedWithUnit, 0),
            ("dough_temperature.ice", TypedWithUnit, 0),
            ("steam.steam_mass", TypedWithComma, 0),
            ("oven_dial.oven_c", TypedWithUnit, 0)
        ),
        // These two sent in each other's file.
        Student("goran-petrovic", None, Cells, ("yeast.extra_water", Blank, 0)) with
        {
            File = "hana-sato.xlsx",
        },
        Student(
            "hana-sato",
            None,
            Cells,
            ("dough_temperature.water_temp", WrongTurn, 0),
            ("yeast.extra_water", UnlistedTurn, 0),
            ("oven_dial.oven_c", UnlistedTurn, 0)
        ) with
        {
            File = "goran-petrovic.xlsx",
        },
        // Ran out of time.
        Student(
            "ifeoma-eze",
            LibreOffice,
            Cells,
            ("soda_and_acid.soda", Blank, 0),
            ("soda_and_acid.powder", Blank, 0),
            ("steam.steam_volume", Blank, 0),
            ("steam.steam_mass", Blank, 0),
            ("steam.batter_water", Blank, 0),
            ("steam.used_share", Blank, 0),
            ("oven_dial.oven_c", Blank, 0),
            ("oven_dial.flour", Blank, 0),
            ("oven_dial.cups", Blank, 0),
            ("three_trays.popovers", Blank, 0),
            ("three_trays.buns", Blank, 0),
            ("three_trays.muffins", Blank, 0),
            ("three_trays.next_time", Blank, 0)
        ),
        Student(
            "jorge-fuentes-vidal",
            OpenPyXl,
            Cells,
            ("scaling.total_percent", DivisionByZero, 0),
            ("soda_and_acid.soda", DivisionByZero, 0),
            ("steam.batter_water", UnlistedTurn, 0)
        ),
        Student(
            "katarzyna-zielinska",
            LibreOffice,
            Cells,
            ("scaling.batter", WrongTurn, 1),
            ("dough_temperature.ice", WrongTurn, 0),
            ("soda_and_acid.powder", WrongTurn, 1),
            ("hydration.all_water", UnlistedTurn, 0),
            ("three_trays.popovers", WrongTurn, 0),
            ("three_trays.next_time", Blank, 0)
        ) with
        {
            Mishap = Mishap.PicturePasted,
        },
        // Types one given into otherwise sound formulas.
        Student(
            "leila-ben-salah",
            LibreOffice,
            Cells,
            ("hydration.milk", PartlyTyped, 0),
            ("scaling.egg", PartlyTyped, 0),
            ("steam.batter_water", PartlyTyped, 1),
            ("dough_temperature.ice", WrongTurn, 0),
            ("three_trays.muffins", WrongTurn, 0)
        ),
        Student(
            "mateo-quispe",
            LibreOffice,
            Cells,
            ("scaling.batter", WrongTurn, 0),
            ("steam.steam_mass", WrongTurn, 0),
            ("oven_dial.oven_c", UnlistedTurn, 0)
        ) with
        {
            Mishap = Mishap.RowInserted,
        },
        Student("min-jun-park", None, Cells, ("dough_temperature.friction", WrongTurn, 0), ("oven_dial.oven_c", UnlistedTurn, 0)) with
        {
            Mishap = Mishap.GivenOverwritten,
        },
        Student("noor-rahman", None, Cells) with
        {
            Mishap = Mishap.Truncated,
        },
        Student("oisin-brennan", None, Cells) with
        {
            Mishap = Mishap.NoWorkbook,
        },
        Student("priya-raghavan", LibreOffice, Cells, ("steam.used_share", Words, 0), ("oven_dial.oven_c", UnlistedTurn, 0)),
        // Away on the day.
        Student("rosa-whitehorse", None, Cells) with
        {
            File = null,
        },
        Student(
            "selin-aydin",
            OpenPyXl,
            Cells,
            ("scaling.flour", WrongTurn, 0),
            ("yeast.instant", WrongTurn, 1),
            ("oven_dial.flour", WrongTurn, 0),
            ("soda_and_acid.soda", WrongTurn, 1),
            ("three_trays.popovers", WrongTurn, 1)
        ),
        Student(
            "tomas-dvorak",
            LibreOffice,
            Typed,
            ("scaling.batter", WrongTurnTyped, 0),
            ("dough_temperature.ice", WrongTurnTyped, 0),
            ("yeast.active_dry", WrongTurnTyped, 0),
            ("oven_dial.oven_c", WrongTurnTyped, 0)
        ),
        Student(
            "yael-oconnor",
            LibreOffice,
            Cells,
            ("oven_dial.oven_c", UnlistedTurn, 1),
            ("oven_dial.cups", WrongTurn, 0),
            ("hydration.all_water", UnlistedTurn, 0),
            ("dough_temperature.water_temp", WrongTurn, 1),
            ("three_trays.popovers", WrongTurn, 0)
        ),
    ];

    /// <summary>A student's answers with the truth about each.</summary>
    public static IReadOnlyList<RehearsedAnswer> Answers(DealtClass dealt, DemoStudent student)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        ArgumentNullException.ThrowIfNull(student);
        var layout = dealt.LayOut();
        var seat = dealt.Students.Single(dealtStudent => dealtStudent.Who.Id == student.Id);
        return
        [
            .. dealt.Exercises.SelectMany(exercise =>
            {
                var sheet = new AnswerSheet(layout.Of(exercise.Id), seat, OwnMethods.Of(exercise));
                return exercise
                    .Parts.Select(part =>
                    {
                        var (way, pick) = student.Answers.GetValueOrDefault($"{exercise.Id}.{part.Id}", (student.Usually, 0));
                        var answer = sheet.Answer(part, way, pick);
                        return part.InWords is null || answer.Content is null ? answer : answer with { Content = OwnWords.Of(student.Id) };
                    })
                    .ToList();
            }),
        ];
    }

    private static DemoStudent Student(
        string id,
        OtherProgram through,
        AnswerWay usually,
        params IReadOnlyList<(string Part, AnswerWay Way, int Pick)> answers
    ) => new(id, id + ".xlsx", through, usually, answers.ToDictionary(answer => answer.Part, answer => (answer.Way, answer.Pick)));
}

using ClassKit.Content.Diagnostics;
using static ClassKit.UseCases.Tests.Checking.FirstDay.TeachingFolder;

namespace ClassKit.UseCases.Tests.Checking.FirstDay;

/// <summary>An exercise.</summary>
internal static class ExerciseMistakes
{
    public static IReadOnlyList<Mistake> All { get; } =
    [
        new(
            "a count with a unit",
            folder => folder.Change(Flour, "| scones | Scones | | 36 to 96 by 4 |", "| scones | Scones | pieces | 36 to 96 by 4 |"),
            Flour,
            23,
            "`scones` is a count with the unit `pieces`",
            "Leave the unit empty"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "a name that is no given",
            folder => folder.Change(Wet, "- Key: `=milk/flour`", "- Key: `=milk/flower`"),
            Wet,
            29,
            "The key uses `flower`",
            "Did you mean `flour`"
        ),
        new(
            "a key without its sign",
            folder => folder.Change(Wet, "- Key: `=milk/flour`", "- Key: `milk/flour`"),
            Wet,
            29,
            "does not begin with =",
            "Write `=milk/flour`"
        ),
        new(
            "a key with words",
            folder => folder.Change(Wet, "- Key: `=milk/flour`", "- Key: milk divided by flour"),
            Wet,
            29,
            "which is no formula",
            "Write a cell formula"
        ),
        new(
            "a multiplication as on paper",
            folder => folder.Change(Flour, "- Key: `=scones*piece`", "- Key: `=scones x piece`"),
            Flour,
            32,
            "The key uses `x`",
            "write `*`"
        ),
        new(
            "values from large to small",
            folder => folder.Change(Wet, "520 to 780 by 10", "780 to 520 by 10"),
            Wet,
            17,
            "the lowest value is above the highest",
            "Write the lower one first"
        ),
        new("values with a dash", folder => folder.Change(Wet, "520 to 780 by 10", "520-780"), Wet, 17, "`520-780`", "Write a range"),
        new(
            "a given that nothing uses",
            folder =>
                folder.Change(
                    Wet,
                    "| milk | Milk | g | 520 to 780 by 10 |\n",
                    "| milk | Milk | g | 520 to 780 by 10 |\n| salt | Salt | g | 10 to 20 by 1 |\n"
                ),
            Wet,
            18,
            "`salt` is in no text and in no key",
            "take its row out"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "a given that the problem tells of and nothing is computed with",
            folder =>
                folder
                    .Change(
                        Wet,
                        "| milk | Milk | g | 520 to 780 by 10 |\n",
                        "| milk | Milk | g | 520 to 780 by 10 |\n| salt | Salt | g | 10 to 20 by 1 |\n"
                    )
                    .Change(Wet, "{milk} of milk.", "{milk} of milk, with {salt} of salt."),
            Wet,
            18,
            "Nothing is computed with the given `salt`",
            "Nothing need be done"
        )
        {
            As = Weight.Noted,
        },
        new(
            "a unit in words",
            folder => folder.Change(Flour, "- Key: `=dough/sum`\n- Unit: g\n", "- Key: `=dough/sum`\n- Unit: grams\n"),
            Flour,
            49,
            "The unit is `grams`",
            "Write `g`"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "a skill with another word",
            folder => folder.Change(Wet, "skill: baker's percentage", "skill: bakers math"),
            Wet,
            null,
            "`bakers math`",
            "baker's percentage"
        )
        {
            As = Weight.Noted,
        },
        new(
            "no tolerance",
            folder => folder.Change(Wet, "- Tolerance: 0.3 %\n", ""),
            Wet,
            25,
            "no line `- Tolerance: ...`",
            "below the question"
        ),
        new(
            "a wrong turn that is the right way",
            folder => folder.Change(Wet, "`=milk/(flour+milk)`", "`=milk/flour`"),
            Wet,
            35,
            "comes too close to the right answer",
            "drop the misconception"
        ),
        new(
            "conditions that no numbers keep",
            folder => folder.Change(Wet, "milk_percent>=0.55,milk_percent<=0.7", "milk_percent>=55,milk_percent<=70"),
            Wet,
            23,
            "No variant can be dealt",
            "loosen the constraint"
        ),
        new(
            "only a handful of variants",
            folder => folder.Change(Wet, "850 to 1300 by 50", "1000").Change(Wet, "520 to 780 by 10", "560 to 640 by 20"),
            Wet,
            null,
            "only 5 variants",
            "Widen a given's range"
        )
        {
            As = Weight.Noted,
        },
        new(
            "a name with a blank",
            folder => folder.Change(Wet, "## Part: milk_percent", "## Part: milk percent"),
            Wet,
            25,
            "cannot be the name of a part",
            "`milk_percent` would do"
        ),
    ];
}

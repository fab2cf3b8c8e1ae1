namespace ClassKit.Content.Tests.Exercises;

/// <summary>A small sound exercise; the tests break one thing at a time in it.</summary>
internal static class SampleExercise
{
    public const string Text = """
        ---
        skill: hydration
        level: guided
        minutes: 5
        source: common practice, no source
        ---

        # Water for the dough

        You have {flour} of flour and want a hydration of {hydration}.

        ## Given

        | Name | What it is | Unit | Values |
        |---|---|---|---|
        | flour | Bread flour | g | 400 to 900 by 50 |
        | hydration | Hydration | % | 60% to 70% by 1% |

        ## Constraints

        - `=water<600`

        ## Part: water

        How much water do you weigh?

        - Key: `=flour*hydration`
        - Unit: g
        - Tolerance: 1 g
        - Points: 2
        - Answer with: formula

        ### Misconception: divided

        `=flour/hydration`

        You divided. Multiply the flour by
        the hydration.

        ## Part: dough

        How much dough is that?

        - Key: `=flour+water`
        - Unit: g
        - Tolerance: 0.5 % of the answer
        - Points: 1.5
        - Answer with: number

        ## Hints

        1. Flour is 100 %.
        2. Then add up.
        """;
}

namespace ClassKit.DemoCohort;

/// <summary>
/// What the invented students wrote where an answer in words was asked: which of three trays they would change, and how they would see that
/// it worked.
/// </summary>
/// <remarks>
/// Nobody judges it but the instructor, so there is no truth beside it; some say both halves, some one, and one tells of something else.
/// </remarks>
public static class OwnWords
{
    private static readonly IReadOnlyList<string> Answers =
    [
        "The popovers. I would turn the oven on first and put our own thermometer in it, and only pour when it shows 220 °C.",
        "The buns: warm the milk to 38 °C and measure it, not guess. Before I shape I want to see bubbles on the batter after 15 minutes.",
        "Muffins, scoop right after mixing. If the batter in the bowl already looks full of bubbles it is too late.",
        "I would bake the popovers longer.",
        "Buns. Let the milk cool until a drop on the wrist feels like nothing, then stir the yeast into a spoonful of it. When it foams it is alive.",
        "For the muffins I would keep the dry and the wet apart until the oven is free, then mix and fill in five minutes. You see it when the batter is still thick and lumpy and does not fizz any more.",
        "Popovers: hotter oven.",
        "The tray of muffins, because it stood. Mix half of it first and the other half when the first tray is in.",
        "Use new yeast and put it in water with sugar, it must foam in ten minutes before it goes in the batter.",
        "I would ask who turned the oven on, and write the time on the board when it was hot. The oven thermometer must read 220 before anybody pours.",
        "Buns, the liquid was too hot. I would use a probe: 35 to 40. Then look whether the batter has doubled in the bowl before the cups are filled.",
        "Popovers. Heat the tin in the oven too, so that a drop of batter sizzles in it. If it does not sizzle, wait.",
        "Muffins: do not let it stand. I would put the tins ready and greased before I pour the wet into the dry.",
        "I'd do the buns again with milk that I can hold a finger in, and put the bowl by the oven and look after half an hour if it moves.",
        "The muffins. A double acting powder keeps some of its gas for the oven, so standing is not so bad. I am not sure how one sees it before.",
        "Popovers, they need the steam at the start. Oven at full heat for twenty minutes first, check the thermometer, and keep the door shut.",
        "The yeast did not work. Next time I test it in warm water first, foam means go.",
        "For the popovers: preheat. You cannot see it in the batter, only on the oven's thermometer.",
        "Muffins were flat because the soda was used up. Mix, scoop, bake, one tray at a time. A spoonful of the batter should still puff when it is dropped on a hot pan.",
        "Buns: I would write the temperature of the milk on the card, 38 °C, and not start without it. After 20 minutes there should be bubbles at the edge of the bowl.",
        "They were all in a hurry. I would make a list with times for each tray and one person for the oven.",
        "The popover tray. Ten minutes more for the oven and a second thermometer at the back of it, both must say the same.",
        "Muffin batter goes in at once. Before the bake it should be thick and keep a peak; if it runs, the gas is out.",
        "Buns. Cool the milk down with the eggs and the rest of the cold milk, measure, then the yeast. It has to smell of beer and show foam.",
    ];

    /// <summary>A student's answer, always the same for the same student.</summary>
    /// <param name="student">On the roster.</param>
    public static string Of(string student)
    {
        var at = DemoClass.Students.Select(one => one.Id).ToList().IndexOf(student);
        return Answers[at % Answers.Count];
    }
}

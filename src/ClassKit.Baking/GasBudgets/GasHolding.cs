using ClassKit.Baking.Cooking;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.GasBudgets;

/// <summary>
/// How well a kind of dough holds the gas that is made in it. Nobody can compute that from a formula, so it is a named setting, each with
/// bands.
/// </summary>
/// <param name="Kind">Which kind it is, whatever of it a bread changes.</param>
/// <param name="Name">What the setting is called.</param>
/// <param name="Share">The share of new gas that stays until the walls are stretched to their limit; the rest leaks through the surface. 0
/// to 1.</param>
/// <param name="BenchLimit">How many times its gas-free volume the dough can become on the bench; beyond it walls tear and gas escapes: it
/// is over-proofed.</param>
/// <param name="OvenLimit">The same by the time the walls set in the oven, where they stretch once more.</param>
/// <param name="BakingLoss">The share of the dough's mass that leaves in the oven, nearly all of it water. 0 to 1.</param>
/// <param name="Holds">What holds the gas.</param>
/// <param name="Stops">What ends the rise.</param>
/// <param name="Source">Where the bands come from.</param>
public sealed record GasHolding(
    HoldingKind Kind,
    string Name,
    Band<double> Share,
    Band<double> BenchLimit,
    Band<double> OvenLimit,
    Band<double> BakingLoss,
    string Holds,
    string Stops,
    string Source
)
{
    /// <summary>
    /// False where nobody can say what such a dough, cooked so, holds: its height, width and gas held are then not predicted.
    /// </summary>
    public bool IsPredicted { get; init; } = true;

    /// <summary>True if the gas is one hollow behind a shell.</summary>
    public bool IsHollow { get; init; }

    /// <summary>False where nobody can say what it loses.</summary>
    public bool IsLossPredicted { get; init; } = true;

    /// <summary>
    /// The share of its mass that a piece weighs less when it is done, below 0 where it weighs more: the same as <see cref="BakingLoss"/>
    /// unless fat or water is taken up.
    /// </summary>
    public Band<double> MassLoss
    {
        get => _massLoss ?? BakingLoss;
        init => _massLoss = value;
    }

    private readonly Band<double>? _massLoss;

    /// <summary>The fat that a piece takes up, as a share of the dough; none unless it is fried.</summary>
    public Band<double> FatTaken { get; init; }

    /// <summary>Where the loss is from.</summary>
    public string LossSource
    {
        get => _lossSource ?? Source;
        init => _lossSource = value;
    }

    private readonly string? _lossSource;

    /// <summary>
    /// True where a skin that dries ends the rise besides, false where steam or water keeps it wet; null where nothing is told of it.
    /// </summary>
    public bool? DriesAtItsSkin { get; init; }

    /// <summary>What ends the rise, the skin's part in it told.</summary>
    public string Ending =>
        DriesAtItsSkin switch
        {
            true => $"{Stops}, and a dry crust stops the rest.",
            false => $"{Stops}; it gets no crust.",
            null => Stops,
        };

    /// <summary>
    /// Above this much added water, in percent of the flour, dough is stirred rather than kneaded. Common practice, no source.
    /// </summary>
    private const double SoftPercent = 75;

    private const string PupLoaf =
        "the loaf of 100 g of flour, 145 mL as mixed, 515 mL proofed, 735 mL to 875 mL baked, quoted from the baking literature at second hand";

    /// <summary>A kneaded yeast dough: a net of gluten around every bubble.</summary>
    /// <remarks>
    /// Of the 145 mL as mixed 128 mL to 139 mL are not air: 515/128 = 4.0 when fully proofed is the high end of the bench. Baked it is
    /// 735/133 = 5.5 typically, 875/128 = 6.8 at the high end, and 605/133 = 4.5 for a weak flour (J. Food Sci. Technol. 57 (2020) 3581,
    /// table 4). Strong spring wheat alone comes to 990 mL to 1,070 mL (the same table), more than this band has: it is that of blends. Lower ends of
    /// the bench and the share that leaks: from memory.
    /// </remarks>
    public static GasHolding KneadedDough { get; } =
        new(
            HoldingKind.KneadedDough,
            "kneaded dough",
            new(0.70, 0.85, 0.95),
            new(2.5, 3.2, 4.0),
            new(4.5, 5.5, 6.8),
            new(0.098, 0.11, 0.13),
            "A net of gluten around every bubble.",
            "On the bench stretched walls tear and bubbles run together; in the heat gluten and starch set, cells open into pores",
            PupLoaf
                + "; weak flour 605 mL: J. Food Sci. Technol. 57 (2020) 3581, table 4; loss of 9.8 % to 11.5 %: Baking Business, Bakers Dictionary, and up to 13 %: common practice; leak from memory"
        )
        {
            DriesAtItsSkin = true,
        };

    /// <summary>
    /// A yeast dough that steam cooks: it is proofed less full, sets at the boiling point without a crust, and stays denser than a baked
    /// one.
    /// </summary>
    /// <remarks>
    /// A northern steamed bread has less than 2.5 mL/g, a southern about 3.0, a Guangdong one 2.6 to 3.4 (S. Huang and D. Miskelly, Steamed
    /// Breads, table 2.1): of a gas-free 0.8 mL/g that is 2.5 to 4.3 times. The bench and the leak: from memory, as of a kneaded dough that
    /// is cooked earlier.
    /// </remarks>
    public static GasHolding SteamedDough { get; } =
        new(
            HoldingKind.SteamedDough,
            "steamed dough",
            new(0.70, 0.85, 0.95),
            new(1.8, 2.4, 3.2),
            new(2.5, 3.4, 4.3),
            CookingLoss.Steamed.Water,
            "A net of gluten around every bubble, and a skin that steam keeps soft.",
            "Gluten and starch set from the outside in, and there is no crust; too much proof or too fierce a steam, and the skin blisters and wrinkles as it cools.",
            "steamed breads of 2.0 mL/g to 3.4 mL/g: S. Huang and D. Miskelly, Steamed Breads, table 2.1, at second hand; leak and bench from memory"
        )
        {
            LossSource = CookingLoss.Steamed.Source,
        };

    /// <summary>A yeast dough too soft to knead, or a yeast batter: gluten, but less of a net.</summary>
    /// <remarks>From memory: between a kneaded dough and a batter.</remarks>
    public static GasHolding SoftDough { get; } =
        new(
            HoldingKind.SoftDough,
            "soft dough or yeast batter",
            new(0.60, 0.75, 0.90),
            new(2.0, 2.5, 3.2),
            new(2.8, 3.5, 4.4),
            new(0.098, 0.11, 0.13),
            "Gluten that time has linked, and a thick batter that bubbles rise through slowly.",
            "Bubbles run together and break at the top; in the heat gluten and starch set, with what egg there is",
            "loss in the oven: Baking Business, Bakers Dictionary, and common practice; the rest from memory, between a kneaded dough and a batter"
        )
        {
            DriesAtItsSkin = true,
        };

    /// <summary>A batter raised by soda or powder: only its thickness holds the gas until egg and starch set.</summary>
    /// <remarks>
    /// Muffins of 2.38 mL/g after losing 13.4 % (Korean J. Food Preserv. 31 (2024) 256, table 3) are 2.06 mL for a gram of batter, of which
    /// 0.87 mL are gas-free: 2.4 times. What leaks while mixing and filling is an assumption.
    /// </remarks>
    public static GasHolding Batter { get; } =
        new(
            HoldingKind.Batter,
            "batter",
            new(0.30, 0.50, 0.80),
            new(1.3, 1.6, 2.0),
            new(1.9, 2.3, 2.7),
            new(0.11, 0.13, 0.14),
            "The thickness of the batter; there is little gluten, and egg and starch set late.",
            "Bubbles rise, run together and burst at the top; past their limit they make tunnels or the middle sinks. Egg and starch set it, the later the more sugar and fat there is.",
            "muffins of 2.38 mL/g and 11.3 % to 13.7 % lost: Korean J. Food Preserv. 31 (2024) 256, table 3; leak from memory"
        );

    /// <summary>A dough without egg that soda or powder raises, such as a soda bread: flour that is wetted and hardly worked.</summary>
    /// <remarks>
    /// No figures of its own were found: those of a <see cref="Batter"/>, which it resembles in what it loses, stand in for it.
    /// </remarks>
    public static GasHolding QuickDough { get; } =
        Batter with
        {
            Kind = HoldingKind.QuickDough,
            Name = "quick dough",
            Holds = "The stiffness of the dough; its gluten is hardly worked.",
            Stops = "Bubbles run together and break through the surface; starch and gluten set it",
            DriesAtItsSkin = true,
            Source = $"as of a batter, for want of figures of its own: {Batter.Source}",
        };

    /// <summary>A batter of creamed fat and sugar: fat holds a great many fine bubbles from the start.</summary>
    /// <remarks>
    /// From memory: a layer cake comes to 2.3 mL to 3.3 mL for a gram. A butter cake batter was measured at 1.8 times its volume (J. Home Econ. Jpn.
    /// 41 (1990), no. 11), which this was not fitted to.
    /// </remarks>
    public static GasHolding CreamedBatter { get; } =
        new(
            HoldingKind.CreamedBatter,
            "creamed batter",
            new(0.50, 0.70, 0.90),
            new(1.5, 1.8, 2.1),
            new(2.2, 2.7, 3.2),
            new(0.09, 0.11, 0.13),
            "Fat around fine bubbles of air, which the leavening's gas blows up.",
            "Bubbles that are stretched too far run together, and the middle sinks; sugar and fat keep the crumb from setting until it is nearly done.",
            "from memory"
        );

    /// <summary>A shell that steam blows up: one hollow behind a skin of egg and gluten.</summary>
    /// <remarks>
    /// No measured volume of popovers was found. What was measured of its kind is chou paste, which comes to four to five times its volume (J.
    /// Home Econ. Jpn. 41 (1990), no. 11, abstract of a study of the cavity in chou), 4.4 to 5.7 times what is not air: the high end. A thinner batter
    /// in a cup may do less: the rest is from memory. Without egg there is no rise at all (B. Lowe, Experimental Cookery, "Popovers").
    /// </remarks>
    public static GasHolding Shell { get; } =
        new(
            HoldingKind.Shell,
            "shell",
            new(0.60, 0.80, 1.00),
            new(1.1, 1.2, 1.3),
            new(3.2, 4.5, 5.8),
            new(0.20, 0.28, 0.35),
            "A skin of egg and gluten, set at the rim before the middle boils.",
            "The skin dries and no longer stretches; steam goes on leaving through its pores and cracks. Too little baking, and it falls when the steam condenses.",
            "chou paste of four to five times its volume: J. Home Econ. Jpn. 41 (1990), no. 11; no measured volume of popovers was found, and ends and leak are from memory; what holds it: B. Lowe, Experimental Cookery, \"Popovers\""
        )
        {
            IsHollow = true,
            LossSource = "from memory",
        };

    /// <summary>A flat bread whose two skins set before the water between them boils.</summary>
    /// <remarks>
    /// How far it puffs hangs on heat, thickness and a single hole; no published volume was found, and it falls again. Of its loss in an
    /// oven: from memory.
    /// </remarks>
    public static GasHolding Pocket { get; } =
        new(
            HoldingKind.Pocket,
            "flat bread",
            new(0.60, 0.80, 1.00),
            new(1.1, 1.2, 1.5),
            new(1.5, 3.0, 6.0),
            new(0.06, 0.12, 0.20),
            "Two skins that heat has set, with nothing between them but steam.",
            "A hole or a thin place lets the steam out; otherwise it falls when the steam condenses.",
            "from memory"
        )
        {
            IsPredicted = false,
        };

    /// <summary>Sheets of dough and fat.</summary>
    /// <remarks>Puff pastry is said to rise to four to eight times its height: too wide to be a forecast. Loss: from memory.</remarks>
    public static GasHolding Layers { get; } =
        new(
            HoldingKind.Layers,
            "laminated dough",
            new(0.60, 0.80, 1.00),
            new(1.5, 2.0, 2.5),
            new(3.0, 5.0, 8.0),
            new(0.10, 0.15, 0.20),
            "Sheets of fat that keep sheets of dough apart, until steam has lifted them and they have set.",
            "Where fat has run into the dough there are no sheets to lift; what has set does not fall.",
            "from memory"
        )
        {
            IsPredicted = false,
        };

    /// <summary>Egg beaten to a foam, with flour folded in.</summary>
    /// <remarks>
    /// Batters of a specific gravity of 0.46 to 0.50 for sponges (Baking Business, Bakers Dictionary, "Sponge cake"; Bake magazine, article
    /// 11566) are 2.6 times their gas-free volume; what they bake to, and lose: from memory.
    /// </remarks>
    public static GasHolding Foam { get; } =
        new(
            HoldingKind.Foam,
            "egg foam",
            new(0.60, 0.80, 0.95),
            new(2.2, 2.8, 4.0),
            new(3.2, 4.0, 5.2),
            new(0.09, 0.12, 0.15),
            "Films of egg around fine bubbles of air, with little flour in them.",
            "Films that were beaten too far or folded too long break; egg and starch set the rest.",
            "batters of sponge cakes: Bake magazine, article 11566; what they come to from memory"
        );

    /// <summary>A fermented dough without a net of gluten, of which nobody can say how far it rises.</summary>
    public static GasHolding DoughWithoutNet { get; } =
        KneadedDough with
        {
            Kind = HoldingKind.DoughWithoutNet,
            Name = "dough without a gluten net",
            Holds = "Starch and what binds it: the gums of rye, or husks and gums that were added; there is no net that stretches.",
            Stops = "Bubbles break through the surface; starch sets what is left.",
            DriesAtItsSkin = null,
            Source = "loss as of a loaf: Baking Business, Bakers Dictionary, and common practice",
            IsPredicted = false,
        };

    /// <summary>A kneaded dough that a starter raises: its net holds, and how much gas it is given nobody can say.</summary>
    public static GasHolding Sourdough { get; } =
        KneadedDough with
        {
            Kind = HoldingKind.Sourdough,
            Name = "sourdough",
            IsPredicted = false,
        };

    /// <summary>A shell of wheat without egg.</summary>
    public static GasHolding ShellWithoutEgg { get; } =
        Shell with
        {
            Kind = HoldingKind.ShellWithoutEgg,
            Name = "shell without egg",
            Holds = "A skin of gluten, set at the rim before the middle boils.",
        };

    /// <summary>A shell of a flour that is not wheat's: egg and swelled starch alone. No published volume was found.</summary>
    public static GasHolding ShellWithoutGluten { get; } =
        Shell with
        {
            Kind = HoldingKind.ShellWithoutGluten,
            Name = "shell of other flours than wheat",
            Holds = "A skin of egg and of starch that has swelled, set at the rim before the middle boils.",
            Source = "what holds it: B. Lowe, Experimental Cookery, \"Popovers\"",
            LossSource = "as of a shell of wheat, from memory",
            IsPredicted = false,
        };

    /// <summary>
    /// A batter or dough of flours that are not wheat's, raised by soda or powder. No published volume was found that holds for such flours
    /// together.
    /// </summary>
    public static GasHolding BatterWithoutGluten { get; } =
        Batter with
        {
            Kind = HoldingKind.BatterWithoutGluten,
            Name = "batter of other flours than wheat",
            Holds = "The thickness of the batter and what binds it, starch, gums or egg, in place of a net of gluten.",
            Stops = "Bubbles rise, run together and burst at the top; starch sets it, with what egg there is.",
            Source = $"loss as of a batter of wheat: {Batter.Source}",
            IsPredicted = false,
        };

    /// <summary>The setting of a kind.</summary>
    public static GasHolding Of(HoldingKind kind) =>
        kind switch
        {
            HoldingKind.KneadedDough => KneadedDough,
            HoldingKind.SteamedDough => SteamedDough,
            HoldingKind.SoftDough => SoftDough,
            HoldingKind.Sourdough => Sourdough,
            HoldingKind.DoughWithoutNet => DoughWithoutNet,
            HoldingKind.Batter => Batter,
            HoldingKind.QuickDough => QuickDough,
            HoldingKind.CreamedBatter => CreamedBatter,
            HoldingKind.BatterWithoutGluten => BatterWithoutGluten,
            HoldingKind.Shell => Shell,
            HoldingKind.ShellWithoutEgg => ShellWithoutEgg,
            HoldingKind.ShellWithoutGluten => ShellWithoutGluten,
            HoldingKind.Pocket => Pocket,
            HoldingKind.Layers => Layers,
            HoldingKind.Foam => Foam,
        };

    /// <summary>The setting of the kind that a formula suggests.</summary>
    public static GasHolding For(BakersFormula formula) => Of(KindOf(formula));

    /// <summary>The kind that a formula suggests: by its leavening, whether there are yeast and egg in it, and how wet it is.</summary>
    public static HoldingKind KindOf(BakersFormula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var hasEgg = Has(formula, IngredientRole.Egg);
        if (HasNoNet(formula))
            return formula.IsFermented ? HoldingKind.DoughWithoutNet
                : formula.Leavening == Leavening.Steam ? HoldingKind.ShellWithoutGluten
                : HoldingKind.BatterWithoutGluten;
        if (formula.HasStarter)
            return HoldingKind.Sourdough;
        if (formula.Leavening == Leavening.Steam)
            return hasEgg ? HoldingKind.Shell : HoldingKind.ShellWithoutEgg;
        if (!Has(formula, IngredientRole.Yeast))
            return hasEgg ? HoldingKind.Batter : HoldingKind.QuickDough;
        return DoughWater.EffectivePercent(formula) > SoftPercent ? HoldingKind.SoftDough : HoldingKind.KneadedDough;
    }

    /// <summary>True of flours that make no net of gluten worth the name.</summary>
    public static bool HasNoNet(BakersFormula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        return Gluten(formula) < LeastGluten;
    }

    /// <summary>
    /// Below this share of flours of wheat a dough has no net to speak of. From memory: bakers knead doughs of half wheat, and stir those
    /// of less.
    /// </summary>
    private const double LeastGluten = 0.5;

    /// <summary>The share of the flour that is wheat's, spelt's or another of its kin.</summary>
    private static double Gluten(BakersFormula formula) =>
        formula
            .Lines.Where(line => IsWheat(line.Ingredient.StarterOf ?? line.Ingredient))
            .Sum(line => PerHundred.Share(line.Percent * line.Ingredient.FlourShare));

    private static bool IsWheat(Ingredient flour) => flour.Allergens.Any(allergen => allergen.Name is "wheat" or "spelt");

    /// <summary>What an author says that it is; null where the formula tells.</summary>
    public static GasHolding? AsWritten(CrumbStructure? structure, BakersFormula formula) =>
        structure switch
        {
            CrumbStructure.HollowShell => HasNoNet(formula) ? ShellWithoutGluten : Shell,
            CrumbStructure.Pocket => Pocket,
            CrumbStructure.Layers => Layers,
            CrumbStructure.Foam => Foam,
            CrumbStructure.Crumb when formula.Leavening == Leavening.Steam => For(formula with { Leavening = Leavening.Chemical }),
            _ => null,
        };

    private static bool Has(BakersFormula formula, IngredientRole role) => formula.Lines.Any(line => line.Ingredient.Role == role);
}

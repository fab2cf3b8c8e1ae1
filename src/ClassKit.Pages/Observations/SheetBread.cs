using ClassKit.BenchPlans.Classes;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cards;
using ClassKit.Lessons.Measured;
using ClassKit.Lessons.Packs;
using ClassKit.Wording.Counts;

namespace ClassKit.Pages.Observations;

/// <summary>One bread's columns on an observation sheet.</summary>
/// <param name="Compared">The bread with its gas.</param>
/// <param name="AtSeaLevel">The same at sea level; null for a kitchen that is not high.</param>
/// <param name="Card">How it is made.</param>
/// <param name="Control">What it is held against to see its leavening alone; null for none.</param>
public sealed record SheetBread(LeaveningComparison Compared, LeaveningComparison? AtSeaLevel, FormulaCard Card, ControlBatch? Control)
{
    /// <summary>The level of a dough is read so often.</summary>
    public const int ReadingMinutes = 30;

    /// <summary>The bread.</summary>
    public LessonFormula Bread => Compared.Bread;

    /// <summary>Its id.</summary>
    public string Id => Bread.Formula.Id;

    /// <summary>A head for each piece that is measured, and for their mean.</summary>
    public IReadOnlyList<string> Heads =>
        Card.Pieces == 1 ? PieceHeads.Of(1) : [.. PieceHeads.Of(ObservationForm.MeasuredOf(Card.Pieces)), "Mean"];

    /// <summary>Its own columns and its control's.</summary>
    public int Columns => Heads.Count + (Control is null ? 0 : 1);

    /// <summary>
    /// How often its level is read as it first rises, from the beginning on; 0 where nothing rises by itself for so long.
    /// </summary>
    public int Readings => Rise is { } rise ? 1 + (rise.MaxMinutes + ReadingMinutes - 1) / ReadingMinutes : 0;

    private MethodStep? Rise =>
        Bread
            .Steps.TakeWhile(step => !step.IsCooking)
            .FirstOrDefault(step =>
                step.Work.People == 0
                && step.MaxMinutes >= ReadingMinutes
                && step.Work.Uses.Any(use => use.Kind == EquipmentKind.ProofingPlace)
            );

    internal static SheetBread Of(LessonPack pack, LeaveningComparison compared, FormulaCard card, LeaveningComparison? atSeaLevel) =>
        new(compared, atSeaLevel, card, pack.ControlOf(compared.Bread));
}

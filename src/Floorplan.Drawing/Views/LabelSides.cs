using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Syntax;

namespace Floorplan.Drawing.Views;

/// <summary>What a compass side means on paper: north is up.</summary>
public static class LabelSides
{
    public static PaperPoint Direction(this Side side) => side switch
    {
        Side.North => new(0, -1),
        Side.South => new(0, 1),
        Side.East => new(1, 0),
        _ => new(-1, 0),
    };

    public static string Letter(this Side side) => side switch
    {
        Side.North => "N",
        Side.South => "S",
        Side.East => "E",
        _ => "W",
    };

    /// <summary>Label places on one side of a thing first, then round it.</summary>
    public static IReadOnlyList<LabelPosition> LabelsOn(this Side side) => side switch
    {
        Side.North
            => [
                LabelPosition.Above, LabelPosition.AboveRight, LabelPosition.AboveLeft, LabelPosition.Below, LabelPosition.BelowRight,
                LabelPosition.BelowLeft, LabelPosition.Right, LabelPosition.Left],
        Side.South
            => [
                LabelPosition.Below, LabelPosition.BelowRight, LabelPosition.BelowLeft, LabelPosition.Above, LabelPosition.AboveRight,
                LabelPosition.AboveLeft, LabelPosition.Right, LabelPosition.Left],
        Side.East
            => [
                LabelPosition.Right, LabelPosition.AboveRight, LabelPosition.BelowRight, LabelPosition.Left, LabelPosition.AboveLeft,
                LabelPosition.BelowLeft, LabelPosition.Above, LabelPosition.Below],
        _ => [
            LabelPosition.Left, LabelPosition.AboveLeft, LabelPosition.BelowLeft, LabelPosition.Right, LabelPosition.AboveRight,
            LabelPosition.BelowRight, LabelPosition.Above, LabelPosition.Below],
    };

    /// <summary>All places round a thing, above first.</summary>
    public static IReadOnlyList<LabelPosition> AllRound { get; } = Side.North.LabelsOn();
}
